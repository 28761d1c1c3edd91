package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import lapline.trade.measure.Estimate;

/**
 * Sprays panels with equations of its own, a little richer than the model: steps that stray one
 * after the other, passes of uneven speed, a fan that is not quite a parabola and shifts with the
 * arc, a texture that goes together over a few millimetres.
 */
final class SprayedPanel {
  static final double WIDTH = 0.61;
  static final double HEIGHT = 0.46;
  static final double FAN = 0.23;

  /** How well a tape is read where the first pass lay, and from pass to pass, metres. */
  static final double FIRST_READ = 0.005;

  static final double STEP_READ = 0.003;

  double fan = FAN;
  double film = 57.5e-6;
  double overlap = 0.7;
  double meantOverlap = 0.7;
  double jitter = 0.006;
  double speedJitter = 0.03;
  double beta = 2.0;
  double wrist = Double.POSITIVE_INFINITY;
  double linger;
  double lingerLength = 0.12;
  double along;
  double across;
  double lean;
  double lowest = Double.NEGATIVE_INFINITY;
  double twiceBelow = Double.NEGATIVE_INFINITY;
  double gapAt = Double.NaN;
  double gapBy;
  double noise = 1.5e-6;
  double texture = 1e-6;
  int coats = 2;
  boolean written = true;

  /** Whether the learner writes down where the first pass lay, read to 5 mm. */
  boolean firstWritten;

  double fanWritten = FAN;
  double grossStrays;
  double misplaced;
  double missing;

  /** Height of the middle and amount of each pass that was sprayed. */
  final List<double[]> passes = new ArrayList<>();

  /** Of each coat the lines that were sprayed, and how far off the first one is read, metres. */
  private final List<List<Double>> sprayed = new ArrayList<>();

  private final List<Double> firstOff = new ArrayList<>();
  private double realStep;
  private double wrongStep;
  private final List<PassPlan.Coat> plan = new ArrayList<>();

  /** Seeds that follow each other begin alike: their first draw would be nearly the same. */
  static Random chance(int seed) {
    return new Random((seed + 1) * 0x9E3779B97F4A7C15L);
  }

  PassPlan spray(Random chance) {
    passes.clear();
    sprayed.clear();
    firstOff.clear();
    realStep = 0;
    wrongStep = 0;
    plan.clear();
    double step = FAN * (1 - overlap);
    for (int coat = 0; coat < coats; coat++) {
      double y = -FAN - step * chance.nextDouble();
      List<Double> lines = new ArrayList<>();
      double wrong = 0;
      while (y < HEIGHT + FAN) {
        if (y >= lowest) {
          double times = y < twiceBelow ? 2 : 1;
          passes.add(new double[] {y, times * (1 + speedJitter * chance.nextGaussian())});
        }
        lines.add(y);
        double next = y + Math.max(0.2 * step, step + jitter * chance.nextGaussian());
        if (y < gapAt && next >= gapAt) {
          next += gapBy;
          wrong = gapBy;
        }
        y = next;
      }
      PassPlan.Coat read = coatPlan(lines, step, chance);
      sprayed.add(lines);
      firstOff.add(firstWritten ? FIRST_READ * chance.nextGaussian() : 0);
      plan.add(read);
      int[] over = written ? read.over(HEIGHT) : asWritten(lines).over(HEIGHT);
      realStep += (lines.get(over[1]) - lines.get(over[0])) / (over[1] - over[0]) / coats;
      wrongStep += wrong / (over[1] - over[0]) / coats;
    }
    return new PassPlan(
        WIDTH, HEIGHT, plan, Estimate.of(fanWritten, 0.04 * fanWritten), Estimate.of(2, 0.25));
  }

  private static PassPlan.Coat asWritten(List<Double> lines) {
    return new PassPlan.Coat(lines, STEP_READ, 0.01, 0.01);
  }

  /** As read from a tape, ±3 mm a step, or the intended step from a first pass on the edge. */
  private PassPlan.Coat coatPlan(List<Double> lines, double step, Random chance) {
    if (!written) {
      return PassPlan.Coat.even(0, step, FAN, HEIGHT, 0.006, 0.05, step / 3);
    }
    List<Double> read = new ArrayList<>();
    double y = lines.get(0) + FIRST_READ * chance.nextGaussian();
    read.add(y);
    for (int i = 1; i < lines.size(); i++) {
      y += Math.max(0.005, lines.get(i) - lines.get(i - 1) + STEP_READ * chance.nextGaussian());
      read.add(y);
    }
    return asWritten(read);
  }

