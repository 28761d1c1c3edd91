package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Estimate;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MixingReferenceTest {

  private static List<Double> numbers(String text, double scale) {
    return Arrays.stream(text.split(" ")).map(t -> Double.parseDouble(t) * scale).toList();
  }

  private static void agree(List<Double> found, List<Double> printed) {
    assertThat(found).hasSameSizeAs(printed);
    for (int i = 0; i < found.size(); i++) {
      assertThat(found.get(i)).isCloseTo(printed.get(i), within(1e-4));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "mixes.csv", useHeadersInDisplayName = true)
  void parts_become_volumes_and_masses(
      String parts,
      double additive,
      double total,
      String densities,
      String volumes,
      String masses,
      String scale) {
    MixRatio named = new MixRatio(numbers(parts, 1));
    MixRatio ratio = additive > 0 ? named.plus(additive, AdditiveOf.SUM) : named;
    MixByWeight byWeight = new MixByWeight(ratio, numbers(densities, 1));

    agree(ratio.volumes(total), numbers(volumes, 1));
    agree(byWeight.masses(total), numbers(masses, 1));
    agree(byWeight.scaleReadings(total), numbers(scale, 1));
  }

  /**
   * The volumes that {@code trade.film} needs for its cases, from its own table (computed from the
   * formula): 2.2 m² at 55 µm, and the like. Tolerance: half of the last printed digit.
   */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/lapline/trade/film/volume-needed.csv",
      useHeadersInDisplayName = true)
  void an_area_at_a_film_takes_so_much_mix(
      double area, double film, double solids, double efficiency, double litres) {
    PaintNeed need =
        new PaintNeed(
            Estimate.of(area, 0), Estimate.of(film * 1e-6, 0), Estimate.of(efficiency, 0), 0);

    assertThat(need.volume(new VolumeSolids(solids)).value() * 1000)
        .isCloseTo(litres, within(5.1e-7));
  }
}
