package lapline.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * What the workshop shows an inspector about one person: which operations they may do and what
 * proves it. It says nothing about breathing protection or other training kept elsewhere.
 *
 * @param steps latest first
 */
public record TrainingRecord(
    Named person, String workshop, Instant made, List<Line> lines, List<TakenStep> steps) {

  /**
   * One skill.
   *
   * @param examiner who granted the latest sign-off; empty where there is none
   * @param granted null where there is none
   * @param code by which anybody may check the latest sign-off; empty where there is none
   * @param stopped the step by which it was suspended or withdrawn; null where it was not
   * @param proof what the examiner had before them when granting; null where there is none
   */
  public record Line(
      SkillMark mark,
      Instant granted,
      String ruleVersion,
      String examiner,
      String code,
      TakenStep stopped,
      Proof proof,
      long tried,
      long accepted) {

    /** The code in fours, as it is read from paper. */
    public String codeInFours() {
      return code.replaceAll("(.{4})(?=.)", "$1 ");
    }
  }

  /** Evidence as it was at the decision. */
  public record Proof(
      boolean lesson, boolean exam, int counting, int looked, int graded, int tried) {}

  public TrainingRecord {
    lines = List.copyOf(lines);
    steps = List.copyOf(steps);
  }

  /** What the person may do unsupervised today. */
  public List<Line> may() {
    return lines.stream().filter(l -> l.mark().isGood()).toList();
  }

  /** What the person may not do today: first what was signed off once and does not hold. */
  public List<Line> mayNot() {
    return lines.stream()
        .filter(l -> !l.mark().isGood())
        .sorted(Comparator.comparing(l -> l.granted() == null))
        .toList();
  }
}
