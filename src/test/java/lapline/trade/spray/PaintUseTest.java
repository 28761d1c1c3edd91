package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import lapline.trade.mixing.Voc;
import lapline.trade.mixing.VocPart;
import org.junit.jupiter.api.Test;

/** Where the paint went. */
class PaintUseTest {

  /**
   * Computed by hand: 55 µm on 2.2 m² is 121 mL of solids; 438.406 mL at 46 % hold 201.667 mL, so
   * 60 % arrived (the handbook's volume for that job, see volume-needed.csv of the film).
   */
  @Test
  void efficiency_follows_from_the_cup_weighed_and_the_film_found() {
    Estimate share =
        TransferEfficiency.of(
            Estimate.of(55e-6, 1.1e-6),
            Estimate.of(2.2, 0.022),
            Estimate.of(0.438406 * 1.1, 0.005),
            Estimate.of(1100, 5),
            Estimate.of(0.46, 0.005));

    assertThat(share.value()).isCloseTo(0.6, within(1e-6));
    // 2 %, 1 %, 1.0368 %, 0.4545 % and 1.0870 % in quadrature
    assertThat(share.standardUncertainty() / share.value()).isCloseTo(0.027319, within(1e-6));
    assertThat(TransferEfficiency.isPossible(share)).isTrue();
    assertThat(TransferEfficiency.isPossible(Estimate.of(1.2, 0.05))).isFalse();
  }

  @Test
  void what_did_not_arrive_is_overspray() {
    PaintUse use = PaintUse.of(500e-6, 0.4, 0.65, 480);

    assertThat(use.dryOnPanel()).isCloseTo(130e-6, within(1e-12));
    assertThat(use.overspray()).isCloseTo(175e-6, within(1e-12));
    assertThat(use.oversprayDry()).isCloseTo(70e-6, within(1e-12));
    assertThat(use.efficiency()).isCloseTo(0.65, within(1e-12));
  }

  /** 40 CFR 59.104(a) on the worked 4:1:1 mix: 549.1667 g/L, so half a litre gives off 274.6 g. */
  @Test
  void all_solvent_of_what_was_sprayed_is_given_off() {
    Voc mix =
        Voc.of(
            List.of(
                VocPart.solventBorne(4e-3, 1250, 0.42),
                VocPart.solventBorne(1e-3, 1050, 0.30),
                VocPart.solventBorne(1e-3, 880, 1)));

    assertThat(PaintUse.of(0.5e-3, 0.4, 0.65, mix.actual()).solventEmitted())
        .isCloseTo(0.27458335, within(1e-7));
  }

  @Test
  void a_coat_takes_flow_times_the_time_the_trigger_is_pulled() {
    // six strokes of 1 m at 0.5 m/s are 12 s at 2.5 mL/s
    assertThat(PaintUse.ofCoat(2.5e-6, 6, 1, 0.5)).isCloseTo(30e-6, within(1e-15));
  }

  /** 20,000 simulated jobs: the interval of two standard errors holds the truth as it says. */
  @Test
  void the_stated_interval_holds_the_true_efficiency() {
    Random chance = new Random(1);
    double[] truth = {55e-6, 2.2, 0.5, 1100, 0.46};
    double[] u = {2e-6, 0.03, 0.008, 15, 0.01};
    double efficiency = truth[0] * truth[1] * truth[3] / (truth[2] * truth[4]);
    int held = 0;
    for (int i = 0; i < 20_000; i++) {
      Estimate[] read = new Estimate[5];
      for (int j = 0; j < 5; j++) {
        read[j] = Estimate.of(truth[j] + u[j] * chance.nextGaussian(), u[j]);
      }
      Estimate found = TransferEfficiency.of(read[0], read[1], read[2], read[3], read[4]);
      boolean in = Math.abs(found.value() - efficiency) <= 1.959964 * found.standardUncertainty();
      held += in ? 1 : 0;
    }
    assertThat(held / 20_000.0).isBetween(0.94, 0.96);
  }
}
