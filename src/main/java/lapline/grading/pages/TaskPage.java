package lapline.grading.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Optional;
import lapline.grading.CriterionStudied;
import lapline.grading.StudyTasks;
import lapline.grading.TaskStudied;
import lapline.grading.TaskStudyRecords.Agreed;
import lapline.grading.TaskStudyRecords.Tries;
import lapline.judgement.agreement.CohensKappa;
import lapline.pages.Messages;
import lapline.pages.Once;
import lapline.people.SignedIn;
import lapline.practice.PracticeTasks;

/** Is this practice task any good, and are its targets? */
@Named
@RequestScoped
public class TaskPage {
  /** Fewer panels make the limits of kappa rough: common practice, no source. */
  private static final int MANY = 30;

  @Inject private SignedIn signedIn;
  @Inject private StudyTasks study;
  @Inject private PracticeTasks tasks;
  @Inject private StudyWords words;
  @Inject private Messages messages;

  @Inject
  @ManagedProperty("#{param.task}")
  private String taskId;

  private final Once<TaskStudied> studied =
      new Once<>(() -> study.one(signedIn.person(), String.valueOf(taskId)));

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getStudied();
  }

  public TaskStudied getStudied() {
    return studied.get();
  }

  public String getTitle() {
    String title = getStudied().task().title();
    return getStudied().isTelling()
        ? messages.say(
            "study.task.title", title, getStudied().lookAt(), getStudied().criteria().size())
        : messages.say("study.task.title.too-few", title);
  }

  public String getFigures() {
    Tries t = getStudied().tries();
    return t.panels() == 0
        ? messages.get("study.task.none")
        : messages.say(
            t.laterTries() == 0 ? "study.task.figures.once" : "study.task.figures",
            t.panels(),
            t.people(),
            words.share(t.firstAccepted(), t.firstTries()),
            words.share(t.laterAccepted(), t.laterTries()));
  }

  /** Whether a data sheet can say another target. */
  public boolean isChangeable(CriterionStudied c) {
    return c.criterion().hasRange(tasks.measurands());
  }

  /** How far numbers and eye agree. */
  public String getAgreement() {
    Agreed agreed = getStudied().agreed();
    if (agreed.panels() < CriterionStudied.ENOUGH) {
      return messages.say("study.agree.few", agreed.panels(), CriterionStudied.ENOUGH);
    }
    Optional<CohensKappa> kappa = getStudied().kappa();
    return kappa.map(this::say).orElse(messages.say("study.agree.one-mind", agreed.panels()));
  }

  private String say(CohensKappa k) {
    if (k.standardError() == 0) {
      return messages.say("study.agree.full", k.observed(), k.cases(), k.kappa());
    }
    String said =
        messages.say("study.agree.say", k.observed(), k.cases(), k.kappa(), k.least(), k.most());
    return k.cases() < MANY ? said + " " + messages.say("study.agree.rough", MANY) : said;
  }
}
