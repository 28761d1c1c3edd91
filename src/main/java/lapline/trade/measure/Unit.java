package lapline.trade.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit that people in the trade write, with its exact conversion to the SI unit of its dimension:
 * {@code si = typed × factor + offset}. Inch, psi, US gallon and ounce are exact by definition
 * (NIST SP 811, appendix B).
 */
public enum Unit {
  MICROMETRE(
      Dimension.FILM, 1e-6, 0, "µm", "μm", "um", "micron", "microns", "micrometre", "micrometer"),
  MIL(Dimension.FILM, 25.4e-6, 0, "mil", "mils", "thou"),
  FILM_MILLIMETRE(Dimension.FILM, 1e-3, 0, "mm"),

  MILLIMETRE(Dimension.LENGTH, 1e-3, 0, "mm", "millimetre", "millimeter"),
  CENTIMETRE(Dimension.LENGTH, 1e-2, 0, "cm"),
  METRE(Dimension.LENGTH, 1, 0, "m", "metre", "meter"),
  INCH(Dimension.LENGTH, 0.0254, 0, "in", "inch", "inches", "\"", "″", "''"),
  FOOT(Dimension.LENGTH, 0.3048, 0, "ft", "foot", "feet", "'", "′"),

  MILLIMETRE_PER_SECOND(Dimension.SPEED, 1e-3, 0, "mm/s"),
  CENTIMETRE_PER_SECOND(Dimension.SPEED, 1e-2, 0, "cm/s"),
  METRE_PER_SECOND(Dimension.SPEED, 1, 0, "m/s"),
  INCH_PER_SECOND(Dimension.SPEED, 0.0254, 0, "in/s", "ips", "\"/s"),
  FOOT_PER_SECOND(Dimension.SPEED, 0.3048, 0, "ft/s"),

  KILOPASCAL(Dimension.PRESSURE, 1e3, 0, "kPa"),
  BAR(Dimension.PRESSURE, 1e5, 0, "bar"),
  PSI(Dimension.PRESSURE, 6894.757293168, 0, "psi", "psig", "lb/in2"),

  CELSIUS(Dimension.TEMPERATURE, 1, 0, "°C", "c", "ºC", "degC", "celsius"),
  FAHRENHEIT(Dimension.TEMPERATURE, 5.0 / 9, -160.0 / 9, "°F", "f", "ºF", "degF", "fahrenheit"),

  CELSIUS_STEP(Dimension.TEMPERATURE_DIFFERENCE, 1, 0, "°C", "c", "k", "ºC"),
  FAHRENHEIT_STEP(Dimension.TEMPERATURE_DIFFERENCE, 5.0 / 9, 0, "°F", "f", "ºF"),

  MILLILITRE(Dimension.VOLUME, 1e-6, 0, "mL", "cc", "cm3"),
  LITRE(Dimension.VOLUME, 1e-3, 0, "L", "litre", "liter"),
  US_FLUID_OUNCE(Dimension.VOLUME, 29.5735295625e-6, 0, "fl oz", "floz", "US fl oz", "oz"),

  GRAM(Dimension.MASS, 1e-3, 0, "g", "gram", "grams"),
  KILOGRAM(Dimension.MASS, 1, 0, "kg"),
  OUNCE(Dimension.MASS, 28.349523125e-3, 0, "oz"),

  SQUARE_METRE(Dimension.AREA, 1, 0, "m²", "m2"),
  SQUARE_FOOT(Dimension.AREA, 0.09290304, 0, "ft²", "ft2", "sq ft"),

  PER_CENT(Dimension.SHARE, 0.01, 0, "%", "percent", "per cent", "pct"),

  GLOSS_UNIT(Dimension.GLOSS, 1, 0, "GU", "gu"),

  SECOND(Dimension.DURATION, 1, 0, "s", "sec", "secs", "second", "seconds"),
  MINUTE(Dimension.DURATION, 60, 0, "min", "mins", "minute", "minutes"),
  HOUR(Dimension.DURATION, 3600, 0, "h", "hr", "hour", "hours"),

  TIME_OF_DAY(Dimension.CLOCK, 1, 0, ""),
  PIECE(Dimension.COUNT, 1, 0, "", "pcs", "x"),
  PLAIN(Dimension.NUMBER, 1, 0, "", "turn", "turns", "part", "parts"),
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

  public Dimension dimension() {
    return dimension;
  }

  /** The sign of the unit as it is printed; empty for plain numbers. */
  public String symbol() {
    return spellings.get(0);
  }

  public double toSi(double inThisUnit) {
    return inThisUnit * factor + offset;
  }

  public double fromSi(double si) {
    return (si - offset) / factor;
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
    String plain = tidy(spelling);
    for (Unit unit : values()) {
      if (unit.dimension == dimension
          && unit.spellings.stream().anyMatch(s -> !s.isEmpty() && tidy(s).equals(plain))) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** Whether any unit of any dimension is written so. */
  static Optional<Unit> speltAnywhere(String spelling) {
    String plain = tidy(spelling);
    for (Unit unit : values()) {
      if (unit.spellings.stream().anyMatch(s -> !s.isEmpty() && tidy(s).equals(plain))) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  private static String tidy(String spelling) {
    return spelling
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s\\u00a0\\u202f.]+", "")
        .replace('μ', 'µ')
        .replace('º', '°');
  }
}
