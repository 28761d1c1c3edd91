package lapline.practice;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lapline.practice.Criterion.Judged;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * Asks back about a reading that can be, but lies so far from what the task asks for that another
 * unit was more likely meant: 20 in a field in kPa where 18 to 22 psi are wanted. It is a question
 * only; the reading counts as it stands.
 */
final class OddReading {
  /** Below a fifth of the least, or above five times the most, another unit is looked for. */
  private static final double FAR = 5;

  /** With nothing but one limit, what is good can be far from it. */
  private static final double FAR_FROM_ONE_LIMIT = 50;

  /** So far away a reading is asked about though no other unit explains it. */
  private static final double BEYOND = 10;

  /** Kinds that have a nought of their own, so that ten times as much means much more. */
  private static final Set<Dimension> ASKED =
      EnumSet.of(
          Dimension.FILM,
          Dimension.LENGTH,
          Dimension.SPEED,
          Dimension.PRESSURE,
          Dimension.VOLUME,
          Dimension.DURATION);

  private final Measurand measurand;
  private final TargetRange target;
  private final UnitSystem units;

  private OddReading(Measurand measurand, TargetRange target, UnitSystem units) {
    this.measurand = measurand;
    this.target = target;
    this.units = units;
  }

  /**
   * @param bare whether it was typed without a unit
   * @return empty where there is nothing to ask
   */
  static Optional<FieldProblem> question(
      PracticeTask task, Measurand measurand, Reading reading, boolean bare, UnitSystem units) {
    if (!ASKED.contains(measurand.dimension()) || !(reading.value() > 0)) {
      return Optional.empty();
    }
    return task.criteria().stream()
        .filter(c -> isAbout(c, measurand))
        .map(c -> new OddReading(measurand, c.target(), units))
        .findFirst()
        .flatMap(odd -> odd.asked(reading, bare));
  }

  private static boolean isAbout(Criterion c, Measurand m) {
    boolean alike = c.judged() == Judged.MEAN || c.judged() == Judged.EACH;
    boolean same =
        c.quantity().equals(m.id())
            || PanelQuantities.find(c.quantity())
                .filter(q -> q.like().contains(m.id()))
                .isPresent();
    return alike && same && c.dimension() == m.dimension();
  }

  /** The unit that the same number would rather be in; empty where none makes sense. */
  static Optional<Unit> meant(Measurand measurand, double si, TargetRange about, UnitSystem units) {
    double number = measurand.spoken().in(units).fromSi(si);
    return Arrays.stream(Unit.values())
        .filter(u -> u.dimension() == measurand.dimension())
        .filter(u -> about.contains(u.toSi(number)))
        .findFirst();
  }

  private Optional<FieldProblem> asked(Reading reading, boolean bare) {
    double si = reading.value();
    if (!isFar(si, FAR)) {
      return Optional.empty();
    }
    Optional<Unit> other = bare ? meant(measurand, si, near(), units) : Optional.empty();
    String shown = QuantityWriter.write(si, measurand.spoken(), units);
    if (other.isPresent()) {
      String symbol = other.get().symbol();
      String number = QuantityWriter.number(si, measurand.spoken(), units);
      return Optional.of(
          FieldProblem.at(
              reading.cell(), "entry.question.unit", shown, symbol, number + "\u00a0" + symbol));
    }
    return isFar(si, BEYOND)
        ? Optional.of(FieldProblem.at(reading.cell(), "entry.question.far", shown))
        : Optional.empty();
  }

  private boolean isFar(double si, double times) {
    double below = target.hasLeast() ? target.least() / times : target.most() / FAR_FROM_ONE_LIMIT;
    double above = target.hasMost() ? target.most() * times : target.least() * FAR_FROM_ONE_LIMIT;
    return si < below || si > above;
  }

  /** Where a number in its right unit would lie. */
  private TargetRange near() {
    double low = target.hasLeast() ? target.least() / 2 : target.most() / 20;
    double high = target.hasMost() ? target.most() * 2 : target.least() * 20;
    return new TargetRange(Math.min(low, high), Math.max(low, high));
  }
}
