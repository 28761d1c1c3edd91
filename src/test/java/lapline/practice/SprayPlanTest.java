package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import lapline.practice.SprayPlan.Thing;
import org.junit.jupiter.api.Test;

/** The film of a plan follows by arithmetic anybody can check. */
class SprayPlanTest {
  private static final SprayPlan PLAN = new SprayPlan(60e-6, 0.5, 0.25, 0.06, 0.2, 0.1, 0.3, 2);

  @Test
  void dry_film_is_wet_film_times_thinned_solids_times_coats() {
    // 60 µm × 0.5 / 1.25 × 2
    assertThat(PLAN.dryFilm()).isCloseTo(48e-6, within(1e-12));
  }

  @Test
  void the_film_across_the_passes_has_the_mean_it_should() {
    for (double spacing : new double[] {0.05, 0.06, 0.1, 0.13, 0.2}) {
      SprayPlan plan = PLAN.with(Thing.SPACING, spacing);
      double mean =
          IntStream.range(0, 2000)
              .mapToDouble(i -> plan.dryFilmAt(5 * spacing * (i + 0.5) / 2000))
              .average()
              .orElseThrow();
      assertThat(mean).isCloseTo(plan.dryFilm(), within(plan.dryFilm() * 1e-3));
    }
  }

  @Test
  void more_overlap_makes_it_more_even() {
    assertThat(PLAN.ripple().evenness())
        .isGreaterThan(PLAN.with(Thing.SPACING, 0.15).ripple().evenness());
  }
}
