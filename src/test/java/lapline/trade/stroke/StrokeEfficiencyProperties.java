package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How much of what readings can tell is told: mean squares of the errors over simulated panels
 * (seeds 0 to 599, 36 places, or 0 to 299 and 108; passes written down) against the least that is
 * possible, and how often the 95 % intervals hold.
 */
class StrokeEfficiencyProperties {
  private static final int SEEDS = 600;
  private static final int ARCED = 300;
  private static final int PLACES = 36;
  private static final int EACH_TASK = 300;
  private static final int MANY_PLACES = 108;

  /** A search by the simulator's equations takes a tenth of a second. */
  private static final int SEARCHED = 100;

  /** What 600 panels leave of 0.9 by chance: the ratio of two variances is off by 6 %. */
  private static final double EFFICIENT = 0.9 - 0.06;

  /** The same of 300. */
  private static final double EFFICIENT_OF_FEWER = 0.9 - 0.08;

  /** The likeliest overlap lies 0.2 below what it really is, its median does not. */
  private static final double MOST_TO_ONE_SIDE = 0.1;

  private static final double WRIST = 0.5;

  /** No test pattern shows a fan as blunt as that. */
  private static final double LEAST_BETA = 1.2;

  private static final List<Task> TASKS =
      List.of(
          new Task(0.7, 2), new Task(0.7, 1), new Task(0.6, 2), new Task(0.5, 2), new Task(0.5, 1));

  /** Errors of one quantity, what was stated and what is possible, squared. */
  private static final class Record {
    private double squares;
    private double stated;
    private double possible;
    private double off;
    private int inside;
    private int count;

    void add(Estimate found, double real, double bound) {
      double off = found.value() - real;
      squares += off * off;
      this.off += off / found.standardUncertainty();
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

    /** Variance of the overlap by the model's own equations, with all that was written down. */
    double modelsBound() {
      StrokeFit fit = PlanContest.of(StrokeRecord.of(plan), readings).leader().fit();
      return square(new FittedOverlap(fit.settled()).likeliest().standardUncertainty());
    }
  }

  private record Read(Seen seen, StrokeReading reading) {}

  private static List<Read> read(int panels, double wrist) {
    return read(sprayed(new Task(0.7, 2), PLACES, panels, wrist));
  }

  private static List<Read> read(List<Seen> seen) {
    return seen.parallelStream().map(s -> new Read(s, s.reading())).toList();
  }

  private record Task(double overlap, int coats) {}

  /** Fan and shape are written down as unsurely as the plan says. */
  private static List<Seen> sprayed(Task task, int places, int panels, double wrist) {
    List<Seen> seen = new ArrayList<>();
    for (int seed = 0; seed < panels; seed++) {
      seen.add(sprayed(task, places, wrist, SprayedPanel.chance(seed)));
    }
    return seen;
  }

  private static Seen sprayed(Task task, int places, double wrist, Random chance) {
    SprayedPanel panel = new SprayedPanel();
    panel.wrist = wrist;
    panel.overlap = task.overlap;
    panel.coats = task.coats;
    double fan = SprayedPanel.FAN * (1 + 0.04 * chance.nextGaussian());
    PassPlan plan = panel.spray(chance);
    List<FilmAt> readings = panel.read(places, chance);
    Estimate beta =
        Estimate.of(Math.max(LEAST_BETA, panel.beta + 0.25 * chance.nextGaussian()), 0.25);
    Estimate written = Estimate.of(fan, 0.04 * SprayedPanel.FAN);
    PassPlan unsure = new PassPlan(plan.width(), plan.height(), plan.coats(), written, beta);
    return new Seen(panel, unsure, readings);
  }

  /**
   * No estimate has a smaller mean square error than the mean of what may have happened, and that
   * mean has the one that it states (van Trees 1968, 2.4.1).
   */
  @Test
  void mean_film_and_overlap_are_known_as_well_as_the_readings_allow() {
    Record film = new Record();
    Record overlap = new Record();
    for (Read one : read(SEEDS, Double.POSITIVE_INFINITY)) {
      double bound = PanelBound.ofMeanFilm(one.seen.panel, one.seen.plan, one.seen.readings);
      film.add(one.reading.meanFilm(), one.seen.panel.mean(), bound);
      overlap.add(one.reading.overlap(), one.seen.panel.realOverlap(), 0);
    }
    assertThat(film.possible / film.squares).isGreaterThan(EFFICIENT);
    assertThat(film.coverage()).isBetween(0.925, 0.975);
    assertThat(overlap.stated / overlap.squares).isGreaterThan(EFFICIENT);
    assertThat(overlap.coverage()).isBetween(0.925, 0.975);
  }

