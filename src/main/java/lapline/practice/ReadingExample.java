package lapline.practice;

import lapline.trade.measure.UnitSystem;

/**
 * A reading as somebody might well write it in a field, to be shown to who wrote something else.
 */
final class ReadingExample {
  /** A length that is never longer than this is a bore, not a distance. */
  private static final double BORE = 0.01;

  private ReadingExample() {}

  static String of(Measurand measurand, UnitSystem units) {
    return switch (measurand.spoken().in(units)) {
      case MICROMETRE -> "62 µm";
      case MIL -> "2.4 mil";
      case MILLIMETRE -> measurand.possibleMost() <= BORE ? "1.3 mm" : "120 mm";
      case INCH -> "4 1/2 in";
      case METRE -> "6.5 m";
      case FOOT -> "21 ft";
      case KILOPASCAL -> "150 kPa";
      case PSI -> "22 psi";
      case CELSIUS -> "21 °C";
      case FAHRENHEIT -> "70 °F";
      case MILLILITRE -> "200 mL";
      case US_FLUID_OUNCE -> "6.8 fl oz";
      case PER_CENT -> "65 %";
      case GLOSS_UNIT -> "88 GU";
      case SECOND -> "2.4 s";
      case MINUTE -> "25 min";
      case TIME_OF_DAY -> "14:05";
      case PIECE -> "3";
      case P_GRADE -> "P600";
      default -> ("2.5 " + measurand.spoken().in(units).symbol()).strip();
    };
  }
}
