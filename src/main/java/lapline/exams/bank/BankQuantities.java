package lapline.exams.bank;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.content.YamlNode;
import lapline.content.units.BothUnits;
import lapline.content.units.PerSystem;
import lapline.content.units.Quantity;
import lapline.content.units.QuantityWords;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Unit;

/** Reads the numbers of a question: answers, tolerances and the ranges that values come from. */
final class BankQuantities {
  private static final Pattern RANGE =
      Pattern.compile("([-\\d.]+)\\s+to\\s+([-\\d.]+)\\s+by\\s+(.+)");
  private static final String HOW_TO_WRITE =
      "write it like 27 um, 2 h or 3, for both systems alike";
  private static final double ROUNDING = 1e-6;

  private BankQuantities() {}

  /** An answer, such as {@code 13 mm | 0.5 in}; both sides must measure the same kind of thing. */
  static PerSystem<Quantity> answer(YamlNode node) {
    PerSystem<Quantity> both = both(node, BankQuantities::quantity, HOW_TO_WRITE);
    if (both.metric().dimension() != both.us().dimension()) {
      node.problem("the two sides measure different things", "give the same quantity twice");
    }
    return both;
  }

  static Tolerance tolerance(YamlNode node, Dimension answer) {
    Tolerance within = new Tolerance(both(node, BankQuantities::quantity, HOW_TO_WRITE).metric());
    // nothing at all needs no unit
    if (within.amount().si() == 0) {
      return within;
    }
    if (!within.fits(answer)) {
      node.problem(
          "'" + node.text() + "' is no tolerance for this answer",
          "write it in a unit of the answer, in K for temperatures, or in %");
    }
    return within;
  }

  /** Such as {@code 60 to 90 by 5 um | 2 to 3 by 0.25 mil}, or one value. */
  static PerSystem<ValueRange> range(YamlNode node) {
    return both(node, BankQuantities::range, "write it like 60 to 90 by 5 um, or one value");
  }

  private static <T> PerSystem<T> both(
      YamlNode node, Function<String, Optional<T>> read, String whatToWrite) {
    PerSystem<String> texts = BothUnits.split(node.text());
    Optional<T> metric = read.apply(texts.metric());
    Optional<T> us = read.apply(texts.us());
    if (metric.isEmpty() || us.isEmpty()) {
      node.problem("'" + node.text() + "' is not understood", whatToWrite);
    }
    T standIn = read.apply("1").orElseThrow();
    return new PerSystem<>(metric.orElse(standIn), us.orElse(standIn));
  }

  private static Optional<Quantity> quantity(String text) {
    return QuantityWords.read(text);
  }

  private static Optional<ValueRange> range(String text) {
    Matcher m = RANGE.matcher(text);
    if (!m.matches()) {
      return quantity(text).map(q -> new ValueRange(q.figures(), 1, 0, q.unit()));
    }
    return quantity(m.group(3))
        .flatMap(step -> range(number(m.group(1)), number(m.group(2)), stepOf(step), step.unit()));
  }

  private static double stepOf(Quantity step) {
    return step.unit().fromSi(step.si());
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** Empty unless whole steps, and at least one, lead from the first to the last value. */
  private static Optional<ValueRange> range(double from, double to, double step, Unit unit) {
    double steps = (to - from) / step;
    boolean whole = Math.abs(steps - Math.rint(steps)) < ROUNDING && Math.rint(steps) >= 1;
    return whole
        ? Optional.of(new ValueRange(from, step, (int) Math.rint(steps), unit))
        : Optional.empty();
  }
}
