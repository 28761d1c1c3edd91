package lapline.trade.measure;

import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Repeatability and reproducibility of a gauge: what of the spread in readings is the panels, what
 * the gauge, and what the people who hold it, from panels × people × repeats by analysis of
 * variance.
 *
 * <p>Two crossed random effects with interaction. Where the interaction is not to be seen (p above
 * 0.25) its sum of squares is taken as error, as the usual guides to measurement systems do (from
 * memory). A negative component is none.
 *
 * @param repeatability standard deviation of one person reading one panel again
 * @param reproducibility standard deviation between people, their ways with single panels included
 * @param panels standard deviation between the panels themselves
 * @param interactionSeen whether some people read some panels differently from others
 */
public record GaugeStudy(
    double repeatability, double reproducibility, double panels, boolean interactionSeen) {
  private static final double POOL_ABOVE = 0.25;

  /** Share of one standard deviation of the panels' spread that a gauge tells apart, √2. */
  private static final double PER_CATEGORY = 1.41;

  /**
   * @param readings [panel][person][repeat]: 2 or more of each, as many for each panel and person
   * @throws MeasureException when there are fewer, one is missing or one is not finite
   */
  public static GaugeStudy of(double[][][] readings) {
    Variances v = Variances.of(readings);
    boolean seen = v.interactionProbability() <= POOL_ABOVE;
    double error = seen ? v.error() : v.pooled();
    double crossed = seen ? v.interaction() : v.pooled();
    double between = Math.max(0, (v.person() - crossed) / (v.panels * v.repeats));
    double ways = seen ? Math.max(0, (v.interaction() - error) / v.repeats) : 0;
    double panel = Math.max(0, (v.panel() - crossed) / (v.people * v.repeats));
    return new GaugeStudy(Math.sqrt(error), Math.sqrt(between + ways), Math.sqrt(panel), seen);
  }

  /** Standard deviation of gauge and people together. */
  public double gauge() {
    return Math.hypot(repeatability, reproducibility);
  }

  /** Standard deviation of everything. */
  public double total() {
    return Math.hypot(gauge(), panels);
  }

  /** Gauge and people as a share of everything: below 0.1 good, above 0.3 not good enough. */
  public double shareOfTotal() {
    return total() == 0 ? 0 : gauge() / total();
  }

  /** How many sorts of panel the gauge tells apart; 5 or more are asked for. */
  public int categories() {
    return gauge() == 0 ? Integer.MAX_VALUE : (int) (PER_CATEGORY * panels / gauge());
  }

  /** Sums of squares of the study. */
  private record Variances(
      int panels,
      int people,
      int repeats,
      double panelSquares,
      double personSquares,
      double crossedSquares,
      double errorSquares) {

    static Variances of(double[][][] readings) {
      int panels = atLeastTwo("panels", readings.length);
      int people = atLeastTwo("people", readings[0].length);
      int repeats = atLeastTwo("repeats", readings[0][0].length);
      double[] perPanel = new double[panels];
      double[] perPerson = new double[people];
      double[][] cells = new double[panels][people];
      double mean = 0;
      double error = 0;
      for (int i = 0; i < panels; i++) {
        Valid.between("people", readings[i].length, people, people);
        for (int j = 0; j < people; j++) {
          Valid.between("repeats", readings[i][j].length, repeats, repeats);
          Summary cell = Summary.of(readings[i][j]);
          cells[i][j] = cell.mean();
          perPanel[i] += cell.mean() / people;
          perPerson[j] += cell.mean() / panels;
          mean += cell.mean() / panels / people;
          error += (repeats - 1) * cell.standardDeviation() * cell.standardDeviation();
        }
      }
      double panelSquares = people * repeats * squares(perPanel, mean);
      double personSquares = panels * repeats * squares(perPerson, mean);
      double crossed = 0;
      for (int i = 0; i < panels; i++) {
        for (int j = 0; j < people; j++) {
          double rest = cells[i][j] - perPanel[i] - perPerson[j] + mean;
          crossed += repeats * rest * rest;
        }
      }
      return new Variances(panels, people, repeats, panelSquares, personSquares, crossed, error);
    }

    private static int atLeastTwo(String what, int count) {
      return (int) Valid.between(what, count, 2, Integer.MAX_VALUE);
    }

    private static double squares(double[] means, double mean) {
      double sum = 0;
      for (double m : means) {
        sum += (m - mean) * (m - mean);
      }
      return sum;
    }

    double panel() {
      return panelSquares / (panels - 1);
    }

    double person() {
      return personSquares / (people - 1);
    }

    double interaction() {
      return crossedSquares / crossedFreedom();
    }

    double error() {
      return errorSquares / errorFreedom();
    }

    double pooled() {
      return (crossedSquares + errorSquares) / (crossedFreedom() + errorFreedom());
    }

    double interactionProbability() {
      if (errorSquares == 0) {
        return crossedSquares == 0 ? 1 : 0;
      }
      return FDistribution.of(crossedFreedom(), errorFreedom())
          .survivalProbability(interaction() / error());
    }

    private double crossedFreedom() {
      return (panels - 1.0) * (people - 1);
    }

    private double errorFreedom() {
      return (double) panels * people * (repeats - 1);
    }
  }
}
