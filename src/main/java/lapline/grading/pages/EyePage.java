package lapline.grading.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lapline.grading.Grading;
import lapline.grading.SeeGradings;
import lapline.pages.Messages;
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
  @Inject private Messages messages;
  private List<Seen> seen;

  /** One grading, written out. */
  public record Seen(Grading grading, String grader, List<Line> lines, DefectMap map) {}

  /**
   * A rubric item with what the panel looked like.
   *
   * @param low below what an accepted panel needs
   * @param safeWork whether it is about how safely the person worked
   */
  public record Line(
      String label, int mark, int most, String looksLike, boolean low, boolean safeWork) {}

  /** Latest first. */
  public List<Seen> of(Attempt attempt) {
    if (seen == null) {
      seen = see.of(signedIn.person(), attempt.id()).stream().map(this::seen).toList();
    }
    return seen;
  }

  /** What was decided by eye and stands; null while nobody has. */
  public Seen decided(Attempt attempt) {
    return of(attempt).stream()
        .filter(s -> s.grading().decision().name().equals(attempt.state().name()))
        .findFirst()
        .orElse(null);
  }

  /** What was too low for this panel, safe work before all else. */
  public List<Line> tooLow(Seen seen) {
    return seen.lines().stream()
        .filter(Line::low)
        .sorted(Comparator.comparing(line -> !line.safeWork()))
        .toList();
  }

  /** The answer of a result page: a person's decision goes before the numbers. */
  public String title(Attempt attempt, String byNumbers) {
    Seen decided = decided(attempt);
    if (decided == null) {
      return byNumbers;
    }
    boolean unsafe = decided.lines().stream().anyMatch(line -> line.low() && line.safeWork());
    String key = "grading.decided." + decided.grading().decision() + (unsafe ? ".unsafe" : "");
    return messages.say(key, decided.grader());
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
        .map(
            a ->
                new Line(
                    item.label(),
                    mark,
                    most,
                    a.looksLike(),
                    mark < item.acceptedFrom(),
                    item.ratesSafeWork()));
  }
}
