package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Map;
import java.util.Set;
import lapline.board.ShowTrainingRecord;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.signoff.Evidence;
import lapline.signoff.Step;

/** What may I do, what is missing, and whom do I ask? */
@Named
@RequestScoped
public class MyRecordPage {
  private static final Set<Step.Kind> STOPPED = Set.of(Step.Kind.SUSPENDED, Step.Kind.WITHDRAWN);

  /** Where what the rule asks for can be seen and done. */
  private static final Map<String, String> WAYS =
      Map.of("signoff.evidence.lesson", "/learn/lesson", "signoff.evidence.exam", "/learn/paper");

  @Inject private SignedIn signedIn;
  @Inject private ShowTrainingRecord show;
  private TrainingRecord shown;

  public TrainingRecord getShown() {
    if (shown == null) {
      Person me = signedIn.person();
      shown = show.of(me, me.id());
    }
    return shown;
  }

  /** The step that took a sign-off away, the latest of its skill; null where it was none. */
  public TakenStep stopped(String skill) {
    return getShown().steps().stream()
        .filter(step -> step.skill().equals(skill))
        .findFirst()
        .filter(step -> STOPPED.contains(step.kind()))
        .orElse(null);
  }

  /** The page behind a figure; panels are listed with their unit. */
  public String way(Evidence.Line line) {
    return WAYS.getOrDefault(line.key(), "/learn/unit");
  }

  /** Where on that page: a list of panels stands below much else; null for the top. */
  public String part(Evidence.Line line) {
    return WAYS.containsKey(line.key()) ? null : "panels";
  }

  public String id() {
    return signedIn.person().id().toString();
  }
}
