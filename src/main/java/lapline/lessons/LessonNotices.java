package lapline.lessons;

import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;

/** What is wrong in the units and lessons. */
@Dependent
public class LessonNotices implements ContentNotices {
  @Inject private Curriculum course;

  @Override
  public List<Problem> problems() {
    return course.problems();
  }
}
