package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.practice.Drill;
import lapline.practice.Drills;
import lapline.practice.PanelScore.Finding;

/** The drill that goes with a cause: {@code #{drillWords.of(task.id, finding)}}. */
@Named
@RequestScoped
public class DrillWords {
  @Inject private Drills drills;

  /** Null where there is none, or where it is not decided that this is the cause. */
  public Drill of(String task, Finding finding) {
    return finding == null || finding.undecided()
        ? null
        : drills.find(task, finding.id()).orElse(null);
  }
}
