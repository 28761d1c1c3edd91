package lapline.trade.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishTest {

  @ParameterizedTest
  @CsvSource({
    "92, DEGREES_20",
    "70.1, DEGREES_20",
    "70, DEGREES_60",
    "10, DEGREES_60",
    "9.9, DEGREES_85"
  })
  void the_reading_at_60_degrees_chooses_the_angle(double gloss, GlossAngle angle) {
    assertThat(GlossAngle.bestFor(gloss)).isEqualTo(angle);
  }

  @Test
  void each_angle_is_what_it_is_called() {
    for (GlossAngle angle : GlossAngle.values()) {
      assertThat(angle.name()).isEqualTo("DEGREES_" + angle.degrees());
      assertThat(Math.toDegrees(angle.radians())).isCloseTo(angle.degrees(), within(1e-12));
    }
  }

  @Test
  void the_largest_jump_in_numbers_is_named() {
    SandingSequence sanding = SandingSequence.ofGrades(List.of(240.0, 320.0, 400.0, 600.0));

    SandingSequence.Step largest = sanding.largestStep().orElseThrow();
    assertThat(largest.from()).isEqualTo(Abrasive.P400);
    assertThat(largest.to()).isEqualTo(Abrasive.P600);
    assertThat(largest.numbers()).isEqualTo(200);
    assertThat(largest.ratio()).isCloseTo(35.0 / 25.8, within(1e-12));
    assertThat(sanding.last()).isEqualTo(Abrasive.P600);
    assertThat(sanding.everFiner()).isTrue();
  }

  @Test
  void going_back_to_a_coarser_grade_shows() {
    SandingSequence sanding = SandingSequence.ofGrades(List.of(320.0, 600.0, 500.0));

    assertThat(sanding.everFiner()).isFalse();
    assertThat(sanding.steps().get(1).coarser()).isTrue();
  }

  @Test
  void the_same_grade_again_is_no_step_back() {
    assertThat(SandingSequence.ofGrades(List.of(600.0, 600.0)).everFiner()).isTrue();
  }

  @Test
  void a_single_grade_makes_no_step() {
    assertThat(SandingSequence.ofGrades(List.of(600.0)).largestStep()).isEmpty();
  }

  /** What the course says of its rule of 200 numbers: from P240 on no grain shrinks below 0.59. */
  @Test
  void two_hundred_numbers_from_P240_on_leave_a_grain_of_nearly_six_tenths() {
    double least = 1;
    for (Abrasive from : Abrasive.values()) {
      for (Abrasive to : Abrasive.values()) {
        int numbers = to.grade() - from.grade();
        if (from.grade() >= 240 && numbers > 0 && numbers <= 200) {
          least = Math.min(least, to.grainSize() / from.grainSize());
        }
      }
    }
    assertThat(least).isCloseTo(35.0 / 58.5, within(1e-12));
  }

  @Test
  void a_grade_off_the_scale_is_refused() {
    assertThatThrownBy(() -> SandingSequence.ofGrades(List.of(180.0, 450.0)))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("450");
  }

  @Test
  void finer_grades_have_smaller_grain() {
    Abrasive[] all = Abrasive.values();
    for (int i = 1; i < all.length; i++) {
      assertThat(all[i].grainSize()).isLessThan(all[i - 1].grainSize());
    }
  }
}
