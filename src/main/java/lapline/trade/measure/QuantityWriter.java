package lapline.trade.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes quantities in a person's units at sensible precision: '62 µm', '2.4 mil', '62 ± 3 µm'. The
 * decimal mark is a point in every language, as in the readings themselves; a no-break space stands
 * before the unit.
 */
public final class QuantityWriter {
  private static final char SPACE = '\u00a0';

  private QuantityWriter() {}

  /** Value with its unit. */
  public static String write(double si, Dimension dimension, UnitSystem system) {
    return switch (dimension) {
      case CLOCK -> clock(si);
      case GRIT -> "P" + Math.round(si);
      case DURATION -> duration(si);
      default -> withUnit(number(si, dimension, system), Unit.preferred(dimension, system));
    };
  }

  /**
   * Value with its expanded uncertainty (coverage factor 2), both rounded to the place of the
   * second significant figure of the uncertainty, or the first where that is 3 or more.
   *
   * @param standardUncertainty in SI, ≥ 0; 0 writes the bare value
   */
  public static String write(
      double si, double standardUncertainty, Dimension dimension, UnitSystem system) {
    Unit unit = Unit.preferred(dimension, system);
    double expanded = 2 * Math.abs(unit.stepFromSi(standardUncertainty));
    boolean bare = !(expanded > 0) || !Double.isFinite(expanded);
    if (bare || dimension == Dimension.CLOCK || dimension == Dimension.GRIT) {
      return write(si, dimension, system);
    }
    int place = Math.min(6, Math.max(0, placeOf(expanded)));
    String value = fixed(unit.fromSi(si), place);
    return withUnit(value + SPACE + "±" + SPACE + fixed(expanded, place), unit);
  }

  /** The bare number in the person's unit, as it would be typed into a field. */
  public static String number(double si, Dimension dimension, UnitSystem system) {
    if (dimension == Dimension.CLOCK) {
      return clock(si);
    }
    Unit unit = Unit.preferred(dimension, system);
    return trimmed(unit.fromSi(si), decimals(unit));
  }

  private static int decimals(Unit unit) {
    return switch (unit) {
      case MIL, INCH, SQUARE_METRE, SQUARE_FOOT, US_FLUID_OUNCE, PLAIN -> 2;
      case MICROMETRE,
          MILLIMETRE,
          INCH_PER_SECOND,
          PSI,
          CELSIUS,
          FAHRENHEIT,
          CELSIUS_STEP,
          FAHRENHEIT_STEP,
          GRAM,
          GLOSS_UNIT,
          PER_CENT,
          MILLILITRE,
          KILOPASCAL,
          SECOND ->
          1;
      default -> 0;
    };
  }

  private static int placeOf(double expanded) {
    int leading = (int) Math.floor(Math.log10(expanded));
    double lead = expanded / Math.pow(10, leading);
    return lead < 3 ? 1 - leading : -leading;
  }

  private static String fixed(double value, int places) {
    return new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static String trimmed(double value, int places) {
    BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
    BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
  }

  private static String withUnit(String number, Unit unit) {
    return unit.symbol().isEmpty() ? number : number + SPACE + unit.symbol();
  }

  private static String clock(double seconds) {
    long minutes = Math.round(seconds / 60);
    return String.format("%02d:%02d", minutes / 60 % 24, minutes % 60);
  }

  /** Short times in seconds, from two minutes on in minutes and seconds. */
  private static String duration(double seconds) {
    if (Math.abs(seconds) < 120) {
      return trimmed(seconds, 1) + SPACE + "s";
    }
    long whole = Math.round(seconds);
    String minutes = whole / 60 + "" + SPACE + "min";
    return whole % 60 == 0 ? minutes : minutes + SPACE + Math.abs(whole % 60) + SPACE + "s";
  }
}
