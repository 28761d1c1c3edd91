package lapline.judgement.progress;

import java.util.List;

/**
 * How the chance of an accepted panel grows with practice: the odds go with a power of the panel's
 * number, so that p = 1/(1 + exp(−(start + gain ln n))).
 *
 * <p>That is the power law of practice (Newell &amp; Rosenbloom in Anderson, ed., Cognitive Skills
 * and Their Acquisition, 1981; from memory) put to the odds, since a chance has to stay between 0
 * and 1; a logistic curve over the number of cases is what studies of hand skills in medicine fit
 * as well (Ramsay and others, International Journal of Technology Assessment in Health Care 16,
 * 2000; from memory). Nobody is expected to get worse by practice.
 *
 * @param start logarithm of the odds at the first panel
 * @param gain by how much it grows when ln n grows by 1, 0 or more
 */
public record LearningCurve(double start, double gain) {
  public LearningCurve {
    if (!Double.isFinite(start)) {
      throw new IllegalArgumentException("start is " + start + "; it must be a number");
    }
    if (!(gain >= 0 && gain < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("gain is " + gain + "; it must be 0 or more");
    }
  }

  /**
   * @param panel its number, 1 for the first
   * @return 0 to 1
   */
  public double chance(int panel) {
    if (panel < 1) {
      throw new IllegalArgumentException("panel is " + panel + "; it must be 1 or more");
    }
    return 1 / (1 + Math.exp(-start - gain * Math.log(panel)));
  }

  /** Chances of so many panels in turn, beginning with the one of this number. */
  double[] chances(int panel, int howMany) {
    double[] chances = new double[howMany];
    for (int i = 0; i < howMany; i++) {
      chances[i] = chance(panel + i);
    }
    return chances;
  }

  /**
   * How likely just these panels are.
   *
   * @param chances of being accepted, at least as many as panels
   * @param panels whether each was accepted, first one first
   */
  static double likelihood(double[] chances, List<Boolean> panels) {
    double likely = 1;
    for (int i = 0; i < panels.size(); i++) {
      likely *= panels.get(i) ? chances[i] : 1 - chances[i];
    }
    return likely;
  }
}
