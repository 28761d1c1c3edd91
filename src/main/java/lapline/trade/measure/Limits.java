package lapline.trade.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The ends of a range, written so that they never say more than is true: with every figure that
 * they were set with ('1.15 to 1.35 mm'), or, where they were set in the other system's unit,
 * rounded into the range ('102 to 152 mm' for 4 to 6 in). So what is shown to be inside is inside.
 *
 * <p>A limit was set in the unit in which it has the fewer figures. A converted one has the figures
 * that a reading in its unit has, and more as long as rounding would move it by more than one part
 * in twenty-five.
 *
 * @param least as written, with its unit; empty where there is none
 * @param most the same
 */
public record Limits(String least, String most) {
  private static final MathContext WITHOUT_NOISE = new MathContext(12, RoundingMode.HALF_EVEN);
  private static final int MOST_FIGURES = 6;
  private static final int MOST_PLACES = 9;
  private static final BigDecimal MOST_MOVED = new BigDecimal("0.04");

  /**
   * Both ends as this system's people read them; an open end is empty, a range of one value is
   * written as a reading.
   */
  public static Limits of(TargetRange range, SpokenUnits spoken, UnitSystem system) {
    Dimension dimension = spoken.dimension();
    boolean asReadings = dimension == Dimension.CLOCK || dimension == Dimension.GRIT;
    if (asReadings || range.least() == range.most()) {
      return new Limits(
          range.hasLeast() ? QuantityWriter.write(range.least(), spoken, system) : "",
          range.hasMost() ? QuantityWriter.write(range.most(), spoken, system) : "");
    }
    return new Limits(
        range.hasLeast() ? limit(range, range.least(), spoken, system) : "",
        range.hasMost() ? limit(range, range.most(), spoken, system) : "");
  }

  /**
   * Both ends in the unit that a field is in, for somebody whose number lies outside: tenths, and
   * whole ones from a hundred on, rounded into the range.
   */
  public static Limits inField(TargetRange range, SpokenUnits spoken, UnitSystem system) {
    Dimension dimension = spoken.dimension();
    if (dimension == Dimension.CLOCK || dimension == Dimension.GRIT) {
      return of(range, spoken, system);
    }
    Unit unit = spoken.in(system);
    return new Limits(
        range.hasLeast() ? roughly(range.least(), unit, RoundingMode.CEILING) : "",
        range.hasMost() ? roughly(range.most(), unit, RoundingMode.FLOOR) : "");
  }

  private static String roughly(double si, Unit unit, RoundingMode inwards) {
    BigDecimal value = in(unit, si);
    int figuresBefore = value.precision() - value.scale();
    int places = figuresBefore > 2 ? 0 : Math.max(1, 2 - figuresBefore);
    return QuantityWriter.figures(value.setScale(places, inwards), unit);
  }

  /** The lower end as it stands before the upper one: without the unit where both have the same. */
  public String leastBesideMost() {
    int unit = least.indexOf(QuantityWriter.SPACE);
    boolean same = unit > 0 && unitOf(most).equals(least.substring(unit));
    return same ? least.substring(0, unit) : least;
  }

  /** The figures alone, for a drawing whose axis says the unit; not for times of two parts. */
  public Limits bare() {
    return new Limits(figures(least), figures(most));
  }

  private static String figures(String limit) {
    return limit.substring(0, limit.length() - unitOf(limit).length());
  }

  private static String unitOf(String limit) {
    int unit = limit.indexOf(QuantityWriter.SPACE);
    return unit < 0 ? "" : limit.substring(unit);
  }

  private static String limit(TargetRange range, double si, SpokenUnits spoken, UnitSystem system) {
    Unit unit = QuantityWriter.unit(si, spoken, system);
    int places =
        Math.max(
            places(range.least(), unit, spoken.beside(system), RoundingMode.CEILING),
            places(range.most(), unit, spoken.beside(system), RoundingMode.FLOOR));
    RoundingMode inwards = si == range.least() ? RoundingMode.CEILING : RoundingMode.FLOOR;
    if (unit == Unit.SECOND && places == 0) {
      // from two minutes on it is said in minutes
      return QuantityWriter.write(in(unit, si).setScale(0, inwards).doubleValue(), spoken, system);
    }
    return QuantityWriter.figures(in(unit, si).setScale(places, inwards), unit);
  }

  /** Decimals that a limit needs in a unit; 0 for no limit. */
  private static int places(double si, Unit unit, Unit other, RoundingMode inwards) {
    if (!Double.isFinite(si)) {
      return 0;
    }
    BigDecimal value = in(unit, si);
    if (value.precision() <= MOST_FIGURES && value.precision() <= in(other, si).precision()) {
      return Math.max(0, value.scale());
    }
    int places = QuantityWriter.limitPlaces(unit, si);
    while (places < MOST_PLACES && moved(value, places, inwards).compareTo(MOST_MOVED) > 0) {
      places++;
    }
    return Math.min(places, Math.max(0, value.scale()));
  }

  private static BigDecimal moved(BigDecimal value, int places, RoundingMode inwards) {
    BigDecimal by = value.setScale(places, inwards).subtract(value).abs();
    return value.signum() == 0 ? by : by.divide(value.abs(), WITHOUT_NOISE);
  }

  private static BigDecimal in(Unit unit, double si) {
    return new BigDecimal(unit.fromSi(si)).round(WITHOUT_NOISE).stripTrailingZeros();
  }
}
