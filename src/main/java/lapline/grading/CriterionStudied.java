package lapline.grading;

import java.util.OptionalDouble;
import lapline.grading.TaskStudyRecords.Verdicts;
import lapline.practice.Criterion;

/** One criterion of a task, and what the panels say about it as a target for learners. */
public record CriterionStudied(Criterion criterion, Verdicts verdicts) {

  /** Fewer panels say nothing in shares: common practice, no source. */
  public static final int ENOUGH = 10;

  // common practice, no source; they ask for a look and decide nothing
  private static final double HARDLY_ANY = 0.05;
  private static final double NEARLY_ALL = 0.95;
  private static final double OFTEN = 0.3;
  private static final double SELDOM_READ = 0.5;

  /** A capability index below this is commonly called too coarse (JCGM 106:2012, 7.6.3). */
  static final double CAPABLE = 4;

  /** What an instructor should think of it, the gravest first. */
  public enum Worth {
    /** Hardly any panel meets it: the target may be out of reach. */
    OUT_OF_REACH,
    /** Often doubtful, and the readings are coarse beside the range. */
    TOO_COARSE,
    /** Often doubtful although the readings are fine enough, or nobody knows how fine they are. */
    OFTEN_DOUBTFUL,
    /** More panels leave it open than not. */
    SELDOM_READ,
    /** Nearly every panel meets it: no fault where it guards something, else it tells little. */
    ALWAYS_MET,
    TOO_FEW,
    GOOD
  }

  public Worth worth() {
    long judged = verdicts.judged();
    long asked = judged + verdicts.notJudged();
    if (asked < ENOUGH) {
      return Worth.TOO_FEW;
    }
    if (verdicts.notJudged() > SELDOM_READ * asked) {
      return Worth.SELDOM_READ;
    }
    if (judged < ENOUGH) {
      return Worth.TOO_FEW;
    }
    if (verdicts.doubtful() >= OFTEN * judged) {
      return isCoarse() ? Worth.TOO_COARSE : Worth.OFTEN_DOUBTFUL;
    }
    if (verdicts.met() <= HARDLY_ANY * judged) {
      return Worth.OUT_OF_REACH;
    }
    return verdicts.met() >= NEARLY_ALL * judged ? Worth.ALWAYS_MET : Worth.GOOD;
  }

  private boolean isCoarse() {
    return capability().orElse(CAPABLE) < CAPABLE;
  }

  /** Whether somebody should look at it. */
  public boolean needsALook() {
    return switch (worth()) {
      case OUT_OF_REACH, TOO_COARSE, OFTEN_DOUBTFUL, SELDOM_READ -> true;
      case ALWAYS_MET, TOO_FEW, GOOD -> false;
    };
  }

  /**
   * How many times the target is as wide as four standard uncertainties of what it is judged by;
   * nothing where it has one limit, or nobody knows.
   */
  public OptionalDouble capability() {
    Double share = verdicts.uncertaintyShare();
    return share == null || share == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / share);
  }
}
