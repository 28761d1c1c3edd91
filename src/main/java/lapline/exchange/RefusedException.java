package lapline.exchange;

/** A request that is turned away before it reaches a use case; the message key says why. */
final class RefusedException extends RuntimeException {
  private final int status;
  private final String key;
  private final transient Object[] values;

  RefusedException(int status, String key, Object... values) {
    super(key);
    this.status = status;
    this.key = key;
    this.values = values;
  }

  int status() {
    return status;
  }

  String key() {
    return key;
  }

  Object[] values() {
    return values == null ? new Object[0] : values.clone();
  }
}
