package lapline.trade.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.finish.AppearanceRating.Scale;
import lapline.trade.finish.SandingFault.CoarserAgain;
import lapline.trade.finish.SandingFault.ScratchesMayShow;
import lapline.trade.finish.SandingFault.StepTooLarge;
import lapline.trade.finish.SandingFault.TooFineToHold;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;

class SurfaceTest {

  private static List<SandingFault> faults(NextLayer next, double... grades) {
    SandingSequence sanding = SandingSequence.ofGrades(Arrays.stream(grades).boxed().toList());
    return SandingFault.of(sanding, next, 200);
  }

  @Test
  void a_sequence_in_even_steps_to_a_usual_grade_has_no_fault() {
    assertThat(faults(NextLayer.METALLIC_BASE, 240, 400, 600)).isEmpty();
    assertThat(faults(NextLayer.METALLIC_BASE, 500)).isEmpty();
    assertThat(faults(NextLayer.METALLIC_BASE, 800)).isEmpty();
    assertThat(faults(NextLayer.METALLIC_BASE, 500, 500)).isEmpty();
  }

  @Test
  void a_step_over_too_many_numbers_is_named() {
    assertThat(faults(NextLayer.METALLIC_BASE, 240, 500))
        .singleElement()
        .isInstanceOfSatisfying(
            StepTooLarge.class, f -> assertThat(f.step().numbers()).isEqualTo(260));
  }

  @Test
  void going_back_and_ending_too_fine_are_two_faults_in_that_order() {
    assertThat(faults(NextLayer.SURFACER, 320, 180, 360))
        .hasExactlyElementsOfTypes(CoarserAgain.class, TooFineToHold.class);
  }

  @Test
  void ending_too_coarse_leaves_scratches_to_be_seen() {
    assertThat(faults(NextLayer.BLENDED_CLEAR, 800))
        .containsExactly(new ScratchesMayShow(Abrasive.P800, NextLayer.BLENDED_CLEAR));
  }

  @Test
  void the_middle_of_an_even_number_of_ratings_is_the_worse_one() {
    assertThat(new AppearanceRating(Scale.ORANGE_PEEL, List.of(8, 6, 7, 5)).middle()).isEqualTo(6);
    assertThat(new AppearanceRating(Scale.HAZE, List.of(0, 2, 1, 3)).middle()).isEqualTo(2);
    assertThat(new AppearanceRating(Scale.ORANGE_PEEL, List.of(9, 1, 7)).middle()).isEqualTo(7);
  }

  @Test
  void ratings_spread_and_agree() {
    assertThat(new AppearanceRating(Scale.ORANGE_PEEL, List.of(9, 5, 7)).spread()).isEqualTo(4);
    assertThat(new AppearanceRating(Scale.HAZE, List.of(2, 2)).spread()).isZero();
  }

  @Test
  void better_than_the_panel_beside_it_is_up_for_peel_and_down_for_haze() {
    AppearanceRating seven = new AppearanceRating(Scale.ORANGE_PEEL, List.of(7));
    AppearanceRating five = new AppearanceRating(Scale.ORANGE_PEEL, List.of(5));
    AppearanceRating clear = new AppearanceRating(Scale.HAZE, List.of(0));
    AppearanceRating milky = new AppearanceRating(Scale.HAZE, List.of(3));

    assertThat(seven.betterThan(five)).isEqualTo(2);
    assertThat(five.betterThan(seven)).isEqualTo(-2);
    assertThat(clear.betterThan(milky)).isEqualTo(3);
    assertThat(milky.betterThan(milky)).isZero();
  }

  @Test
  void scales_have_their_ends() {
    assertThat(Scale.ORANGE_PEEL.least()).isEqualTo(1);
    assertThat(Scale.ORANGE_PEEL.most()).isEqualTo(10);
    assertThat(Scale.ORANGE_PEEL.highIsBetter()).isTrue();
    assertThat(Scale.HAZE.least()).isZero();
    assertThat(Scale.HAZE.most()).isEqualTo(5);
    assertThat(Scale.HAZE.highIsBetter()).isFalse();
  }

  @Test
  void haze_is_the_gloss_that_the_narrow_angle_loses() {
    Estimate haze = ReflectionHaze.of(Estimate.of(92, 0.6), Estimate.of(84, 0.8));

    assertThat(haze.value()).isCloseTo(8, within(1e-12));
    assertThat(haze.standardUncertainty()).isCloseTo(1, within(1e-12));
    assertThat(ReflectionHaze.of(Estimate.of(70.1, 0), Estimate.of(0, 0)).value())
        .isCloseTo(70.1, within(1e-12));
  }

  /** Films as they are typed and as they are written in code, an end in the closer class. */
  @Test
  void the_end_of_a_range_of_films_is_cut_closer() {
    assertThat(CrossCut.spacing(CrossCut.Scheme.ISO_2409, 60e-6, false)).hasValue(1e-3);
    assertThat(CrossCut.spacing(CrossCut.Scheme.ISO_2409, 120e-6, false)).hasValue(2e-3);
    assertThat(CrossCut.spacing(CrossCut.Scheme.ISO_2409, 250e-6, false)).hasValue(3e-3);
    assertThat(CrossCut.spacing(CrossCut.Scheme.ASTM_D3359_B, 50e-6, false)).hasValue(1e-3);
    assertThat(CrossCut.spacing(CrossCut.Scheme.ASTM_D3359_B, 125e-6, false)).hasValue(2e-3);
  }
}