  /** Of the arc what is stated is the bound by the model's own equations. */
  @Test
  void the_arc_is_known_as_well_as_the_model_allows() {
    Record arc = new Record();
    Record overlap = new Record();
    double missing = 1 - Math.pow(Math.cos(Math.atan(SprayedPanel.WIDTH / 2 / WRIST)), 2.5);
    for (Read one : read(ARCED, WRIST)) {
      overlap.add(one.reading.overlap(), one.seen.panel.realOverlap(), 0);
      one.reading.faults().stream()
          .filter(f -> f.fault() == Fault.ARCING)
          .forEach(f -> arc.add(f.value(), missing, 0));
    }
    assertThat(arc.count).isGreaterThan(ARCED * 95 / 100);
    assertThat(arc.stated / arc.squares).isGreaterThan(EFFICIENT_OF_FEWER);
    assertThat(arc.coverage()).isBetween(0.925, 0.975);
    assertThat(overlap.coverage()).isBetween(0.925, 0.975);
  }

  /** The likeliest panel by the simulator's own equations is no mean, and so no better. */
  @Test
  void the_overlap_is_known_better_than_the_simulators_own_likeliest_panel_has_it() {
    double ours = 0;
    double theirs = 0;
    for (Seen one : sprayed(new Task(0.7, 2), PLACES, SEARCHED, Double.POSITIVE_INFINITY)) {
      double real = one.panel.realOverlap();
      ours += square(one.reading().overlap().value() - real);
      theirs += square(LikeliestPanel.overlap(one.plan, one.readings) - real);
    }
    assertThat(theirs / ours).isGreaterThan(1);
  }

  /**
   * Of the film what is stated is the bound by the model's own equations. Of 3,000 panels of 60 %
   * in two coats with 36 places 93.6 in 100 hold; 300 leave 1.4 of that by chance.
   */
  @ParameterizedTest
  @CsvSource({PLACES + ", 0.905", MANY_PLACES + ", 0.92"})
  void overlap_and_film_are_known_as_well_as_the_model_allows(int places, double leastHeld) {
    double off = 0;
    double held = 0;
    for (Task task : TASKS) {
      Record overlap = new Record();
      Record film = new Record();
      for (Read one : read(sprayed(task, places, EACH_TASK, Double.POSITIVE_INFINITY))) {
        overlap.add(one.reading.overlap(), one.seen.panel.realOverlap(), one.seen.modelsBound());
        film.add(one.reading.meanFilm(), one.seen.panel.mean(), 0);
      }
      assertThat(overlap.possible / overlap.squares)
          .as("%s", task)
          .isGreaterThan(EFFICIENT_OF_FEWER);
      assertThat(film.stated / film.squares).as("%s", task).isGreaterThan(EFFICIENT_OF_FEWER);
      assertThat(overlap.coverage()).as("%s", task).isBetween(leastHeld, 0.985);
      assertThat(film.coverage()).as("%s", task).isBetween(leastHeld, 0.985);
      held += (overlap.coverage() + film.coverage()) / 2 / TASKS.size();
      off += overlap.off / EACH_TASK / TASKS.size();
    }
    assertThat(held).isBetween(0.93, 0.97);
    assertThat(off)
        .as("to one side, in what is stated")
        .isBetween(-MOST_TO_ONE_SIDE, MOST_TO_ONE_SIDE);
  }

  /**
   * Panels on which the passes settle about a fan that is 10 % off, one too narrow, one too wide.
   */
  @ParameterizedTest
  @ValueSource(ints = {1429, 1720})
  void a_fan_about_which_the_passes_settled_first_is_not_the_only_one(int seed) {
    Seen one = sprayed(new Task(0.7, 2), 72, Double.POSITIVE_INFINITY, SprayedPanel.chance(seed));
    Estimate overlap = one.reading().overlap();
    assertThat(overlap.value())
        .isCloseTo(one.panel.realOverlap(), within(1.96 * overlap.standardUncertainty()));
  }

  private static double square(double off) {
    return off * off;
  }
}
