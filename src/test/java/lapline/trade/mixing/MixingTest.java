package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.api.Test;

class MixingTest {

  @Test
  void an_additive_of_the_first_part_is_less_than_one_of_the_sum() {
    assertThat(MixRatio.of(2, 1).plus(0.1, AdditiveOf.FIRST_PART).parts())
        .containsExactly(2.0, 1.0, 0.2);
  }

  @Test
  void too_much_hardener_shows_in_share_and_ratio() {
    MixError error =
        MixError.of(MixRatio.of(4, 1), List.of(Estimate.of(400, 4), Estimate.of(120, 2)));

    // share 120/520 against 0.2; ratio 0.3 against 0.25
    assertThat(error.shares().get(1).value()).isCloseTo(0.153846, within(1e-6));
    assertThat(error.ratios().get(0).value()).isCloseTo(0.2, within(1e-12));
    // relative: 1.2 × √((4/400)² + (2/120)²)
    assertThat(error.ratios().get(0).standardUncertainty()).isCloseTo(0.0233238, within(1e-7));
    assertThat(error.worstPart()).isEqualTo(1);
  }

  @Test
  void the_uncertainty_of_a_share_counts_its_amount_above_and_below_the_line() {
    MixError error =
        MixError.of(MixRatio.of(4, 1), List.of(Estimate.of(400, 0), Estimate.of(100, 5)));

    // ds/da = 400/500², over 0.2: 0.008 per unit
    assertThat(error.shares().get(1).standardUncertainty()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void the_first_part_may_be_the_one_that_strays_most() {
    MixError error =
        MixError.of(MixRatio.of(1, 4), List.of(Estimate.of(130, 1), Estimate.of(400, 1)));

    assertThat(error.worstPart()).isZero();
  }

  @Test
  void a_mix_poured_right_strays_by_nothing() {
    MixError error =
        MixError.of(
            MixRatio.of(4, 1, 1),
            List.of(Estimate.of(0.4, 0), Estimate.of(0.1, 0), Estimate.of(0.1, 0)));

    assertThat(error.worst().value()).isCloseTo(0, within(1e-12));
  }

  @Test
  void an_over_pour_is_met_by_more_of_all() {
    MixByWeight mix = new MixByWeight(MixRatio.of(4, 1), List.of(1000.0, 1000.0));

    List<Double> restored = mix.afterOverPour(500e-6, 1, 0.110);
    assertThat(restored.get(0)).isCloseTo(0.440, within(1e-12));
    assertThat(restored.get(1)).isCloseTo(0.110, within(1e-12));
  }

  @Test
  void the_mix_has_the_density_of_its_parts_by_volume() {
    MixByWeight mix = new MixByWeight(MixRatio.of(4, 1, 1), List.of(1250.0, 1050.0, 880.0));

    assertThat(mix.density()).isCloseTo(1155, within(1e-9));
  }

  @Test
  void two_amounts_do_not_make_a_mix_of_three() {
    assertThatThrownBy(
            () -> MixError.of(MixRatio.of(4, 1, 1), List.of(Estimate.of(1, 0), Estimate.of(1, 0))))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("amounts");
  }

  @Test
  void a_part_of_nothing_is_refused() {
    assertThatThrownBy(() -> MixRatio.of(4, 0)).isInstanceOf(MeasureException.class);
  }

  @Test
  void a_ratio_by_weight_becomes_one_by_volume() {
    MixRatio ratio = MixRatio.byWeight(List.of(100.0, 50.0), List.of(1250.0, 1000.0));

    // 80 and 50 mL of 100 and 50 g
    assertThat(ratio.parts().get(0) / ratio.parts().get(1)).isCloseTo(1.6, within(1e-12));
  }

  /** 2 : 1 and 10 % of the finished mix: a third part to three is a tenth of the whole. */
  @Test
  void an_additive_of_the_finished_mix_counts_itself() {
    MixRatio ratio = MixRatio.of(2, 1).plus(0.1, AdditiveOf.FINISHED_MIX);

    assertThat(ratio.parts().get(2)).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(ratio.share(2)).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void the_uncertainty_of_every_amount_reaches_every_share() {
    MixRatio ratio = MixRatio.of(4, 1, 1);
    double[] amounts = {410, 95, 101};
    double[] u = {5, 3, 2};

    double byDifferences = 0;
    for (int i = 0; i < 3; i++) {
      double[] more = amounts.clone();
      more[i] += 1e-4;
      double slope = (shareOfSecond(ratio, more) - shareOfSecond(ratio, amounts)) / 1e-4;
      byDifferences = Math.hypot(byDifferences, slope * u[i]);
    }
    List<Estimate> read = List.of(Estimate.of(410, 5), Estimate.of(95, 3), Estimate.of(101, 2));
    MixError error = MixError.of(ratio, read);
    assertThat(error.shares().get(1).standardUncertainty()).isCloseTo(byDifferences, within(1e-7));
    assertThat(error.worst()).isEqualTo(error.shares().get(error.worstPart()));
    assertThat(error.worstPart()).isEqualTo(1);
  }

  private static double shareOfSecond(MixRatio ratio, double[] amounts) {
    return amounts[1] / (amounts[0] + amounts[1] + amounts[2]) / ratio.share(1) - 1;
  }

  @Test
  void the_need_of_paint_carries_three_uncertainties() {
    PaintNeed need =
        new PaintNeed(Estimate.of(2, 0.02), Estimate.of(50e-6, 2e-6), Estimate.of(0.6, 0.03), 0.1);
    Estimate volume = need.volume(new VolumeSolids(0.4));

    // 2 · 50e-6 / (0.4 · 0.6 · 0.9); relative √(0.01² + 0.04² + 0.05²)
    assertThat(volume.value()).isCloseTo(4.6296296e-4, within(1e-11));
    assertThat(volume.standardUncertainty() / volume.value())
        .isCloseTo(Math.sqrt(0.0042), within(1e-9));
    List<Double> parts = need.parts(MixRatio.of(2, 1), List.of(0.6, 0.0));
    assertThat(parts.get(0)).isCloseTo(2 / 3.0 * 4.6296296e-4, within(1e-11));
  }
}