  /** Steps of the passes over the panel, as read from a tape, the upper one first; or none. */
  StrokeRecord writtenDown(PassPlan plan, boolean steps) {
    List<Map<Integer, Estimate>> all = new ArrayList<>();
    for (PassPlan.Coat coat : plan.coats()) {
      List<Double> lines = coat.centrelines().stream().filter(y -> y > 0 && y < HEIGHT).toList();
      Map<Integer, Estimate> written = new TreeMap<>();
      if (firstWritten) {
        int coats = all.size();
        int first = coat.centrelines().indexOf(lines.get(lines.size() - 1));
        double below = HEIGHT - sprayed.get(coats).get(first) + firstOff.get(coats);
        written.put(1, Estimate.of(below, FIRST_READ));
      }
      for (int i = lines.size() - 1; steps && i > 0; i--) {
        double step = lines.get(i) - lines.get(i - 1);
        written.put(lines.size() - i + 1, Estimate.of(step, 0.003));
      }
      all.add(written);
    }
    Estimate fan = Estimate.of(fanWritten, 0.04 * fanWritten);
    return new WrittenPasses(WIDTH, HEIGHT, fan, (1 - meantOverlap) * fanWritten, all)
        .record(meantOverlap - 0.05, Optional.empty());
  }

  /** Two coats of even passes at 70 % overlap, of which nothing was written down. */
  static PassPlan meant() {
    return new SprayedPanel().asMeant();
  }

  /** Even passes as they were meant, of which nothing was written down. */
  PassPlan asMeant() {
    Estimate fan = Estimate.of(FAN, 0.04 * FAN);
    List<Map<Integer, Estimate>> nothing = Collections.nCopies(coats, Map.of());
    return new WrittenPasses(WIDTH, HEIGHT, fan, (1 - meantOverlap) * FAN, nothing).asMeant();
  }

  /** Over the whole panel, as it came out. */
  double mean() {
    double sum = 0;
    for (int row = 0; row < 25; row++) {
      for (int column = 0; column < 17; column++) {
        sum += truth(WIDTH * (column + 0.5) / 17, HEIGHT * (row + 0.5) / 25);
      }
    }
    return sum / 25 / 17;
  }

  double realOverlap() {
    return 1 - realStep / FAN;
  }

  /** Of all steps but one that went wrong. */
  double usualOverlap() {
    return 1 - (realStep - wrongStep) / FAN;
  }

  double truth(double x, double y) {
    double arc = 1 / Math.cos(Math.atan((x - WIDTH / 2) / wrist));
    double sum = 0;
    double shape = 2 / Math.exp(org.hipparchus.special.Beta.logBeta(0.5, beta));
    for (double[] pass : passes) {
      double u = 2 * (y - pass[0]) / (fan * arc);
      if (Math.abs(u) < 1) {
        sum += pass[1] * shape * Math.pow(1 - u * u, beta - 1) * (1 + lean * u) / arc * FAN / fan;
      }
    }
    double end = Math.max(0, 1 - Math.min(x, WIDTH - x) / lingerLength);
    double hand =
        Math.pow(arc, -2 - 0.5)
            * (1 + linger * end * end)
            * (1 + along * (x / WIDTH - 0.5))
            * (1 + across * (y / HEIGHT - 0.5));
    return film * (1 - overlap) / coats * sum * hand;
  }

  List<FilmAt> read(int count, Random chance) {
    List<Spot> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double golden = i * 0.6180339887498949;
      double x = 0.03 + (WIDTH - 0.06) * (golden - Math.floor(golden));
      places.add(new Spot(x, 0.03 + (HEIGHT - 0.06) * (i + 0.5) / count));
    }
    return read(places, chance);
  }

  List<FilmAt> read(List<Spot> places, Random chance) {
    List<FilmAt> read = new ArrayList<>();
    for (Spot place : places) {
      FilmAt reading = readAt(place.x(), place.y(), chance);
      if (missing == 0 || chance.nextDouble() >= missing) {
        read.add(reading);
      }
    }
    return read;
  }

  FilmAt readAt(double x, double y, Random chance) {
    double off = misplaced * chance.nextGaussian();
    double up = misplaced * chance.nextGaussian();
    double value = truth(x + off, y + up) + Math.hypot(noise, texture) * chance.nextGaussian();
    if (chance.nextDouble() < grossStrays) {
      value += film * (chance.nextBoolean() ? 0.6 : -0.6);
    }
    return new FilmAt(x, y, Math.max(0, value), Math.hypot(noise, texture));
  }
}
