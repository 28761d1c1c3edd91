package lapline.content.units;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import lapline.content.Problems;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/** Looks over what a text gives in both systems: it must be one quantity, metric first. */
public final class BothUnitsCheck {
  /** Round numbers of the two systems differ: 75 mm stands beside 3 in, 3 °C beside 5 °F. */
  private static final double ROUND_NUMBERS = 0.1;

  /** Whole degrees of the two scales lie no further apart, in kelvin. */
  private static final double WHOLE_DEGREES = 0.6;

  /** A step of 1 °C stands beside 2 °F, in kelvin. */
  private static final double HALF_A_FAHRENHEIT = 0.5 * 5 / 9;

  /** What joins the quantities of a range, a list or a sum. */
  private static final Pattern JOINT = Pattern.compile("\\s+(?:to|and|[−+=÷×])\\s+|,\\s+");

  private static final Pattern FIGURES = Pattern.compile("^.*[\\d½¼¾⅜⅛⅝⅞]");
  private static final Pattern NAME =
      Pattern.compile("^\\s*(?:- )?(?:id|title|label|name|purpose|note):");
  private static final String MEND = "give one quantity in both systems, like {25 mm | 1 in}";

  private BothUnitsCheck() {}

  /** Tells each pair of the text that does not agree. */
  public static void pairs(String text, BiConsumer<String, String> problem) {
    for (PerSystem<String> pair : BothUnits.pairs(text)) {
      if (!agree(pair)) {
        problem.accept(
            "'" + pair.metric() + "' and '" + pair.us() + "' are not the same quantity", MEND);
      }
    }
  }

  /** Tells also braces that hold no pair. */
  static void check(String text, BiConsumer<String, String> problem) {
    pairs(text, problem);
    if (BothUnits.besides(text).matches("(?s).*[{}].*")) {
      problem.accept("a brace holds no pair of quantities", MEND);
    }
  }

  /** The same for a whole file, line by line: a pair stands on one line. */
  public static void check(String text, Problems problems) {
    String[] lines = text.split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      int line = i + 1;
      check(lines[i], (what, mend) -> problems.add(line, what, mend));
    }
  }

  /**
   * The pairs of a YAML file, where braces by themselves hold keys. What names a thing is one name
   * for everybody, and holds none.
   */
  public static void yaml(String text, Problems problems) {
    String[] lines = text.split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      int line = i + 1;
      pairs(lines[i], (what, mend) -> problems.add(line, what, mend));
      if (NAME.matcher(lines[i]).find() && !BothUnits.pairs(lines[i]).isEmpty()) {
        problems.add(line, "a name holds a quantity in both systems", "name it without a quantity");
      }
    }
  }

  private static boolean agree(PerSystem<String> pair) {
    String[] metric = JOINT.split(pair.metric());
    String[] us = JOINT.split(pair.us());
    if (metric.length != us.length) {
      return false;
    }
    for (int i = 0; i < metric.length; i++) {
      if (!same(withUnit(metric[i], pair.metric()), withUnit(us[i], pair.us()))) {
        return false;
      }
    }
    return true;
  }

  /** The first number of '50 to 75 mm' borrows the unit of the last. */
  private static String withUnit(String number, String whole) {
    boolean bare = QuantityWords.unitOf(number).equals(List.of(Unit.PLAIN));
    return bare ? number + FIGURES.matcher(whole).replaceFirst("") : number;
  }

  private static boolean same(String metric, String us) {
    return QuantityWords.unitOf(metric).stream()
        .map(Unit::dimension)
        .anyMatch(
            d ->
                QuantityWords.read(metric, d)
                    .flatMap(m -> QuantityWords.read(us, d).map(u -> agree(m, u)))
                    .orElse(false));
  }

  private static boolean agree(Quantity metric, Quantity us) {
    double room = room(metric);
    return metric.unit().belongsTo(UnitSystem.METRIC)
        && us.unit().belongsTo(UnitSystem.US)
        && Math.abs(metric.si() - us.si()) <= room;
  }

  private static double room(Quantity metric) {
    double share = ROUND_NUMBERS * Math.abs(metric.si());
    return switch (metric.dimension()) {
      case TEMPERATURE -> WHOLE_DEGREES;
      case TEMPERATURE_DIFFERENCE -> Math.max(share, HALF_A_FAHRENHEIT);
      default -> share;
    };
  }
}
