package lapline.grading.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;
import lapline.grading.Grading;
import lapline.grading.SeeGradings;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Anchor;
import lapline.practice.PracticeTask.RubricItem;
import lapline.practice.pages.ResultPage;
import lapline.practice.pages.Say;

/** What instructors' eyes said about a judged panel, as a part of its pages. */
@Named
@RequestScoped
public class EyePage {
  @Inject private SignedIn signedIn;
  @Inject private SeeGradings see;
  @Inject private ResultPage result;
  @Inject private Say say;
  private List<Seen> seen;

  /** One grading, written out. */
  public record Seen(Grading grading, String grader, List<Line> lines, DefectMap map) {}

  /**
   * A rubric item with what the panel looked like.
   *
   * @param low below what an accepted panel needs
   */
  public record Line(String label, int mark, int most, String looksLike, boolean low) {}

  /** Latest first. */
  public List<Seen> of(Attempt attempt) {
    if (seen == null) {
      seen = see.of(signedIn.person(), attempt.id()).stream().map(this::seen).toList();
    }
    return seen;
  }

  private Seen seen(SeeGradings.Signed signed) {
    PracticeTask task = result.getTask();
    List<Line> lines =
        task.rubric().stream().flatMap(item -> line(item, signed.grading()).stream()).toList();
    DefectMap map = DefectMap.of(task, signed.grading().defects(), say.writer());
    return new Seen(signed.grading(), signed.grader(), lines, map);
  }

  private static Optional<Line> line(RubricItem item, Grading grading) {
    Integer mark = grading.marks().get(item.id());
    int most = item.anchors().stream().mapToInt(Anchor::mark).max().orElse(0);
    return item.anchors().stream()
        .filter(a -> mark != null && a.mark() == mark)
        .findFirst()
        .map(a -> new Line(item.label(), mark, most, a.looksLike(), mark < item.acceptedFrom()));
  }
}
