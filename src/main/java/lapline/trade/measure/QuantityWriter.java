package lapline.trade.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes quantities in a person's units at sensible precision: '62 µm', '2.4 mil', '62 ± 3 µm'. The
 * decimal mark is a point in every language, as in the readings themselves; a no-break space stands
 * before the unit, and a true minus sign before negative numbers. {@link QuantityReader} reads all
 * of it back but the uncertainty.
 */
public final class QuantityWriter {
  static final char SPACE = '\u00a0';
  private static final int FIELD_FIGURES = 7;

  /** From here on a length is said in metres or feet; in millimetres and inches as written. */
  private static final double LONG_MILLIMETRES = 1999.95;

  private static final double LONG_INCHES = 71.995;

  /** Seconds from which on a time is said in minutes. */
  private static final double MINUTES_FROM = 120;

  private QuantityWriter() {}

  /** Value with its unit; a number that is not finite is written as a dash. */
  public static String write(double si, Dimension dimension, UnitSystem system) {
    return write(si, SpokenUnits.usual(dimension), system);
  }

  /** As above, in the unit that people speak of this quantity in. */
  public static String write(double si, SpokenUnits spoken, UnitSystem system) {
    if (!Double.isFinite(si)) {
      return "–";
    }
    return switch (spoken.dimension()) {
      case CLOCK -> clock(si);
      case GRIT -> "P" + Math.round(si);
      case DURATION -> duration(si);
      default -> {
        Unit unit = unit(si, spoken, system);
        yield withUnit(number(si, unit), unit);
      }
    };
  }

  /**
   * In the unit that its field is in, however much it is: 254 in and 90 min, not 21.2 ft and 1 h 30
   * min. So it can be told from what was typed and from a limit.
   */
  public static String inField(double si, SpokenUnits spoken, UnitSystem system) {
    boolean asEver = spoken.dimension() == Dimension.CLOCK || spoken.dimension() == Dimension.GRIT;
    return asEver || !Double.isFinite(si)
        ? write(si, spoken, system)
        : withUnit(number(si, spoken, system), spoken.in(system));
  }

  /**
   * Value with its {@link Estimate#expandedUncertainty}, both rounded to the place of the second
   * significant figure of the uncertainty, or the first where that is 3 or more; an uncertainty of
   * 0 writes the bare value.
   */
  public static String write(Estimate estimate, Dimension dimension, UnitSystem system) {
    return write(estimate, SpokenUnits.usual(dimension), system);
  }

  /** As above, in the unit that people speak of this quantity in. */
  public static String write(Estimate estimate, SpokenUnits spoken, UnitSystem system) {
    return expanded(estimate.value(), estimate.expandedUncertainty(), spoken, system);
  }

  /** The figures of the value alone, as short as {@link #write} has them, for drawings. */
  public static String number(double si, Dimension dimension, UnitSystem system) {
    return number(si, SpokenUnits.usual(dimension), system);
  }

  /** As above, in the unit that people speak of this quantity in. */
  public static String number(double si, SpokenUnits spoken, UnitSystem system) {
    return spoken.dimension() == Dimension.CLOCK || !Double.isFinite(si)
        ? write(si, spoken, system)
        : number(si, spoken.in(system));
  }

  private static String number(double si, Unit unit) {
    return trueMinus(Figures.shortly(unit.fromSi(si), decimals(unit)));
  }

  /** The unit that is spoken in; of a long length, the larger one. */
  static Unit unit(double si, SpokenUnits spoken, UnitSystem system) {
    Unit usual = spoken.in(system);
    double length = Math.abs(usual.fromSi(si));
    return switch (usual) {
      case MILLIMETRE -> length >= LONG_MILLIMETRES ? Unit.METRE : usual;
      case INCH -> length >= LONG_INCHES ? Unit.FOOT : usual;
      default -> usual;
    };
  }

  /** Figures already rounded, as they are printed. */
  static String figures(BigDecimal value, Unit unit) {
    BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return withUnit(trueMinus(plain.toPlainString()), unit);
  }

  /** Decimals that a limit converted from another unit is worth at the least. */
  static int limitPlaces(Unit unit, double si) {
    return switch (unit) {
      case MILLIMETRE, FOOT, KILOPASCAL, MILLILITRE -> 0;
      case SECOND -> Math.abs(si) < MINUTES_FROM ? 1 : 0;
      default -> decimals(unit);
    };
  }

  /**
   * The value as it would be typed into a field that names the unit: seven figures, so that a field
   * sent back untouched changes nothing.
   */
  public static String typed(double si, Dimension dimension, UnitSystem system) {
    if (!Double.isFinite(si)) {
      return "";
    }
    return dimension == Dimension.CLOCK
        ? clock(si)
        : Figures.significant(Unit.preferred(dimension, system).fromSi(si), FIELD_FIGURES);
  }

  private static String expanded(
      double si, double uncertainty, SpokenUnits spoken, UnitSystem system) {
    Unit unit = unit(si, spoken, system);
    Dimension dimension = spoken.dimension();
    double expanded = unit.stepFromSi(uncertainty);
    boolean bare = expanded == 0 || !Double.isFinite(expanded);
    if (bare || dimension == Dimension.CLOCK || dimension == Dimension.GRIT) {
      return write(si, spoken, system);
    }
    if (unit == Unit.SECOND && Math.abs(si) >= MINUTES_FROM) {
      return duration(si) + SPACE + "±" + SPACE + duration(expanded);
    }
    int place = Figures.placeOf(expanded);
    String value = trueMinus(Figures.at(unit.fromSi(si), place));
    return withUnit(value + SPACE + "±" + SPACE + Figures.at(expanded, place), unit);
  }

  /**
   * Decimals that a reading in this unit is worth; more than its usual instrument shows is noise.
   */
  private static int decimals(Unit unit) {
    return switch (unit) {
      case MIL, INCH, METRE, SQUARE_METRE, SQUARE_FOOT, US_FLUID_OUNCE, PLAIN -> 2;
      case PIECE, OPTION, P_GRADE, MILLIMETRE_PER_SECOND -> 0;
      default -> 1;
    };
  }

  private static String trueMinus(String figures) {
    return figures.replace('-', '−');
  }

  private static String withUnit(String number, Unit unit) {
    return unit.symbol().isEmpty() ? number : number + SPACE + unit.symbol();
  }

  private static String clock(double seconds) {
    long minutes = Math.floorDiv((long) seconds, 60L);
    return String.format(
        Locale.ROOT, "%02d:%02d", Math.floorMod(minutes / 60, 24L), Math.floorMod(minutes, 60L));
  }

  /** Short times in seconds, from two minutes on in minutes and seconds, then in hours. */
  private static String duration(double seconds) {
    double length = Math.abs(seconds);
    String minus = seconds < 0 ? "−" : "";
    if (length < MINUTES_FROM) {
      return trueMinus(Figures.shortly(seconds, 1)) + SPACE + "s";
    }
    long whole = Math.round(length);
    // flash and pot life are spoken of in minutes up to two hours
    long hours = whole < 7200 ? 0 : whole / 3600;
    return minus
        + Stream.of(
                part(hours, "h"), part((whole - hours * 3600) / 60, "min"), part(whole % 60, "s"))
            .filter(p -> !p.isEmpty())
            .collect(Collectors.joining(String.valueOf(SPACE)));
  }

  private static String part(long amount, String unit) {
    return amount == 0 ? "" : amount + String.valueOf(SPACE) + unit;
  }
}
