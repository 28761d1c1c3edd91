package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Set;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.photographs.CleanPicture;
import lapline.practice.photographs.LookAfterPhotographs;
import lapline.practice.photographs.Photograph;

/** The photographs of a panel, as a part of its pages. */
@Named
@RequestScoped
public class PhotographsPage {
  private static final Set<String> GOOD = Set.of("added", "removed");
  private static final Set<String> WRONG =
      Set.of(
          "none",
          "no-image",
          "too-many-bytes",
          "too-much-together",
          "too-many-pixels",
          "too-many",
          "graded",
          "busy");

  @Inject private SignedIn signedIn;
  @Inject private LookAfterPhotographs photographs;
  private List<Photograph> found;

  public List<Photograph> of(Attempt attempt) {
    if (found == null) {
      found = photographs.of(signedIn.person(), attempt.id());
    }
    return found;
  }

  public boolean mayAdd(Attempt attempt) {
    return attempt.state() != Attempt.State.ACCEPTED
        && (attempt.belongsTo(signedIn.person().id()) || signedIn.person().is(Role.INSTRUCTOR));
  }

  public boolean mayRemove(Attempt attempt) {
    return mayAdd(attempt) && LookAfterPhotographs.mayLose(attempt);
  }

  /** Whether there is a form, beside whose field what is wrong can stand. */
  public boolean hasForm(Attempt attempt) {
    return mayAdd(attempt) && hasRoom(attempt);
  }

  public boolean isGraded(Attempt attempt) {
    return !LookAfterPhotographs.mayLose(attempt);
  }

  private boolean hasRoom(Attempt attempt) {
    return of(attempt).size() < LookAfterPhotographs.MOST;
  }

  public int getMostBytes() {
    return CleanPicture.MOST_BYTES;
  }

  public long getMostBytesTogether() {
    return CleanPicture.MOST_BYTES_TOGETHER;
  }

  public int getMost() {
    return LookAfterPhotographs.MOST;
  }

  public boolean isGood(String outcome) {
    return outcome != null && GOOD.contains(outcome);
  }

  public boolean isWrong(String outcome) {
    return outcome != null && WRONG.contains(outcome);
  }
}
