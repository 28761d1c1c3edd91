package lapline.exchange;

import java.util.List;
import lapline.exchange.ProblemDetail.FieldError;

/** A request whose fields are wrong one by one; each says what would be right. */
final class InvalidException extends RuntimeException {
  private final String key;
  private final transient List<FieldError> errors;

  InvalidException(String key, List<FieldError> errors) {
    super(key);
    this.key = key;
    this.errors = List.copyOf(errors);
  }

  String key() {
    return key;
  }

  List<FieldError> errors() {
    return errors;
  }
}
