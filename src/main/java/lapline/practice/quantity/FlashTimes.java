package lapline.practice.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lapline.practice.Cell;
import lapline.practice.CoatTimes;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Working;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.Gum.Part;

/**
 * The wait before each coat but the first, seconds: as written down, or else from the times at
 * which two coats were begun, less what the strokes of the former took with the turns between them.
 */
final class FlashTimes {
  /**
   * From one stroke to the next the hand turns and steps: 0 to 2 s, rectangular (common practice,
   * no source); the same for all turns of a coat, since it is a habit.
   */
  private static final Estimate TURN = Estimate.of(1, 2 / Math.sqrt(12));

  private static final Working AS_READ = new Working("formula.as-read", "source.plain", List.of());
  private static final Working COMPUTED =
      new Working("formula.flash-from-starts", "source.turns", List.of());

  private final PracticeTask task;
  private final PanelEntry entry;

  private FlashTimes(PracticeTask task, PanelEntry entry) {
    this.task = task;
    this.entry = entry;
  }

  static Optional<Measured> of(MeasuredPanel panel) {
    return new FlashTimes(panel.task(), panel.entry()).measured();
  }

  private Optional<Measured> measured() {
    List<Value> values = new ArrayList<>();
    boolean allRead = true;
    for (int coat = 2; coat <= task.coats(); coat++) {
      Cell where = Cell.coat("flash", coat);
      Optional<Estimate> read = entry.at(where).map(Reading::estimate);
      Optional<Estimate> wait = read.or(() -> fromStarts(where.coat()));
      wait.ifPresent(w -> values.add(Value.of(where, w)));
      allRead &= read.isPresent() || wait.isEmpty();
    }
    return Measured.of(values, allRead ? AS_READ : COMPUTED);
  }

  /** Empty where a time is missing, or where the strokes took longer than there was. */
  private Optional<Estimate> fromStarts(int coat) {
    Optional<Reading> former = entry.at(Cell.coat("coat-start", coat - 1));
    Optional<Reading> start = entry.at(Cell.coat("coat-start", coat));
    List<Estimate> strokes = strokes(coat - 1);
    if (former.isEmpty() || start.isEmpty() || strokes.isEmpty()) {
      return Optional.empty();
    }
    Estimate between = CoatTimes.between(former.get(), start.get());
    return Optional.of(lessSpraying(between, Averages.of(strokes))).filter(w -> w.value() >= 0);
  }

  private Estimate lessSpraying(Estimate between, Estimate stroke) {
    int passes = task.passesPerCoat();
    double spraying = passes * stroke.value() + (passes - 1) * TURN.value();
    return Gum.combine(
        between.value() - spraying,
        List.of(new Part(1, between), new Part(-passes, stroke), new Part(1 - passes, TURN)));
  }

  private List<Estimate> strokes(int coat) {
    return IntStream.rangeClosed(1, task.passesPerCoat())
        .mapToObj(pass -> entry.at(Cell.pass("stroke-time", coat, pass)))
        .flatMap(Optional::stream)
        .map(Reading::estimate)
        .toList();
  }
}
