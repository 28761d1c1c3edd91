package lapline.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ClimateReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "dew-point.csv", useHeadersInDisplayName = true)
  void the_dew_point_follows_from_air_and_humidity(
      double air, double humidity, double dewPoint, double leastPanel) {
    double found = DewPoint.of(air, humidity / 100);

    assertThat(found).isCloseTo(dewPoint, within(5.1e-5));
    assertThat(found + 3).isCloseTo(leastPanel, within(5.1e-3));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "dew-point-chart.csv", useHeadersInDisplayName = true)
  void published_examples_come_out_as_printed(
      double air,
      Double humidity,
      Double wetBulb,
      double chart,
      double panel,
      double margin,
      boolean acceptable) {
    double share = humidity == null ? DewPoint.humidityFrom(air, wetBulb, 101_325) : humidity / 100;
    Estimate found =
        DewPoint.margin(Estimate.of(panel, 0), Estimate.of(air, 0), Estimate.of(share, 0));

    assertThat(DewPoint.of(air, share)).isCloseTo(chart, within(0.5));
    assertThat(found.value()).isCloseTo(margin, within(0.5));
    assertThat(found.value() >= 3).isEqualTo(acceptable);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "pot-life.csv", useHeadersInDisplayName = true)
  void pot_life_shrinks_with_warmth(double temperature, double halved, double activation) {
    PotLife life = new PotLife(4, 20);

    assertThat(life.halvedPerTenDegrees(temperature)).isCloseTo(halved, within(5.1e-5));
    assertThat(life.byActivation(temperature, 50_000)).isCloseTo(activation, within(5.1e-5));
  }

  /** Published rule of thumb: 4 h at 23 °C are 8, 2 and 1 h at 13, 33 and 43 °C. */
  @ParameterizedTest
  @CsvSource({"13, 8", "33, 2", "43, 1"})
  void ten_degrees_halve_the_pot_life(double temperature, double hours) {
    assertThat(new PotLife(4, 23).halvedPerTenDegrees(temperature)).isCloseTo(hours, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "activation.csv", useHeadersInDisplayName = true)
  void doubling_over_ten_degrees_means_about_50_kilojoules(
      double cold, double warm, double energy) {
    assertThat(PotLife.activationThatDoubles(cold, warm) / 1000).isCloseTo(energy, within(6e-4));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "saturation.csv", useHeadersInDisplayName = true)
  void saturated_vapour_presses_as_in_the_steam_tables(double temperature, double kilopascal) {
    assertThat(DewPoint.saturation(temperature) / 1000)
        .isCloseTo(kilopascal, within(kilopascal * 0.004));
  }

  /** Published: dry 21 °C and wet 17 °C at sea level; 67.1 % computed from the formula. */
  @Test
  void two_bulbs_give_the_humidity() {
    assertThat(DewPoint.humidityFrom(21, 17, 101_325)).isCloseTo(0.671, within(5e-4));
  }
}
