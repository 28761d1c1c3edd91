package lapline.practice;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.practice.ReadTarget.NotUnderstood;
import lapline.practice.ReadTarget.Understood;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.ReadQuantity.Problem;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;

/**
 * Targets as people and data sheets write them: {@code 3 to 5 in}, {@code 50-65 µm}, {@code 24 psi
 * ± 1}, {@code at least 3 °C}, {@code max. 5 mm}.
 */
public final class TargetText {
  private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
  private static final String LEAST = "at least|not less than|min(?:\\.|imum)?|≥|>=|>";
  private static final String MOST = "at most|not more than|up to|max(?:\\.|imum)?|≤|<=|<";
  private static final Pattern ONE_SIDED =
      Pattern.compile("(?:(" + LEAST + ")|" + MOST + ")\\s*([^a-z].*)", FLAGS);
  private static final Pattern ABOUT = Pattern.compile("(.+?)\\s*(?:±|\\+/-|\\+-)\\s*(.+)");
  private static final Pattern RANGE =
      Pattern.compile("(.+?)\\s*(?:\\bto\\b|\\.\\.)\\s*(.+)", FLAGS);

  /** The hyphen of data sheets stands behind a number or its unit; any other is a minus. */
  private static final Pattern HYPHEN =
      Pattern.compile("(.*?[\\d¼½¾\\p{L}%°\"'])\\s*[-‐‑‒–—−]\\s*(P?[\\d.,¼½¾].*)");

  private static final Pattern UNIT_AT_END =
      Pattern.compile(".*?[\\d¼½¾]\\s*([^\\d\\s.,/¼½¾][^\\d]*)");
  private static final Pattern WORDS =
      Pattern.compile("^(?:" + LEAST + "|" + MOST + ")|\\bto\\b|\\.\\.|±|\\+/-", FLAGS);
  private static final Pattern BARE =
      Pattern.compile("[-‐‑‒–—−+\\d.,/\\s]*\\d[-‐‑‒–—−+\\d.,/\\s]*");

  private final String text;
  private final SpokenUnits spoken;
  private final UnitSystem assumed;

  private TargetText(String text, SpokenUnits spoken, UnitSystem assumed) {
    this.text = tidy(text);
    this.spoken = spoken;
    this.assumed = assumed;
  }

  /**
   * A range in the SI unit of the dimension, or what keeps the text from being one.
   *
   * @param assumed the unit system of numbers without a unit
   */
  public static ReadTarget understand(String text, Dimension dimension, UnitSystem assumed) {
    return understand(text, SpokenUnits.usual(dimension), assumed);
  }

  /** As above, a number without a unit being in the one that is spoken of. */
  public static ReadTarget understand(String text, SpokenUnits spoken, UnitSystem assumed) {
    return new TargetText(text, spoken, assumed).read();
  }

  /** The range of {@link #understand}; empty when the text is none. */
  public static Optional<TargetRange> read(String text, Dimension dimension, UnitSystem assumed) {
    return understand(text, dimension, assumed).asRange();
  }

  /** The text with the unit that was meant, so that it means the same to whoever reads it later. */
  public static String withUnit(String text, Dimension dimension, UnitSystem assumed) {
    return withUnit(text, SpokenUnits.usual(dimension), assumed);
  }

  static String withUnit(String text, SpokenUnits spoken, UnitSystem assumed) {
    String symbol = isBare(tidy(text)) ? spoken.in(assumed).symbol() : "";
    return symbol.isEmpty() ? tidy(text) : tidy(text) + " " + symbol;
  }

  /** Whether a text names no unit. */
  static boolean isBare(String text) {
    return BARE.matcher(WORDS.matcher(text).replaceAll(" ")).matches();
  }

  private static String tidy(String text) {
    return text == null ? "" : text.strip();
  }

  private ReadTarget read() {
    Matcher oneSided = ONE_SIDED.matcher(text);
    if (oneSided.matches()) {
      return oneSided(oneSided.group(1) != null, quantity(oneSided.group(2), spoken));
    }
    Matcher about = ABOUT.matcher(text);
    if (about.matches()) {
      return pair(about, step(), this::around);
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return pair(range, spoken, this::between);
    }
    Matcher hyphen = HYPHEN.matcher(text);
    return hyphen.matches() ? pair(hyphen, spoken, this::between) : noRange();
  }

  private ReadTarget oneSided(boolean least, ReadQuantity limit) {
    if (!(limit instanceof ReadQuantity.Understood known)) {
      return refused(limit);
    }
    double si = known.si();
    return new Understood(least ? TargetRange.atLeast(si) : TargetRange.atMost(si));
  }

  /** The unit may stand behind either number or both: {@code 24 psi ± 1}, {@code 24 ± 1 psi}. */
  private ReadTarget pair(
      Matcher both,
      SpokenUnits second,
      BiFunction<ReadQuantity.Understood, ReadQuantity.Understood, ReadTarget> together) {
    ReadQuantity first = quantity(withUnitOf(both.group(1), both.group(2)), spoken);
    ReadQuantity other = quantity(withUnitOf(both.group(2), both.group(1)), second);
    if (first instanceof ReadQuantity.Understood a && other instanceof ReadQuantity.Understood b) {
      return together.apply(a, b);
    }
    return refused(first instanceof ReadQuantity.Understood ? other : first);
  }

  private ReadTarget around(ReadQuantity.Understood middle, ReadQuantity.Understood either) {
    double half = either.si();
    return half < 0
        ? notARange()
        : new Understood(new TargetRange(middle.si() - half, middle.si() + half));
  }

  private ReadTarget between(ReadQuantity.Understood least, ReadQuantity.Understood most) {
    return least.si() > most.si()
        ? problem("targets.wrong.reversed", least.shownAs(), most.shownAs())
        : new Understood(new TargetRange(least.si(), most.si()));
  }

  private SpokenUnits step() {
    return spoken.dimension() == Dimension.TEMPERATURE
        ? SpokenUnits.usual(Dimension.TEMPERATURE_DIFFERENCE)
        : spoken;
  }

  private ReadTarget noRange() {
    if (text.isEmpty()) {
      return problem("targets.wrong.empty", symbol());
    }
    return quantity(text, spoken) instanceof ReadQuantity.Understood
        ? problem("targets.wrong.one-value", text)
        : refused(quantity(text, spoken));
  }

  private ReadTarget refused(ReadQuantity quantity) {
    if (quantity instanceof ReadQuantity.NotUnderstood n && n.reason() == Problem.WRONG_UNIT) {
      String kind = n.args().get(2);
      String key = "targets.wrong.unit." + (kind.isEmpty() ? "none" : kind);
      return problem(key, n.args().get(0), n.args().get(1));
    }
    return notARange();
  }

  private ReadTarget notARange() {
    return problem("targets.wrong.not-a-range", text, symbol());
  }

  private String symbol() {
    String symbol = spoken.in(assumed).symbol();
    return symbol.isEmpty() ? "" : "\u00a0" + symbol;
  }

  /** '3' beside '5 in' is '3 in'. */
  private static String withUnitOf(String number, String other) {
    Matcher unit = UNIT_AT_END.matcher(other);
    return number.matches(".*[\\d¼½¾]") && unit.matches() ? number + " " + unit.group(1) : number;
  }

  private ReadQuantity quantity(String typed, SpokenUnits kind) {
    return QuantityReader.read(typed, kind, assumed);
  }

  private static NotUnderstood problem(String key, String... args) {
    return new NotUnderstood(key, List.of(args));
  }
}
