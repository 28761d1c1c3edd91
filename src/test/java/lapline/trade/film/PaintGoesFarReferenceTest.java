package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PaintGoesFarReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "wet-and-dry.csv", useHeadersInDisplayName = true)
  void wet_and_dry_film_follow_from_each_other(
      double solids, double reducer, double wet, double dry) {
    VolumeSolids thinned = new VolumeSolids(solids).thinnedBy(reducer);

    assertThat(thinned.dryFrom(wet * 1e-6) * 1e6).isCloseTo(dry, within(1e-6));
    assertThat(thinned.wetFor(dry * 1e-6) * 1e6).isCloseTo(wet, within(2e-6));
  }

  @Test
  void a_mix_has_the_solids_of_its_parts_by_volume() {
    VolumeSolids mix = VolumeSolids.ofMix(List.of(4.0, 1.0, 1.0), List.of(0.55, 0.60, 0.0));

    assertThat(mix.share()).isCloseTo(0.46666667, within(1e-8));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "spreading.csv", useHeadersInDisplayName = true)
  void paint_covers_the_area_its_solids_allow(double solids, double dry, double perLitre) {
    double rate = SpreadingRate.theoretical(new VolumeSolids(solids), dry * 1e-6);

    assertThat(rate / 1000).isCloseTo(perLitre, within(1e-6));
  }

  /** 231 in³ over 144 in² × 0.001 in is exactly 1604.1666…; computed from the definitions. */
  @Test
  void a_us_gallon_of_all_solids_covers_1604_square_feet_at_one_mil() {
    double perGallon = SpreadingRate.theoretical(new VolumeSolids(1), 25.4e-6) * 3.785411784e-3;

    assertThat(perGallon / (0.3048 * 0.3048)).isCloseTo(1604.16666667, within(1e-7));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "volume-needed.csv", useHeadersInDisplayName = true)
  void what_to_mix_follows_from_area_film_and_waste(
      double area, double dry, double solids, double efficiency, double litres) {
    double volume = SpreadingRate.volumeFor(area, new VolumeSolids(solids), dry * 1e-6, efficiency);

    assertThat(volume * 1000).isCloseTo(litres, within(1e-6));
  }
}
