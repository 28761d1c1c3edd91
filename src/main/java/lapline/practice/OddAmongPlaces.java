package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;

/**
 * Asks back about a film reading far from what the other places read, as one nought too many makes
 * it: no task says how thick old paint may be, but the places beside it do. It is a question only;
 * the reading counts as it stands.
 */
final class OddAmongPlaces {
  private static final List<String> ASKED = List.of("film-before", "film-after");

  /** More than so many times the middle of the others, or less than its so manieth part. */
  private static final double FAR = 3;

  /** With fewer other places nobody can say which of them is the odd one. */
  private static final int LEAST_OTHERS = 4;

  /** On bare metal a gauge reads three times as much by chance alone. */
  private static final double COVERAGE = 3;

  private final Measurand measurand;
  private final List<Reading> readings;
  private final UnitSystem units;

  private OddAmongPlaces(Measurand measurand, List<Reading> readings, UnitSystem units) {
    this.measurand = measurand;
    this.readings = readings;
    this.units = units;
  }

  /**
   * @param asked what is asked already; such a reading is neither asked about again nor held
   *     against others, since it may be in another unit
   */
  static List<FieldProblem> questions(
      PanelEntry entry, Measurands measurands, List<FieldProblem> asked, UnitSystem units) {
    Set<String> cells = asked.stream().map(FieldProblem::cell).collect(Collectors.toSet());
    List<FieldProblem> questions = new ArrayList<>();
    for (String id : ASKED) {
      List<Reading> left =
          entry.of(id).stream().filter(r -> !cells.contains(r.cell().key())).toList();
      if (left.size() > LEAST_OTHERS) {
        questions.addAll(new OddAmongPlaces(measurands.require(id), left, units).questions());
      }
    }
    return questions;
  }

  private List<FieldProblem> questions() {
    return readings.stream().map(this::question).flatMap(Optional::stream).toList();
  }

  private Optional<FieldProblem> question(Reading reading) {
    double middle = middleOfOthers(reading);
    return isFar(reading, middle)
        ? Optional.of(
            FieldProblem.at(
                reading.cell(), "entry.question.among", shown(reading.value()), shown(middle)))
        : Optional.empty();
  }

  private boolean isFar(Reading reading, double middle) {
    double value = reading.value();
    double chance = Math.hypot(reading.standardUncertainty(), measurand.uncertaintyAt(middle));
    return (value > FAR * middle || value < middle / FAR)
        && Math.abs(value - middle) > COVERAGE * chance;
  }

  private double middleOfOthers(Reading reading) {
    double[] others =
        readings.stream().filter(r -> r != reading).mapToDouble(Reading::value).sorted().toArray();
    int half = others.length / 2;
    return others.length % 2 == 1 ? others[half] : (others[half - 1] + others[half]) / 2;
  }

  private String shown(double si) {
    return QuantityWriter.inField(si, measurand.spoken(), units);
  }
}
