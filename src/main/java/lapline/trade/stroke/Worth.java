package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a set of places tells about the faults of a hand: the mean over the faults, and within a
 * fault over its forms, of ln(1 + information on it × its usual size²), with all that is not known
 * about the passes allowed for. Places are added and taken away again one by one.
 */
final class Worth {
  private final int nuisances;
  private final double[] priors;
  private final double[] usual;
  private final double[] weight;
  private final double[][] shared;
  private final double[][] cross;
  private final double[] own;

  Worth(StrokeModel model) {
    List<Departure> faults = model.departures();
    this.nuisances = model.first();
    double[] sd = StrokeFit.priors(model);
    this.priors = IntStream.range(0, nuisances).mapToDouble(j -> 1 / (sd[j] * sd[j])).toArray();
    this.usual = Arrays.copyOfRange(sd, nuisances, sd.length);
    this.weight = weights(faults);
    this.shared = new double[nuisances][nuisances];
    this.cross = new double[usual.length][nuisances];
    this.own = new double[usual.length];
  }

  /** Each kind of departure counts once, however many forms it has. */
  private static double[] weights(List<Departure> faults) {
    var kinds =
        faults.stream().collect(Collectors.groupingBy(Departure::getClass, Collectors.counting()));
    return faults.stream().mapToDouble(d -> 1.0 / kinds.get(d.getClass()) / kinds.size()).toArray();
  }

  /**
   * @param slopes of the film at a place by all parameters, in units of one reading's scatter
   * @param sign 1 to add the place, −1 to take it away
   */
  void add(double[] slopes, int sign) {
    for (int i = 0; i < nuisances; i++) {
      for (int j = 0; j <= i; j++) {
        shared[i][j] += sign * slopes[i] * slopes[j];
      }
    }
    for (int f = 0; f < own.length; f++) {
      double slope = sign * slopes[nuisances + f];
      own[f] += slope * slopes[nuisances + f];
      for (int i = 0; i < nuisances; i++) {
        cross[f][i] += slope * slopes[i];
      }
    }
  }

  double value() {
    double[][] a = new double[nuisances][];
    for (int i = 0; i < nuisances; i++) {
      a[i] = shared[i].clone();
      a[i][i] += priors[i];
    }
    Triangle root = Triangle.of(a);
    double sum = 0;
    for (int f = 0; f < own.length; f++) {
      double told = Math.max(0, own[f] - StrokeFit.square(root.below(cross[f])));
      sum += weight[f] * Math.log1p(told * usual[f] * usual[f]);
    }
    return sum;
  }
}
