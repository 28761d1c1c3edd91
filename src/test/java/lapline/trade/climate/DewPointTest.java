package lapline.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

class DewPointTest {

  @Test
  void saturated_air_is_at_its_dew_point() {
    assertThat(DewPoint.of(18, 1)).isCloseTo(18, within(1e-12));
  }

  @Test
  void a_humidity_of_200_per_cent_is_refused() {
    assertThatThrownBy(() -> DewPoint.of(20, 2.0))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("humidity");
  }

  @Test
  void bone_dry_air_has_no_dew_point() {
    assertThatThrownBy(() -> DewPoint.of(20, 0)).isInstanceOf(MeasureException.class);
  }

  @Test
  void the_margin_carries_all_three_uncertainties() {
    Estimate panel = Estimate.of(19, 0.3);
    Estimate air = Estimate.of(21, 0.5);
    Estimate humidity = Estimate.of(0.6, 0.03);
    Estimate margin = DewPoint.margin(panel, air, humidity);

    double h = 1e-5;
    double perAir = (DewPoint.of(21 + h, 0.6) - DewPoint.of(21 - h, 0.6)) / (2 * h);
    double perHumidity = (DewPoint.of(21, 0.6 + h) - DewPoint.of(21, 0.6 - h)) / (2 * h);
    assertThat(margin.value()).isCloseTo(19 - DewPoint.of(21, 0.6), within(1e-12));
    assertThat(margin.standardUncertainty())
        .isCloseTo(
            Math.sqrt(0.3 * 0.3 + Math.pow(perAir * 0.5, 2) + Math.pow(perHumidity * 0.03, 2)),
            within(1e-6));
    assertThat(DewPoint.of(air, humidity).standardUncertainty())
        .isLessThan(margin.standardUncertainty());
  }

  @Test
  void an_equal_wet_bulb_means_saturated_air() {
    assertThat(DewPoint.humidityFrom(20, 20, 101_325)).isCloseTo(1, within(1e-12));
  }

  @Test
  void a_wet_bulb_above_the_dry_one_is_refused() {
    assertThatThrownBy(() -> DewPoint.humidityFrom(20, 21, 101_325))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("wet");
  }
}
