package lapline.judgement.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which learning curves a person may be on, and how much speaks for each: a grid of curves with
 * weights that add up to 1. Nothing here is drawn by chance.
 */
public final class LearnerBelief {
  /** Before anybody was seen: odds at the first panel of about exp(−1), 27 in 100. */
  private static final double START = -1;

  private static final double START_SPREAD = 1.5;
  private static final double GAIN_SPREAD = 1;

  /** What is believed before anybody was seen weighs as much as so many learners. */
  private static final double WEIGHT_OF_USUAL = 2;

  private final List<LearningCurve> curves;
  private final double[] weights;

  private LearnerBelief(List<LearningCurve> curves, double[] weights) {
    this.curves = List.copyOf(curves);
    this.weights = weights;
  }

  /**
   * These curves with these weights.
   *
   * @param weights one for each curve, 0 or more, not all 0; they need not add up to 1
   * @throws IllegalArgumentException when they are not as many, or are no weights
   */
  public static LearnerBelief of(List<LearningCurve> curves, double... weights) {
    double sum = Arrays.stream(weights).sum();
    boolean good = Arrays.stream(weights).allMatch(w -> w >= 0) && sum > 0;
    if (weights.length != curves.size() || !good || Double.isInfinite(sum)) {
      throw new IllegalArgumentException(
          "weights is "
              + Arrays.toString(weights)
              + "; it must hold a weight of 0 or more for each of "
              + curves.size()
              + " curves, not all 0");
    }
    return new LearnerBelief(curves, Arrays.stream(weights).map(w -> w / sum).toArray());
  }

  /**
   * What is believed before anybody was seen, on purpose wide: the first panel is accepted with a
   * chance of 5 to 70 % for eight of ten learners, and ten panels multiply the odds by up to 45 for
   * nine of ten. Our own choice, no source.
   */
  public static LearnerBelief usual() {
    List<LearningCurve> curves = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (int s = -10; s <= 8; s++) {
      for (int g = 0; g <= 12; g++) {
        LearningCurve curve = new LearningCurve(s / 2.0, g / 4.0);
        curves.add(curve);
        double far = (curve.start() - START) / START_SPREAD;
        double steep = curve.gain() / GAIN_SPREAD;
        weights.add(Math.exp(-(far * far + steep * steep) / 2));
      }
    }
    return of(curves, weights.stream().mapToDouble(w -> w).toArray());
  }

  /**
   * After a person's panels were seen (Bayes).
   *
   * @param panels whether each was accepted, first one first; none changes nothing
   */
  public LearnerBelief after(List<Boolean> panels) {
    return of(curves, seen(chances(panels.size()), panels));
  }

  /** Weights after these panels, not yet adding up to 1. */
  private double[] seen(double[][] chances, List<Boolean> panels) {
    double[] seen = new double[weights.length];
    for (int i = 0; i < seen.length; i++) {
      seen[i] = weights[i] * LearningCurve.likelihood(chances[i], panels);
    }
    return seen;
  }

  /** Of each curve, the chances of so many panels from the first. */
  private double[][] chances(int panels) {
    return curves.stream().map(c -> c.chances(1, panels)).toArray(double[][]::new);
  }

  /**
   * About somebody new, after others of the same workshop were seen: the mean of what is believed
   * of each of them, with this belief counting as two more. It is one step of the usual empirical
   * Bayes for a distribution on a grid (Laird, Journal of the American Statistical Association 73,
   * 1978; from memory), stopped there on purpose: taken on to its end it would believe that there
   * are but a few kinds of learners.
   *
   * @param others the panels of each, first one first; may be empty
   */
  public LearnerBelief among(List<List<Boolean>> others) {
    double[] sum = Arrays.stream(weights).map(w -> w * WEIGHT_OF_USUAL).toArray();
    double[][] chances = chances(others.stream().mapToInt(List::size).max().orElse(0));
    for (List<Boolean> panels : others) {
      double[] seen = seen(chances, panels);
      double all = Arrays.stream(seen).sum();
      for (int i = 0; i < sum.length; i++) {
        sum[i] += seen[i] / all;
      }
    }
    return of(curves, sum);
  }

  /**
   * How likely it is that a rule is first met with each of the further panels of a person who did
   * these before.
   *
   * @param further how many are looked at, 1 or more
   */
  double[] firstMet(PanelRule rule, List<Boolean> panels, int further) {
    double[] met = new double[further];
    for (int i = 0; i < weights.length; i++) {
      double[] each = rule.firstMet(panels, curves.get(i).chances(panels.size() + 1, further));
      for (int k = 0; k < further; k++) {
        met[k] += weights[i] * each[k];
      }
    }
    return met;
  }
}
