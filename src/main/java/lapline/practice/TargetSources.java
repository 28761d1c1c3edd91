package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import lapline.practice.PracticeTask.Field;

/** From which fields of a task's record a target is judged; what it rests on most comes first. */
public final class TargetSources {
  private TargetSources() {}

  /** Empty where the task asks for none of them. */
  public static List<Field> of(PracticeTask task, Criterion criterion) {
    List<Field> fields = new ArrayList<>();
    for (String measurand : criterion.sources()) {
      task.field(measurand).ifPresent(fields::add);
    }
    return fields;
  }
}
