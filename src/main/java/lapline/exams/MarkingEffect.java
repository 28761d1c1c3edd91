package lapline.exams;

import java.util.List;
import java.util.stream.Collectors;
import lapline.exams.MarkedAnew.Mark;
import lapline.people.Secrets;

/**
 * What marking papers anew would do, before it is done.
 *
 * @param leavesOut true where a question would be taken out, false where it would count again
 * @param papers all that would be marked anew, also those whose result stays what it is
 */
public record MarkingEffect(boolean leavesOut, List<Change> papers) {
  private static final double SAME = 1e-9;

  public MarkingEffect {
    papers = List.copyOf(papers);
  }

  /** One paper, as it stands and as it would. */
  public record Change(Sitting sitting, Mark before, Mark after) {

    public boolean changes() {
      return Math.abs(before.score() - after.score()) > SAME || passes() || falls();
    }

    public boolean passes() {
      return after.passed() && !before.passed();
    }

    public boolean falls() {
      return before.passed() && !after.passed();
    }
  }

  public boolean isEmpty() {
    return papers.isEmpty();
  }

  /** How many papers would get another result. */
  public long changing() {
    return papers.stream().filter(Change::changes).count();
  }

  /** Papers that would pass and did not. */
  public List<Change> passing() {
    return papers.stream().filter(Change::passes).toList();
  }

  /** Papers that would no longer pass. */
  public List<Change> falling() {
    return papers.stream().filter(Change::falls).toList();
  }

  /** The same for the same effect: shows that what is done is what was looked at. */
  public String seal() {
    return Secrets.digest(
        papers.stream()
            .map(c -> c.sitting().id() + " " + c.before().score() + " " + c.after().score())
            .sorted()
            .collect(Collectors.joining("\n", leavesOut + "\n", "")));
  }
}
