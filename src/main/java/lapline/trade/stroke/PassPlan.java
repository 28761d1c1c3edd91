package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * How a panel was sprayed as far as it was written down, and how well that is known.
 *
 * @param width of the panel along the strokes, metres, more than 0
 * @param height of the panel across them, metres, more than 0
 * @param coats 1 or more
 * @param fanWidth metres, value and uncertainty more than 0
 * @param beta shape of the fan, see {@link lapline.trade.spray.FanProfile#beta}; 1.2 to 8, its
 *     uncertainty 0 or more
 */
public record PassPlan(
    double width, double height, List<Coat> coats, Estimate fanWidth, Estimate beta) {

  public PassPlan {
    Valid.positive("width", width);
    Valid.positive("height", height);
    coats = List.copyOf(coats);
    Valid.positive("coats", coats.size());
    Valid.positive("fanWidth", fanWidth.value());
    Valid.positive("fanWidth uncertainty", fanWidth.standardUncertainty());
    Valid.between("beta", beta.value(), 1.2, 8);
  }

  /**
   * The passes of one coat.
   *
   * @param centrelines from below upwards, metres, 2 or more
   * @param each standard uncertainty of each step between them, one fewer than centrelines: of the
   *     writing down, or of the hand where only the intended step is known; metres, more than 0
   * @param all standard uncertainty that all steps have in common, as a share of them, more than 0,
   *     at most {@link #MOST_UNSURE}: stripes of other steps can look alike, and no search over
   *     them is made
   * @param shift standard uncertainty of where the coat as a whole lies, metres, more than 0
   */
  public record Coat(List<Double> centrelines, List<Double> each, double all, double shift) {
    /** As of a hand that meant a step and kept to it more or less. */
    public static final double MOST_UNSURE = 0.1;

    /** How far each step of a steady hand strays, metres; common practice, no source: 4 to 8 mm. */
    public static final double STEADY = 0.006;

    public Coat {
      centrelines = List.copyOf(centrelines);
      if (centrelines.size() < 2) {
        throw new MeasureException("centrelines", centrelines.size(), "2 or more");
      }
      for (int i = 1; i < centrelines.size(); i++) {
        Valid.positive("step", centrelines.get(i) - centrelines.get(i - 1));
      }
      each = List.copyOf(each);
      Valid.between("each", each.size(), centrelines.size() - 1, centrelines.size() - 1);
      each.forEach(e -> Valid.positive("each", e));
      Valid.positive("all", all);
      Valid.between("all", all, 0, MOST_UNSURE);
      Valid.positive("shift", shift);
    }

    /** With every step known as well as every other. */
    public Coat(List<Double> centrelines, double each, double all, double shift) {
      this(centrelines, Collections.nCopies(Math.max(0, centrelines.size() - 1), each), all, shift);
    }

    /**
     * Even passes that cover the panel and go on past its edges as far as they still reach it.
     *
     * @param first any centreline, metres
     * @param step metres, more than 0
     * @param fanWidth metres, more than 0
     * @param height of the panel, metres, more than 0
     */
    public static Coat even(
        double first,
        double step,
        double fanWidth,
        double height,
        double each,
        double all,
        double shift) {
      Valid.positive("step", step);
      double reach = fanWidth / 2 + step;
      double y = first - Math.floor((first + reach) / step) * step;
      List<Double> passes = new ArrayList<>();
      for (; y <= height + reach; y += step) {
        passes.add(y);
      }
      return new Coat(passes, each, all, shift);
    }

    /** As many passes from the first to the last, all steps alike, by a hand as steady as any. */
    Coat evened() {
      List<Double> even = new ArrayList<>();
      for (int i = 0; i < centrelines.size(); i++) {
        even.add(centrelines.get(0) + i * meanStep());
      }
      return new Coat(even, each.stream().map(e -> Math.max(e, STEADY)).toList(), all, shift);
    }

    double meanStep() {
      int last = centrelines.size() - 1;
      return (centrelines.get(last) - centrelines.get(0)) / last;
    }

    /**
     * Numbers of the first and the last pass over a panel of this height; of all if fewer than 2.
     */
    int[] over(double height) {
      int[] over =
          IntStream.range(0, centrelines.size())
              .filter(i -> centrelines.get(i) >= 0 && centrelines.get(i) <= height)
              .toArray();
      return over.length < 2
          ? new int[] {0, centrelines.size() - 1}
          : new int[] {over[0], over[over.length - 1]};
    }

    double stepOver(double height) {
      int[] over = over(height);
      return (centrelines.get(over[1]) - centrelines.get(over[0])) / (over[1] - over[0]);
    }

    double[] array() {
      return centrelines.stream().mapToDouble(y -> y).toArray();
    }
  }

  /** Mean step between passes over all coats, metres. */
  public double meanStep() {
    return coats.stream().mapToDouble(Coat::meanStep).average().orElseThrow();
  }

  /** The same of those over the panel: beyond its edges nobody measures and no film tells. */
  double stepOverPanel() {
    return coats.stream().mapToDouble(c -> c.stepOver(height)).average().orElseThrow();
  }

  /** One of the coats alone, by its number from 0. */
  PassPlan only(int coat) {
    return new PassPlan(width, height, List.of(coats.get(coat)), fanWidth, beta);
  }

  /** The same coats with even steps. */
  public PassPlan evened() {
    return new PassPlan(width, height, coats.stream().map(Coat::evened).toList(), fanWidth, beta);
  }

  /** Root mean square of what the steps differ from the mean of their coat, metres. */
  double unevenness() {
    double squares = 0;
    int steps = 0;
    for (Coat coat : coats) {
      for (int i = 1; i < coat.centrelines().size(); i++) {
        double step = coat.centrelines().get(i) - coat.centrelines().get(i - 1);
        squares += (step - coat.meanStep()) * (step - coat.meanStep());
        steps++;
      }
    }
    return Math.sqrt(squares / steps);
  }

  double[][] centrelines() {
    return coats.stream().map(Coat::array).toArray(double[][]::new);
  }

  /** Number of passes in all coats. */
  public int passes() {
    int passes = 0;
    for (Coat coat : coats) {
      passes += coat.centrelines().size();
    }
    return passes;
  }
}
