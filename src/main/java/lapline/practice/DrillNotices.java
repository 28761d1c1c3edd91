package lapline.practice;

import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;

/** What is wrong in the file of drills. */
@Dependent
public class DrillNotices implements ContentNotices {
  @Inject private Drills drills;

  @Override
  public List<Problem> problems() {
    return drills.problems();
  }
}
