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
  void the_largest_jump_in_scratch_is_named() {
    SandingSequence sanding = SandingSequence.ofGrades(List.of(180.0, 320.0, 400.0, 600.0));

    SandingSequence.Step largest = sanding.largestStep().orElseThrow();
    assertThat(largest.from()).isEqualTo(Abrasive.P180);
    assertThat(largest.to()).isEqualTo(Abrasive.P320);
    assertThat(largest.ratio()).isCloseTo(82 / 46.2, within(1e-12));
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
