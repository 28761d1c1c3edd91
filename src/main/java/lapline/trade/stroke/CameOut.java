package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.PlanContest.Weighed;

/**
 * Overlap and mean film as they came out, over all ways in which the passes may lie: over all plans
 * and all likely fits along each, with their weights, since passes that lie otherwise may leave the
 * same film.
 */
final class CameOut {
  private static final int DRAWS = 300;
  private static final int LEAST_DRAWS = 40;

  private final List<Part> overlaps = new ArrayList<>();
  private final List<Part> films = new ArrayList<>();

  private record Part(Estimate value, double weight) {}

  /**
   * @param plans with the share of each in the weight, 0 to 1
   */
  CameOut(List<Weighed> plans) {
    for (Weighed plan : plans) {
      if (plan.weight() > PlanContest.HARDLY) {
        each(plan, f -> FittedFilm.of(f).mean(), films);
        if (plan.fit().readings().size() <= PanelDraws.MOST_READINGS) {
          int count = Math.max(LEAST_DRAWS, (int) (DRAWS * plan.weight()));
          overlaps.add(new Part(PanelDraws.overlap(plan.fits(), count), plan.weight()));
        } else {
          each(plan, f -> StrokeReading.overlap(f.settled()), overlaps);
        }
      }
    }
  }

  private static void each(Weighed plan, Function<StrokeFit, Estimate> of, List<Part> to) {
    double[] shares =
        plan.fits().stream()
            .mapToDouble(f -> Math.exp(f.logEvidence() - plan.fit().logEvidence()))
            .toArray();
    double whole = Arrays.stream(shares).sum();
    for (int i = 0; i < shares.length; i++) {
      to.add(new Part(of.apply(plan.fits().get(i)), plan.weight() * shares[i] / whole));
    }
  }

  /** 1 − step / fan width, of the passes over the panel. */
  Estimate overlap() {
    return over(overlaps);
  }

  /** Of the panel, metres. */
  Estimate meanFilm() {
    return over(films);
  }

  private static Estimate over(List<Part> parts) {
    double whole = 0;
    double mean = 0;
    double square = 0;
    for (Part part : parts) {
      double spread = Math.hypot(part.value.value(), part.value.standardUncertainty());
      whole += part.weight;
      mean += part.weight * part.value.value();
      square += part.weight * spread * spread;
    }
    mean /= whole;
    return Estimate.of(mean, Math.sqrt(Math.max(0, square / whole - mean * mean)));
  }
}
