package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;

/**
 * How much of what readings can tell is told: mean squares of the errors over simulated panels
 * (seeds 0 to 299, 36 places, passes written down) against the least that is possible, and how
 * often the 95 % intervals hold.
 */
class StrokeEfficiencyProperties {
  private static final int SEEDS = 300;
  private static final int PLACES = 36;

  /** A search by the simulator's equations takes a tenth of a second. */
  private static final int SEARCHED = 100;

  /** What 300 panels leave of 0.9 by chance: the ratio of two variances is off by 8 %. */
  private static final double EFFICIENT = 0.9 - 0.08;

  private static final double WRIST = 0.5;

  /** Errors of one quantity, what was stated and what is possible, squared. */
  private static final class Record {
    private double squares;
    private double stated;
    private double possible;
    private int inside;
    private int count;

    void add(Estimate found, double real, double bound) {
      double off = found.value() - real;
      squares += off * off;
      stated += found.standardUncertainty() * found.standardUncertainty();
      possible += bound;
      inside += Math.abs(off) < 1.96 * found.standardUncertainty() ? 1 : 0;
      count++;
    }

    double coverage() {
      return (double) inside / count;
    }
  }

  private record Seen(SprayedPanel panel, PassPlan plan, List<FilmAt> readings) {
    StrokeReading reading() {
      return StrokeReading.of(plan, readings);
    }
  }

  /** Fan and shape are written down as unsurely as the plan says. */
  private static List<Seen> sprayed(double wrist) {
    List<Seen> seen = new ArrayList<>();
    for (int seed = 0; seed < SEEDS; seed++) {
      Random chance = SprayedPanel.chance(seed);
      SprayedPanel panel = new SprayedPanel();
      panel.wrist = wrist;
      double fan = SprayedPanel.FAN * (1 + 0.04 * chance.nextGaussian());
      PassPlan plan = panel.spray(chance);
      List<FilmAt> readings = panel.read(PLACES, chance);
      Estimate beta = Estimate.of(panel.beta + 0.25 * chance.nextGaussian(), 0.25);
      Estimate written = Estimate.of(fan, 0.04 * SprayedPanel.FAN);
      PassPlan unsure = new PassPlan(plan.width(), plan.height(), plan.coats(), written, beta);
      seen.add(new Seen(panel, unsure, readings));
    }
    return seen;
  }

  @Test
  void the_mean_film_is_known_as_well_as_the_readings_allow() {
    Record film = new Record();
    for (Seen one : sprayed(Double.POSITIVE_INFINITY)) {
      double bound = PanelBound.ofMeanFilm(one.panel, one.plan, one.readings);
      film.add(one.reading().meanFilm(), one.panel.mean(), bound);
    }
    assertThat(film.possible / film.squares).isGreaterThan(EFFICIENT);
    assertThat(film.coverage()).isBetween(0.925, 0.975);
  }

  /**
   * Of the overlap and of the arc what is stated is the bound by the model's own equations; by the
   * simulator's, whose fan has a sharp rim, more could be known of the overlap if the film were as
   * straight as its slopes at the truth; see below.
   */
  @Test
  void overlap_and_arc_are_known_as_well_as_the_model_allows() {
    Record overlap = new Record();
    Record arc = new Record();
    double missing = 1 - Math.pow(Math.cos(Math.atan(SprayedPanel.WIDTH / 2 / WRIST)), 2.5);
    for (Seen one : sprayed(WRIST)) {
      StrokeReading reading = one.reading();
      overlap.add(reading.overlap(), one.panel.realOverlap(), 0);
      reading.faults().stream()
          .filter(f -> f.fault() == Fault.ARCING)
          .forEach(f -> arc.add(f.value(), missing, 0));
    }
    assertThat(arc.count).isGreaterThan(SEEDS * 95 / 100);
    assertThat(overlap.stated / overlap.squares).isGreaterThan(EFFICIENT);
    assertThat(arc.stated / arc.squares).isGreaterThan(EFFICIENT);
    assertThat(overlap.coverage()).isBetween(0.925, 0.975);
    assertThat(arc.coverage()).isBetween(0.925, 0.975);
  }

  /**
   * Slopes at the truth promise twice as much of the overlap as anybody gets: over what a hand's
   * passes stray, the film at the sharp rim of the simulator's fan is far from a straight line.
   */
  @Test
  void the_overlap_is_known_as_well_as_with_the_simulators_own_equations() {
    double ours = 0;
    double theirs = 0;
    for (Seen one : sprayed(Double.POSITIVE_INFINITY).subList(0, SEARCHED)) {
      double real = one.panel.realOverlap();
      ours += square(one.reading().overlap().value() - real);
      theirs += square(LikeliestPanel.overlap(one.plan, one.readings) - real);
    }
    assertThat(theirs / ours).isGreaterThan(EFFICIENT);
  }

  private static double square(double off) {
    return off * off;
  }
}
