package lapline.trade.measure;

import java.util.List;
import java.util.Optional;

/**
 * A unit that people in the trade write, with its exact conversion to the SI unit of its dimension:
 * {@code si = typed × factor + offset}.
 *
 * <p>Inch, foot, pound, US gallon and their parts are exact by definition (NIST SP 811:2008,
 * appendix B); psi is the pound-force 4.448 221 615 260 5 N over the square inch; the inch of water
 * is the conventional one. The first spelling is the sign as printed, the others are ways people
 * type it; capitals, spaces and full stops are set aside.
 */
public enum Unit {
  MICROMETRE(Dimension.FILM, 1e-6, 0, "µm", "um", "mu", "µ", "micron", "micrometre", "micrometer"),
  MIL(Dimension.FILM, 25.4e-6, 0, "mil", "thou"),
  FILM_MILLIMETRE(Dimension.FILM, 1e-3, 0, "mm"),

  MILLIMETRE(Dimension.LENGTH, 1e-3, 0, "mm", "millimetre", "millimeter"),
  CENTIMETRE(Dimension.LENGTH, 1e-2, 0, "cm", "centimetre", "centimeter"),
  METRE(Dimension.LENGTH, 1, 0, "m", "metre", "meter"),
  INCH(Dimension.LENGTH, 0.0254, 0, "in", "inch", "inches", "\"", "''"),
  FOOT(Dimension.LENGTH, 0.3048, 0, "ft", "foot", "feet", "'"),

  MILLIMETRE_PER_SECOND(Dimension.SPEED, 1e-3, 0, "mm/s", "mm/sec"),
  CENTIMETRE_PER_SECOND(Dimension.SPEED, 1e-2, 0, "cm/s", "cm/sec"),
  METRE_PER_SECOND(Dimension.SPEED, 1, 0, "m/s", "m/sec"),
  METRE_PER_MINUTE(Dimension.SPEED, 1 / 60.0, 0, "m/min"),
  INCH_PER_SECOND(Dimension.SPEED, 0.0254, 0, "in/s", "in/sec", "ips", "\"/s"),
  FOOT_PER_SECOND(Dimension.SPEED, 0.3048, 0, "ft/s", "ft/sec", "fps"),
  FOOT_PER_MINUTE(Dimension.SPEED, 0.3048 / 60, 0, "ft/min", "fpm"),

  PASCAL(Dimension.PRESSURE, 1, 0, "Pa"),
  KILOPASCAL(Dimension.PRESSURE, 1e3, 0, "kPa"),
  BAR(Dimension.PRESSURE, 1e5, 0, "bar", "bars"),
  PSI(Dimension.PRESSURE, 6894.757293168362, 0, "psi", "psig", "lb/in2", "lbs/in2", "lbf/in2"),
  INCH_OF_WATER(Dimension.PRESSURE, 249.08891, 0, "inH2O", "inwc", "\"wc", "in water"),

  CELSIUS(Dimension.TEMPERATURE, 1, 0, "°C", "c", "degC", "deg c", "celsius", "centigrade"),
  FAHRENHEIT(Dimension.TEMPERATURE, 5 / 9.0, -160 / 9.0, "°F", "f", "degF", "deg f", "fahrenheit"),
  KELVIN(Dimension.TEMPERATURE, 1, -273.15, "K", "kelvin"),

  CELSIUS_STEP(Dimension.TEMPERATURE_DIFFERENCE, 1, 0, "°C", "c", "degC", "celsius", "k", "kelvin"),
  FAHRENHEIT_STEP(Dimension.TEMPERATURE_DIFFERENCE, 5 / 9.0, 0, "°F", "f", "degF", "fahrenheit"),

  MILLILITRE(Dimension.VOLUME, 1e-6, 0, "mL", "cc", "cm3", "millilitre", "milliliter"),
  LITRE(Dimension.VOLUME, 1e-3, 0, "L", "ltr", "litre", "liter"),
  CUBIC_METRE(Dimension.VOLUME, 1, 0, "m³", "m3"),
  US_FLUID_OUNCE(Dimension.VOLUME, 29.5735295625e-6, 0, "fl oz", "US fl oz", "oz", "ounce"),
  US_PINT(Dimension.VOLUME, 473.176473e-6, 0, "pt", "US pt", "pint"),
  US_QUART(Dimension.VOLUME, 946.352946e-6, 0, "qt", "US qt", "quart"),
  US_GALLON(Dimension.VOLUME, 3.785411784e-3, 0, "gal", "US gal", "gallon"),

  GRAM(Dimension.MASS, 1e-3, 0, "g", "gram", "gramme"),
  KILOGRAM(Dimension.MASS, 1, 0, "kg", "kilo", "kilogram"),
  OUNCE(Dimension.MASS, 28.349523125e-3, 0, "oz", "ounce"),
  POUND(Dimension.MASS, 0.45359237, 0, "lb", "lbs", "pound"),

