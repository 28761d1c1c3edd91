package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.film.GaugeVerification.Accuracy;
import lapline.trade.film.GaugeVerification.OnStandard;
import lapline.trade.film.GaugeVerification.Standing;
import lapline.trade.film.PlanOutcome.Result;
import lapline.trade.film.PlanOutcome.Rule;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A gauge is believed while it reads its standards. */
class GaugeVerificationTest {
  private static final Accuracy FIVE_PER_CENT = new Accuracy(0.05, 0);

  private static GaugeVerification on254(String readings) {
    return new GaugeVerification(
        List.of(
            new OnStandard(254e-6, FIVE_PER_CENT, FIVE_PER_CENT, Micrometres.readings(readings))));
  }

  /**
   * The example of ASTM D7091, from memory: 5 % and 5 % make 7 %, so 254 µm may be read as 236 to
   * 272 µm.
   */
  @ParameterizedTest
  @CsvSource({
    "236.1 236.1 236.1, true",
    "235.9 235.9 235.9, false",
    "271.9 271.9 271.9, true",
    "272.1 272.1 272.1, false",
    "230 250 262, true"
  })
  void a_gauge_agrees_within_the_root_of_both_accuracies_squared(String readings, boolean agrees) {
    assertThat(on254(readings).agrees()).isEqualTo(agrees);
    assertThat(on254(readings).standards().get(0).tolerance())
        .isCloseTo(0.05 * Math.sqrt(2) * 254e-6, within(1e-12));
  }

  @Test
  void a_fixed_part_counts_with_the_share() {
    OnStandard thin =
        new OnStandard(
            25e-6,
            new Accuracy(0, 0.4e-6),
            new Accuracy(0.01, 1e-6),
            Micrometres.readings("26 26.2 26.1"));

    assertThat(thin.tolerance()).isCloseTo(Math.hypot(0.4e-6, 1.25e-6), within(1e-15));
    assertThat(thin.deviation()).isCloseTo(1.1e-6, within(1e-12));
    assertThat(thin.agrees()).isTrue();
  }

  @Test
  void one_standard_that_is_read_wrong_is_enough() {
    GaugeVerification both =
        new GaugeVerification(
            List.of(
                on254("254 254 254").standards().get(0), on254("290 290 290").standards().get(0)));

    assertThat(both.agrees()).isFalse();
    assertThat(both.worst()).isCloseTo(36 / 17.9605, within(1e-3));
  }

  @Test
  void readings_between_a_good_check_and_a_bad_one_are_suspect() {
    GaugeVerification good = on254("254 255 253");
    GaugeVerification bad = on254("280 281 279");

    assertThat(good.until(good)).isEqualTo(Standing.SOUND);
    assertThat(good.until(bad)).isEqualTo(Standing.SUSPECT);
    assertThat(bad.until(good)).isEqualTo(Standing.NOT_TO_BE_USED);
  }

  @Test
  void a_plan_neither_accepts_nor_rejects_what_a_doubtful_gauge_read() {
    GaugeVerification good = on254("254 255 253");
    GaugeVerification bad = on254("280 281 279");
    PlanOutcome film =
        SspcPa2.ofPanel(new TargetRange(50e-6, 65e-6))
            .judge(List.of(Micrometres.spots("60 60 60|60 60 60|60 60 60|60 60 60|60 60 60")));

    assertThat(film.readBy(good, good).accepted()).isTrue();
    assertThat(film.readBy(good, bad).result()).isEqualTo(Result.GAUGE_IN_DOUBT);
    assertThat(film.readBy(good, bad).broken())
        .extracting("rule")
        .containsExactly(Rule.GAUGE_VERIFIED);
  }

  @Test
  void more_repeated_readings_than_the_plan_allows_are_named() {
    FilmReadings readings = Micrometres.readings("60 62 65 61 70");

    assertThat(Iso19840.ofPanel(60e-6).judge(readings, 1).accepted()).isTrue();
    assertThat(Iso19840.ofPanel(60e-6).judge(readings, 2).broken())
        .extracting("rule")
        .containsExactly(Rule.FEW_REPEATED);
  }
}
