package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a set of places tells about the faults of a hand: the mean over the faults, and within a
 * fault over its forms, of ln(1 + information on it × its usual size²), with all that is not known
 * about the passes allowed for; half of it as if nothing else could be wrong, half with the other
 * fault that looks most like it allowed for too, so that the two can be told apart. Places are
 * added and taken away again one by one.
 */
final class Worth {
  private final int nuisances;
  private final double[] priors;
  private final double[] usual;
  private final double[] weight;
  private final double[][] shared;
  private final double[][] cross;
  private final double[] own;
  private final double[][] both;
  private final int[][] others;

  Worth(StrokeModel model) {
    List<Departure> faults = model.departures();
    this.others = others(new Forms(model.plan()), faults);
    this.both = new double[faults.size()][faults.size()];
    this.nuisances = model.first();
    double[] sd = Priors.standardDeviations(model);
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

  /** For each departure those before it that make another fault. */
  private static int[][] others(Forms forms, List<Departure> faults) {
    Fault[] named = faults.stream().map(d -> forms.fault(d, d.usual())).toArray(Fault[]::new);
    return IntStream.range(0, named.length)
        .mapToObj(f -> IntStream.range(0, f).filter(g -> named[g] != named[f]).toArray())
        .toArray(int[][]::new);
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
      for (int g : others[f]) {
        both[f][g] += slope * slopes[nuisances + g];
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
    double[][] known = new double[own.length][];
    double[] told = new double[own.length];
    for (int f = 0; f < own.length; f++) {
      known[f] = root.below(cross[f]);
      told[f] = Math.max(0, own[f] - StrokeFit.square(known[f]));
    }
    double[] beside = besideOthers(known, told);
    double sum = 0;
    for (int f = 0; f < own.length; f++) {
      double size = usual[f] * usual[f];
      sum += weight[f] * (Math.log1p(told[f] * size) + Math.log1p(beside[f] * size)) / 2;
    }
    return sum;
  }

  /** Information on each with the one other allowed for that leaves least of it. */
  private double[] besideOthers(double[][] known, double[] told) {
    double[] least = told.clone();
    for (int f = 0; f < least.length; f++) {
      for (int g : others[f]) {
        double shared = both[f][g] - StrokeFit.dot(known[f], known[g]);
        double square = shared * shared;
        least[f] = Math.min(least[f], told[f] - square / (told[g] + 1 / (usual[g] * usual[g])));
        least[g] = Math.min(least[g], told[g] - square / (told[f] + 1 / (usual[f] * usual[f])));
      }
    }
    return Arrays.stream(least).map(l -> Math.max(0, l)).toArray();
  }
}