  SQUARE_METRE(Dimension.AREA, 1, 0, "m²", "m2", "sq m", "square metre", "square meter"),
  SQUARE_CENTIMETRE(Dimension.AREA, 1e-4, 0, "cm²", "cm2", "sq cm"),
  SQUARE_FOOT(Dimension.AREA, 0.09290304, 0, "ft²", "ft2", "sq ft", "square feet", "square foot"),
  SQUARE_INCH(Dimension.AREA, 0.00064516, 0, "in²", "in2", "sq in"),

  PER_CENT(Dimension.SHARE, 0.01, 0, "%", "percent", "per cent", "pct"),

  GLOSS_UNIT(Dimension.GLOSS, 1, 0, "GU", "gloss unit"),

  SECOND(Dimension.DURATION, 1, 0, "s", "sec", "second"),
  MINUTE(Dimension.DURATION, 60, 0, "min", "m", "minute"),
  HOUR(Dimension.DURATION, 3600, 0, "h", "hr", "hour"),

  TIME_OF_DAY(Dimension.CLOCK, 1, 0, ""),
  PIECE(Dimension.COUNT, 1, 0, "", "pc", "piece", "x"),
  PLAIN(Dimension.NUMBER, 1, 0, "", "turn", "part"),
  P_GRADE(Dimension.GRIT, 1, 0, "", "grit"),
  OPTION(Dimension.CHOICE, 1, 0, "");

  private final Dimension dimension;
  private final double factor;
  private final double offset;
  private final List<String> spellings;

  Unit(Dimension dimension, double factor, double offset, String... spellings) {
    this.dimension = dimension;
    this.factor = factor;
    this.offset = offset;
    this.spellings = List.of(spellings);
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** The sign of the unit as it is printed; empty for plain numbers. */
  public String symbol() {
    return spellings.get(0);
  }

  /**
   * @return the value in the SI unit of the dimension; NaN and infinities stay what they are
   */
  public double toSi(double inThisUnit) {
    return inThisUnit * factor + offset;
  }

  /**
   * @param si value in the SI unit of the dimension
   */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  /** How much of the SI unit one step of this unit is. */
  double factor() {
    return factor;
  }

  /** A difference in this unit as a difference in SI: the offset of a temperature drops out. */
  public double stepFromSi(double si) {
    return si / factor;
  }

  /** The unit a person of this system reads and writes a dimension in. */
  public static Unit preferred(Dimension dimension, UnitSystem system) {
    boolean us = system == UnitSystem.US;
    return switch (dimension) {
      case FILM -> us ? MIL : MICROMETRE;
      case LENGTH -> us ? INCH : MILLIMETRE;
      case SPEED -> us ? INCH_PER_SECOND : MILLIMETRE_PER_SECOND;
      case PRESSURE -> us ? PSI : KILOPASCAL;
      case TEMPERATURE -> us ? FAHRENHEIT : CELSIUS;
      case TEMPERATURE_DIFFERENCE -> us ? FAHRENHEIT_STEP : CELSIUS_STEP;
      case VOLUME -> us ? US_FLUID_OUNCE : MILLILITRE;
      case MASS -> GRAM;
      case AREA -> us ? SQUARE_FOOT : SQUARE_METRE;
      case SHARE -> PER_CENT;
      case GLOSS -> GLOSS_UNIT;
      case DURATION -> SECOND;
      case CLOCK -> TIME_OF_DAY;
      case COUNT -> PIECE;
      case NUMBER -> PLAIN;
      case GRIT -> P_GRADE;
      case CHOICE -> OPTION;
    };
  }

  /** The unit of a dimension with this spelling, capitals set aside; empty when there is none. */
  public static Optional<Unit> spelt(String spelling, Dimension dimension) {
    return UnitSpelling.of(spelling, dimension);
  }

  /**
   * Whether people of this system use it; seconds, shares and the grams of a scale belong to both.
   */
  public boolean belongsTo(UnitSystem system) {
    return switch (this) {
      case MIL,
          INCH,
          FOOT,
          INCH_PER_SECOND,
          FOOT_PER_SECOND,
          FOOT_PER_MINUTE,
          PSI,
          INCH_OF_WATER,
          FAHRENHEIT,
          FAHRENHEIT_STEP,
          US_FLUID_OUNCE,
          US_PINT,
          US_QUART,
          US_GALLON,
          OUNCE,
          POUND,
          SQUARE_FOOT,
          SQUARE_INCH ->
          system == UnitSystem.US;
      default -> system == UnitSystem.METRIC || isOfBoth();
    };
  }

  private boolean isOfBoth() {
    return switch (dimension) {
      case FILM, LENGTH, SPEED, PRESSURE, TEMPERATURE, TEMPERATURE_DIFFERENCE, VOLUME, AREA ->
          false;
      default -> true;
    };
  }

  List<String> spellings() {
    return spellings;
  }
}
