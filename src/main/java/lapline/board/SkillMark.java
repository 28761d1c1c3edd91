package lapline.board;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import lapline.signoff.SignOff;
import lapline.signoff.Skill;
import lapline.signoff.Standing;

/**
 * What a person may do of one skill at a moment, or how far they are from it.
 *
 * @param until when a good one ends or a past one ended; null where there never was one
 * @param endsSoon whether a good one ends within the next 90 days
 * @param signOff id of the latest sign-off; null where there never was one
 * @param have steps of the rule that are there: lesson, exam, panels that count, panels graded
 * @param need steps that the rule asks for in all
 */
public record SkillMark(
    Skill skill, Kind kind, Instant until, boolean endsSoon, UUID signOff, int have, int need) {
  /** Whoever plans cover has to see an end so long before it comes. */
  private static final Duration SOON = Duration.ofDays(90);

  /** In words on the board. */
  public enum Kind {
    GOOD,
    SUSPENDED,
    WITHDRAWN,
    EXPIRED,
    /** Evidence is complete; an examiner has still to decide. */
    READY,
    ON_THE_WAY,
    NOT_BEGUN
  }

  /**
   * @param latest null where nothing was ever granted
   * @param standing null where the person has not begun
   */
  static SkillMark of(Skill skill, SignOff latest, Standing standing, Instant now) {
    Kind kind = latest == null ? towards(standing) : past(latest.at(now), standing);
    Instant until = latest == null ? null : latest.expires();
    return new SkillMark(
        skill,
        kind,
        until,
        kind == Kind.GOOD && until.isBefore(now.plus(SOON)),
        latest == null ? null : latest.id(),
        have(skill.rule(), standing),
        need(skill.rule()));
  }

  /** Who has shown it all again waits for the examiner, whatever came of the last sign-off. */
  private static Kind past(SignOff.Standing worth, Standing standing) {
    return switch (worth) {
      case GOOD -> Kind.GOOD;
      case SUSPENDED -> Kind.SUSPENDED;
      case WITHDRAWN -> isReady(standing) ? Kind.READY : Kind.WITHDRAWN;
      case EXPIRED -> isReady(standing) ? Kind.READY : Kind.EXPIRED;
    };
  }

  private static Kind towards(Standing standing) {
    if (isReady(standing)) {
      return Kind.READY;
    }
    boolean begun =
        standing != null
            && (standing.lessonDone() || standing.examPassed() || standing.panelsCounting() > 0);
    return begun ? Kind.ON_THE_WAY : Kind.NOT_BEGUN;
  }

  private static boolean isReady(Standing standing) {
    return standing != null && standing.readySince() != null;
  }

  private static int have(Skill.Rule rule, Standing s) {
    if (s == null) {
      return 0;
    }
    return (rule.lesson() && s.lessonDone() ? 1 : 0)
        + (rule.exam() && s.examPassed() ? 1 : 0)
        + Math.min(s.panelsCounting(), rule.accepted())
        + Math.min(s.gradedCounting(), rule.graded());
  }

  private static int need(Skill.Rule rule) {
    return (rule.lesson() ? 1 : 0) + (rule.exam() ? 1 : 0) + rule.accepted() + rule.graded();
  }

  /** Which words and which look it has: its kind, or that a good one ends soon. */
  public String look() {
    return endsSoon ? "SOON" : kind.name();
  }

  public boolean isGood() {
    return kind == Kind.GOOD;
  }

  /** How much of the mark is filled: all for a good one, else the share of the rule that is met. */
  public double filled() {
    return switch (kind) {
      case GOOD -> 1;
      case READY, ON_THE_WAY -> need == 0 ? 0 : (double) have / need;
      default -> 0;
    };
  }
}
