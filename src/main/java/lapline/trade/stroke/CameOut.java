package lapline.trade.stroke;

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

  private final Mixture overlaps = new Mixture();
  private final Mixture films = new Mixture();

  /**
   * @param plans with the share of each in the weight, 0 to 1
   */
  CameOut(List<Weighed> plans) {
    plans.stream().filter(p -> p.weight() > PlanContest.HARDLY).forEach(this::add);
  }

  private void add(Weighed plan) {
    each(plan, f -> FittedFilm.of(f).mean(), films);
    if (plan.fit().readings().size() <= PanelDraws.MOST_READINGS) {
      int count = Math.max(LEAST_DRAWS, (int) (DRAWS * plan.weight()));
      overlaps.add(PanelDraws.overlap(FanModes.settled(plan.fits()), count), plan.weight());
    } else {
      each(plan, FanModes::overlap, overlaps);
    }
  }

  private static void each(Weighed plan, Function<StrokeFit, Estimate> of, Mixture to) {
    double[] shares =
        plan.fits().stream()
            .mapToDouble(f -> Math.exp(f.logEvidence() - plan.fit().logEvidence()))
            .toArray();
    double whole = Arrays.stream(shares).sum();
    for (int i = 0; i < shares.length; i++) {
      to.add(of.apply(plan.fits().get(i)), plan.weight() * shares[i] / whole);
    }
  }

  /** 1 − step / fan width, of the passes over the panel. */
  Estimate overlap() {
    return overlaps.estimate();
  }

  /** Of the panel, metres. */
  Estimate meanFilm() {
    return films.estimate();
  }
}
