package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.practice.FilmField;
import lapline.practice.FilmField.PlaceFilm;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A panel of 55 µm all over, read at two places, held against 50 to 65 µm. */
class SprayedMapsTest {
  private static SprayedMaps maps(double first, double second) {
    List<PlaceFilm> places =
        List.of(new PlaceFilm(1, 0.1, 0.1, first, 1e-6), new PlaceFilm(2, 0.4, 0.3, second, 1e-6));
    List<Double> film = List.of(55e-6, 55e-6, 55e-6, 55e-6);
    TargetRange target = new TargetRange(50e-6, 65e-6);
    FilmField field =
        new FilmField(
            0.6, 0.4, 2, 2, film, target, 55e-6, 0, 1, 1, 1, List.of(), places, List.of());
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    return new SprayedMaps(InventedTask.panel(), field, words);
  }

  @Test
  void the_measured_map_is_shaded_like_the_map_beside_it_with_its_places_and_its_legend() {
    SprayedMaps maps = maps(54e-6, 56e-6);
    SprayedMaps.Scale scale = maps.scale();
    double share = (55e-6 - scale.thinnest()) / (scale.thickest() - scale.thinnest());
    int step = (int) (share * scale.tones().size());
    // the last shade painted over the whole panel is that of its film
    String panel = maps.measured().split("</defs>")[1].split("<circle")[0];
    assertThat(panel).contains(scale.tones().get(step)).doesNotContain(scale.tones().get(step + 1));
    assertThat(maps.measured()).contains(">54<", ">56<", "range 50 to 65");
  }

  @Test
  void the_scale_holds_range_and_readings() {
    assertThat(maps(20e-6, 56e-6).scale().thinnest()).isEqualTo(20e-6);
    assertThat(maps(54e-6, 120e-6).scale().thickest()).isEqualTo(120e-6);
    assertThat(maps(54e-6, 56e-6).scale().thinnest()).isLessThan(50e-6);
    assertThat(maps(54e-6, 56e-6).scale().thickest()).isGreaterThan(65e-6);
  }

  @Test
  void the_legend_has_every_shade_of_the_scale_from_end_to_end() {
    List<String> tones = maps(54e-6, 56e-6).scale().tones();
    assertThat(maps(54e-6, 56e-6).legend())
        .contains(tones.get(0), tones.get(tones.size() - 1), "range 50 to 65", "dotted", "ruled");
  }
}
