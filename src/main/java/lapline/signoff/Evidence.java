package lapline.signoff;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/**
 * What speaks for one person having one skill, gathered from what they did; not the decision.
 *
 * @param panels the last scored panels that the rule looks at, newest first
 * @param tried how many panels were scored in all
 * @param learnt when lesson and exam were done
 */
public record Evidence(
    UUID person,
    Skill skill,
    boolean lessonDone,
    boolean examPassed,
    List<Panel> panels,
    int tried,
    Learnt learnt) {

  public Evidence {
    panels = List.copyOf(panels);
    // not written down with decisions of before
    learnt = learnt == null ? Learnt.NOTHING : learnt;
  }

  /**
   * When the lesson and the exam were done; each null where it was not.
   *
   * @param paper the exam that was passed
   * @param score its score, 0 to 1
   */
  public record Learnt(Instant read, Instant passed, UUID paper, Double score) {
    public static final Learnt NOTHING = new Learnt(null, null, null, null);
  }

  /**
   * One panel as evidence.
   *
   * @param byNumbers every critical criterion met
   * @param atBench accepted by an instructor's eye
   * @param returned sent back by an instructor
   */
  public record Panel(
      UUID attempt,
      String task,
      Instant scored,
      double practiceScore,
      boolean byNumbers,
      boolean atBench,
      boolean returned) {

    /** A panel counts when its numbers are good and no instructor sent it back. */
    public boolean counts() {
      return byNumbers && !returned;
    }
  }

  /**
   * One thing the rule asks for: how much there is and how much is needed.
   *
   * @param once whether it is a thing done once, so that it is there or not
   * @param on when it was done; null where it was not, or where that is not known
   */
  public record Line(String key, int have, int need, boolean once, Instant on) {
    public boolean isMet() {
      return have >= need;
    }

    /** Which sentence says what there is. */
    public String words() {
      if (!once) {
        return have > need ? "signoff.line.more" : "signoff.line.count";
      }
      String done = on == null ? "signoff.line.done" : "signoff.line.done-on";
      return isMet() ? done : "signoff.line.not-done";
    }
  }

  public int counting() {
    return (int) panels.stream().filter(Panel::counts).count();
  }

  /**
   * How many more panels it takes if every one of them counts: those that do not count have to drop
   * out from among the last ones first.
   */
  public int fewestMore() {
    Skill.Rule rule = skill.rule();
    int more = 0;
    while (more < rule.ofLast() && more + countingAmong(rule.ofLast() - more) < rule.accepted()) {
      more++;
    }
    return more;
  }

  private long countingAmong(int latest) {
    return panels.stream().limit(latest).filter(Panel::counts).count();
  }

  public int graded() {
    return (int) panels.stream().filter(p -> p.counts() && p.atBench()).count();
  }

  /**
   * Panels that an instructor's eye has still to look at, newest first; none once as many are
   * accepted at the bench as the rule asks for.
   */
  public List<Panel> waiting() {
    return graded() >= skill.rule().graded()
        ? List.of()
        : panels.stream().filter(p -> p.counts() && !p.atBench()).toList();
  }

  /**
   * The first moment at which time alone may change what there is here, since a panel grows too old
   * to count; null where none does.
   *
   * @param now where calendar months let a panel count a little longer, it is looked at daily
   */
  Instant holdsUntil(Instant now) {
    return panels.stream()
        .map(p -> p.scored().atOffset(ZoneOffset.UTC).plus(skill.rule().within()).toInstant())
        .map(old -> old.isAfter(now) ? old : now.plus(Duration.ofDays(1)))
        .min(Comparator.naturalOrder())
        .orElse(null);
  }

  /** What the rule asks for, in its order. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    if (skill.rule().lesson()) {
      lines.add(once("signoff.evidence.lesson", lessonDone, learnt.read()));
    }
    if (skill.rule().exam()) {
      lines.add(once("signoff.evidence.exam", examPassed, learnt.passed()));
    }
    lines.add(count("signoff.evidence.panels", counting(), skill.rule().accepted()));
    lines.add(count("signoff.evidence.graded", graded(), skill.rule().graded()));
    return lines;
  }

  private static Line once(String key, boolean done, Instant on) {
    return new Line(key, done ? 1 : 0, 1, true, done ? on : null);
  }

  private static Line count(String key, int have, int need) {
    return new Line(key, have, need, false, null);
  }

  public boolean isComplete() {
    return lines().stream().allMatch(Line::isMet);
  }
}
