package lapline.practice;

import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;

/** What is wrong in the files of practice tasks and measurands. */
@Dependent
public class TaskNotices implements ContentNotices {
  @Inject private PracticeTasks tasks;

  @Override
  public List<Problem> problems() {
    return tasks.problems();
  }
}
