package lapline.trade.stroke;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * One reading that is off as the rival of a fault that is about to be named: it wins where, were a
 * stray as likely as none, it would tell all readings as well. The reading that would gain most is
 * set aside and all that may have happened is judged anew, the ways in which the passes may lie
 * included, since a stray may look like other passes.
 *
 * <p>By simulation: 15 readings of 900 even panels, of which nothing was written down, one of them
 * a fifth of the film off. A fault is named on 2; without this rival on 17, without the stray on 1.
 */
final class StrayRival {
  /** In ln, further than this ahead of a stray, roughly weighed, no fault is caught up with. */
  private static final double REACH = 9;

  private final PlanContest contest;
  private final Map<Integer, PlanContest> without = new HashMap<>();

  StrayRival(PlanContest contest) {
    this.contest = contest;
  }

  /**
   * Whether it takes the place of a fault of the contest's leader. Of what works across the strokes
   * only two or three places of a sheet tell, and each may be all there is to tell one end of the
   * panel from the other: there one reading is enough of a rival in {@link Round} already.
   *
   * @param verdict on it
   */
  boolean takes(Departure one, Round verdict) {
    Claim fault = verdict.claims().get(0);
    boolean along = !PlanContest.ACROSS.contains(one.getClass()) || fault.fault() == Fault.ONE_STEP;
    return along
        && fault.evidence() - verdict.evenStray() <= REACH
        && takes(
            verdict.stray(), verdict.weight(fault), c -> c.leader().verdicts().isEmpty() ? 0 : 1);
  }

  /**
   * Whether it takes the place of steps that are too wide.
   *
   * @param probability of such steps
   * @param again the same by the other readings
   */
  boolean takesSteps(double probability, ToDoubleFunction<PlanContest> again) {
    Round meant = contest.first().last();
    double stray = contest.logWeightOfFirst() + meant.evenStray();
    return contest.logWeight() - stray <= REACH && takes(meant.stray(), probability, again);
  }

  private boolean takes(int reading, double probability, ToDoubleFunction<PlanContest> again) {
    if (reading < 0) {
      return false;
    }
    PlanContest rest = without.computeIfAbsent(reading, contest::without);
    double odds = Math.exp(rest.logWeight() - Round.LOG_STRAY - contest.logWeight());
    return odds * (1 - again.applyAsDouble(rest)) >= probability;
  }
}
