package lapline.trade.measure;

/** What kind of thing a reading measures; it fixes the SI unit that numbers are kept in. */
public enum Dimension {
  /** Thin layers: kept in metres, shown in µm or mil. */
  FILM,
  /** Distances a hand works with: kept in metres, shown in mm or in. */
  LENGTH,
  /** Stroke speed: kept in metres per second, shown in mm/s or in/s. */
  SPEED,
  /** Air pressure above ambient: kept in pascals, shown in kPa (bar understood) or psi. */
  PRESSURE,
  /** Temperature: kept in degrees Celsius, shown in °C or °F. */
  TEMPERATURE,
  /** A difference of two temperatures: kept in kelvins, shown in °C or °F without the offset. */
  TEMPERATURE_DIFFERENCE,
  /** Liquid: kept in cubic metres, shown in mL or US fl oz. */
  VOLUME,
  /** Mass: kept in kilograms, shown in g (or oz where US units are wanted). */
  MASS,
  /** Surface: kept in square metres, shown in m² or ft². */
  AREA,
  /** A share of a whole, 0.7 for 70 %: kept as a fraction, shown in per cent. */
  SHARE,
  /** Gloss: kept and shown in gloss units. */
  GLOSS,
  /** Elapsed time: kept in seconds, shown in s or min. */
  DURATION,
  /** Time of day in the workshop's zone: kept in seconds after midnight, shown as 14:05. */
  CLOCK,
  /** A whole number of things: squares, places, steps. */
  COUNT,
  /** A plain number without a unit: turns, parts of a mix. */
  NUMBER,
  /** Abrasive grade of the P scale: kept as its number, shown as P800. */
  GRIT,
  /** One of the named choices of the measurand: kept as the choice's number. */
  CHOICE
}
