package lapline.trade.measure;

/** Whether a person thinks in metric or in US customary units. */
public enum UnitSystem {
  METRIC,
  US
}
