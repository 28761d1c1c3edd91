package lapline.grading.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.grading.CriterionStudied;
import lapline.grading.StudyTasks;
import lapline.pages.Messages;
import lapline.pages.Once;
import lapline.people.SignedIn;

/** How do our practice tasks go? */
@Named
@RequestScoped
public class TasksPage {
  @Inject private SignedIn signedIn;
  @Inject private StudyTasks study;
  @Inject private Messages messages;

  private final Once<List<StudyTasks.Row>> rows = new Once<>(() -> study.all(signedIn.person()));

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getRows();
  }

  public List<StudyTasks.Row> getRows() {
    return rows.get();
  }

  public String getTitle() {
    long panels = getRows().stream().mapToLong(r -> r.tries().panels()).sum();
    return messages.say("study.tasks.title", panels);
  }

  /** From how many tries on shares are said. */
  public int getEnough() {
    return CriterionStudied.ENOUGH;
  }
}
