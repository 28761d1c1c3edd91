package lapline.server;

import jakarta.enterprise.context.RequestScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.content.ContentNotices;
import lapline.content.Problem;
import lapline.people.Role;
import lapline.people.SignedIn;

/** Is everything in order in the course's files? */
@Named
@RequestScoped
public class NoticesPage {
  @Inject private SignedIn signedIn;
  @Inject @Any private Instance<ContentNotices> notices;

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
  }

  public List<Problem> getProblems() {
    return notices.stream().flatMap(n -> n.problems().stream()).sorted().toList();
  }
}
