package lapline.practice;

import java.util.List;
import java.util.Optional;
import lapline.content.Problem;
import lapline.practice.PanelScore.Finding;

/** All drills of the course. */
public record Drills(List<Drill> all, List<Problem> problems) {
  public Drills {
    all = List.copyOf(all);
    problems = List.copyOf(problems);
  }

  /** The one drill for a cause; none for a doubt, where something is to be read first. */
  public Optional<Drill> find(String task, String finding) {
    boolean doubt = finding.endsWith(Finding.DOUBT) || finding.endsWith(Finding.BLIND);
    return doubt ? Optional.empty() : all.stream().filter(d -> d.isFor(task, finding)).findFirst();
  }
}
