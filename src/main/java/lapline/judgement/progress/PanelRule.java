package lapline.judgement.progress;

import java.util.List;

/**
 * So many of the last so many panels have to be accepted; and how likely it is that this comes
 * about with the next panel, the one after it, and so on.
 *
 * @param accepted how many, 1 to {@code ofLast}
 * @param ofLast among how many of the latest, 1 to {@value #MOST}
 */
public record PanelRule(int accepted, int ofLast) {
  /** All courses that the latest panels may have taken are followed, so there is a limit. */
  public static final int MOST = 12;

  public PanelRule {
    if (ofLast < 1 || ofLast > MOST) {
      throw new IllegalArgumentException("ofLast is " + ofLast + "; it must be 1 to " + MOST);
    }
    if (accepted < 1 || accepted > ofLast) {
      throw new IllegalArgumentException(
          "accepted is " + accepted + "; it must be 1 to ofLast, which is " + ofLast);
    }
  }

  /**
   * @param panels whether each was accepted, first one first; may be empty
   */
  public boolean isMetBy(List<Boolean> panels) {
    return isMet(latest(panels));
  }

  /**
   * How likely it is that the rule is first met with each of the further panels. Exact but for
   * rounding: every course of the latest panels is followed (the usual imbedding in a Markov chain:
   * Fu &amp; Koutras, Journal of the American Statistical Association 89, 1994; from memory).
   *
   * @param panels whether each was accepted so far, first one first; may be empty
   * @param chances of being accepted for each further panel in turn, each 0 to 1
   * @return as many probabilities as chances, 0 to 1; what they lack of 1 is the chance that none
   *     of these panels is enough
   * @throws IllegalArgumentException when the rule is met already, or a chance is none
   */
  public double[] firstMet(List<Boolean> panels, double[] chances) {
    int now = latest(panels);
    if (isMet(now)) {
      throw new IllegalArgumentException("panels is " + panels + "; the rule must not be met yet");
    }
    double[] open = new double[1 << ofLast];
    open[now] = 1;
    double[] met = new double[chances.length];
    for (int i = 0; i < chances.length; i++) {
      open = next(open, chance(chances[i]));
      met[i] = takeMet(open);
    }
    return met;
  }

  /** One panel on: the newest stands in the lowest place, the oldest falls out at the top. */
  private double[] next(double[] open, double chance) {
    double[] then = new double[open.length];
    for (int course = 0; course < open.length; course++) {
      if (open[course] > 0) {
        int missed = course << 1 & open.length - 1;
        then[missed] += open[course] * (1 - chance);
        then[missed | 1] += open[course] * chance;
      }
    }
    return then;
  }

  private double takeMet(double[] open) {
    double met = 0;
    for (int course = 0; course < open.length; course++) {
      if (isMet(course)) {
        met += open[course];
        open[course] = 0;
      }
    }
    return met;
  }

  private boolean isMet(int course) {
    return Integer.bitCount(course) >= accepted;
  }

  private int latest(List<Boolean> panels) {
    int course = 0;
    for (boolean panel : panels.subList(Math.max(0, panels.size() - ofLast), panels.size())) {
      course = course << 1 | (panel ? 1 : 0);
    }
    return course;
  }

  private static double chance(double given) {
    if (!(given >= 0 && given <= 1)) {
      throw new IllegalArgumentException("chances has " + given + "; each must be 0 to 1");
    }
    return given;
  }
}
