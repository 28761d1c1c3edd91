package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lapline.trade.film.PlanOutcome.Rule;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

/**
 * SSPC-PA 2 for more than 100 m²: each 10 m² of the suspect shift is measured; from memory. Areas
 * by hand.
 */
class SuspectShiftTest {
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);
  private static final List<FilmReadings> GOOD = area("56 57 58");
  private static final List<FilmReadings> THIN = area("48 49 50");

  /** Twelve areas of 10 m² and one of 5. */
  private static final SuspectShift SHIFT = new SuspectShift(CLEAR, RestrictionLevel.LEVEL_3, 125);

  private static List<FilmReadings> area(String spot) {
    return Collections.nCopies(5, Micrometres.readings(spot));
  }

  private static List<List<FilmReadings>> shift(int... thin) {
    List<List<FilmReadings>> areas = new ArrayList<>(Collections.nCopies(13, GOOD));
    for (int number : thin) {
      areas.set(number - 1, THIN);
    }
    return areas;
  }

  @Test
  void all_of_the_shift_is_measured_down_to_the_last_part_of_an_area() {
    assertThat(SHIFT.areas()).isEqualTo(13);
    assertThat(new SuspectShift(CLEAR, RestrictionLevel.LEVEL_3, 120).areas()).isEqualTo(12);
    assertThatThrownBy(() -> SHIFT.judge(shift().subList(0, 12)))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("areas")
        .hasMessageContaining("13");
  }

  @Test
  void the_areas_that_fail_are_non_conforming_and_no_others() {
    assertThat(SHIFT.nonConforming(shift())).isZero();
    assertThat(SHIFT.nonConforming(shift(3, 7))).isCloseTo(20, within(1e-12));
    assertThat(SHIFT.nonConforming(shift(3, 13))).isCloseTo(15, within(1e-12));
  }

  /** Spots of 49 µm keep the 80 % of level 3; their mean has no allowance. */
  @Test
  void each_area_is_judged_by_the_plan_as_an_area_of_its_own() {
    List<PlanOutcome> outcomes = SHIFT.judge(shift(2));

    assertThat(outcomes).hasSize(13);
    assertThat(outcomes.get(0).accepted()).isTrue();
    assertThat(outcomes.get(1).broken())
        .extracting(PlanOutcome.Check::rule)
        .containsExactly(Rule.AREA_NOT_BELOW);
  }

  @Test
  void an_area_read_too_little_is_named() {
    List<List<FilmReadings>> areas = shift();
    areas.set(4, GOOD.subList(0, 4));

    assertThatThrownBy(() -> SHIFT.nonConforming(areas))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("spots in area 5");
  }
}
