package lapline.practice;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * Asks back about a reading that can be, but lies so far from what the task asks for that another
 * unit was more likely meant: 20 in a field in kPa where 18 to 22 psi are wanted. It is a question
 * only; the reading counts as it stands.
 */
final class OddReading {
  private static final Set<Dimension> ASKED =
      EnumSet.of(
          Dimension.FILM,
          Dimension.LENGTH,
          Dimension.SPEED,
          Dimension.PRESSURE,
          Dimension.TEMPERATURE,
          Dimension.VOLUME,
          Dimension.DURATION);

  private final Measurand measurand;
  private final Expected expected;
  private final UnitSystem units;

  private OddReading(Measurand measurand, Expected expected, UnitSystem units) {
    this.measurand = measurand;
    this.expected = expected;
    this.units = units;
  }

  /**
   * @param bare whether it was typed without a unit
   * @return empty where there is nothing to ask
   */
  static Optional<FieldProblem> question(
      PracticeTask task, Measurand measurand, Reading reading, boolean bare, UnitSystem units) {
    // of what has a nought of its own, nothing at all is no other unit
    boolean nothing = measurand.dimension() != Dimension.TEMPERATURE && !(reading.value() > 0);
    if (nothing || !ASKED.contains(measurand.dimension())) {
      return Optional.empty();
    }
    return Expected.of(task, measurand)
        .map(expected -> new OddReading(measurand, expected, units))
        .flatMap(odd -> odd.asked(reading, bare));
  }

  private Optional<FieldProblem> asked(Reading reading, boolean bare) {
    double si = reading.value();
    if (expected.usual().contains(si)) {
      return Optional.empty();
    }
    Optional<Unit> other =
        bare ? new MeantUnit(measurand, units).expected(si, expected) : Optional.empty();
    String shown = shown(si);
    if (other.isPresent()) {
      String symbol = other.get().symbol();
      String number = QuantityWriter.number(si, measurand.spoken(), units);
      return Optional.of(
          FieldProblem.at(
              reading.cell(), "entry.question.unit", shown, symbol, number + "\u00a0" + symbol));
    }
    return expected.believable().contains(si)
        ? Optional.empty()
        : Optional.of(FieldProblem.at(reading.cell(), "entry.question.far", shown));
  }

  /** In the unit of its field; a time as it is spoken of, since '10 h?' shows the slip. */
  private String shown(double si) {
    return measurand.dimension() == Dimension.DURATION
        ? QuantityWriter.write(si, measurand.spoken(), units)
        : QuantityWriter.inField(si, measurand.spoken(), units);
  }
}
