package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;

/** What is wrong in the file of skills. */
@ApplicationScoped
public class SkillNotices implements ContentNotices {
  @Inject private Skills skills;

  @Override
  public List<Problem> problems() {
    return skills.problems();
  }
}
