package lapline.practice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lapline.practice.PracticeTask.Field;
import lapline.practice.quantity.Measured;
import lapline.practice.quantity.MeasuredPanel;

/** From which fields of a task's record a target is judged; what it rests on most comes first. */
public final class TargetSources {
  private static final PanelEntry NOTHING = PanelEntry.of(List.of());

  private TargetSources() {}

  /** Empty where the task asks for none of them. */
  public static List<Field> of(PracticeTask task, Criterion criterion) {
    // a quantity says what it is taken from when nothing was read
    Stream<String> measurands =
        criterion.measure(new MeasuredPanel(task, NOTHING)) instanceof Measured.Missing missing
            ? missing.measurands().stream()
            : Stream.of(criterion.quantity());
    return measurands.map(task::field).flatMap(Optional::stream).toList();
  }
}
