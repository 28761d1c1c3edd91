package lapline.practice.quantity;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.practice.PanelScore;
import lapline.practice.WrittenPanel;
import lapline.practice.quantity.Measured.DoesNotApply;
import lapline.practice.quantity.Measured.Missing;
import lapline.practice.quantity.Measured.Value;
import lapline.practice.quantity.Measured.Values;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class FilmQuantitiesTest {
  private static final double[] EVEN = {57, 58, 57, 56, 57, 58, 57, 57, 56, 58, 57, 56, 57, 58, 57};

  private static String film(String range) {
    return criterion("film", "film-build", range, "critical: yes, weight: 1, fade: 5 um");
  }

  private static List<Value> values(Measured measured) {
    return ((Values) measured).values();
  }

  @Test
  void film_build_is_after_less_before_at_each_place() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um"));
    panel.putAtPlaces("film-before", 62, 60).putAtPlaces("film-after", 120, 121, 119);
    List<Value> build = values(panel.measure("film-build"));
    // place 3 has no reading before, so nothing is known of what was laid on it
    assertThat(build).extracting(v -> v.where().place()).containsExactly(1, 2);
    assertThat(build.get(0).estimate().value()).isCloseTo(58e-6, within(1e-12));
    // each reading 1 µm and 1 %: hypot(hypot(1, 1.2), hypot(1, 0.62))
    assertThat(build.get(0).estimate().standardUncertainty()).isCloseTo(1.95561e-6, within(1e-11));
  }

  @Test
  void where_nothing_lay_before_the_film_is_the_build() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um")).putAtPlaces("film-after", 58);
    assertThat(panel.value("film-build").estimate().value()).isCloseTo(58e-6, within(1e-12));
  }

  @Test
  void wet_film_is_a_mean_for_each_coat() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um"));
    panel.put("wet-film.c1.at1", "60").put("wet-film.c1.at2", "66").put("wet-film.c2.at1", "75");
    List<Value> wet = values(panel.measure("wet-film-mean"));
    assertThat(wet).extracting(v -> v.where().key()).containsExactly("wet-film.c1", "wet-film.c2");
    assertThat(wet.get(0).estimate().value()).isCloseTo(63e-6, within(1e-12));
  }

  @Test
  void the_share_inside_is_the_one_of_the_panels_map() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um"));
    panel.putAtPlaces("film-after", 50, 54, 58, 62, 66, 49, 53, 57, 61, 65, 48, 52, 56, 60, 64);
    PanelScore score = panel.score();
    assertThat(panel.value("film-share").estimate().value())
        .isCloseTo(score.film().shareInside(), within(1e-12));
    assertThat(score.film().shareInside()).isBetween(0.6, 0.95);
  }

  @Test
  void how_sure_a_share_is_falls_as_more_is_asked_of_it() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um"));
    panel.putAtPlaces("film-after", 50, 54, 58, 62, 66, 49, 53, 57, 61, 65, 48, 52, 56, 60, 64);
    Value share = panel.value("film-share");
    double mean = share.estimate().value();
    assertThat(sure(share, mean / 2)).isGreaterThan(0.95);
    assertThat(sure(share, mean)).isBetween(0.3, 0.7);
    assertThat(sure(share, 0.999)).isLessThan(0.05);
  }

  private static double sure(Value share, double least) {
    return share.conformance().applyAsDouble(TargetRange.atLeast(least));
  }

  @Test
  void a_panel_in_the_middle_of_its_range_is_inside_nearly_everywhere() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um")).putAtPlaces("film-after", EVEN);
    Value share = panel.value("film-share");
    assertThat(share.estimate().value()).isGreaterThan(0.97);
    assertThat(share.conformance().applyAsDouble(TargetRange.atLeast(0.8))).isGreaterThan(0.95);
  }

  @Test
  void four_places_say_nothing_of_a_share() {
    WrittenPanel panel =
        WrittenPanel.against(film("50 to 65 um")).putAtPlaces("film-after", 57, 58, 57, 56);
    assertThat(panel.measure("film-share")).isEqualTo(Missing.of("film-before", "film-after"));
  }

  /** Ten readings on a nominal film of 60 µm; rule a to d of ISO 19840:2012, worked by hand. */
  @Test
  void of_ten_readings_one_may_lie_below_nominal_and_not_two() {
    WrittenPanel one = WrittenPanel.against(film("60 to 80 um"));
    one.putAtPlaces("film-after", 60, 62, 65, 58, 70, 66, 61, 63, 64, 68);
    assertThat(one.value("film-plan").estimate().value()).isEqualTo(1);
    WrittenPanel two = WrittenPanel.against(film("60 to 80 um"));
    two.putAtPlaces("film-after", 60, 62, 65, 58, 70, 66, 61, 63, 64, 59);
    assertThat(two.value("film-plan").estimate().value()).isZero();
  }

  @Test
  void under_forty_micrometres_that_standard_does_not_apply_and_blocks_nobody() {
    WrittenPanel panel =
        WrittenPanel.against(
            film("15 to 25 um"),
            criterion("rule", "film-plan", "at least 1", "critical: yes, weight: 0, fade: 1"));
    panel.putAtPlaces("film-after", 20, 20, 20, 20, 20, 20, 20, 20);
    assertThat(panel.measure("film-plan")).isEqualTo(new DoesNotApply());
    assertThat(panel.score().accepted()).isTrue();
    assertThat(panel.score().result("rule").orElseThrow().applies()).isFalse();
  }

  /** Five spots of three readings against 50 to 65 µm; SSPC-PA 2, worked by hand. */
  @Test
  void spots_may_stray_by_a_fifth_but_their_mean_may_not() {
    double[] stray = {52, 55, 58, 47, 50, 44, 61, 63, 65, 70, 76, 73, 57, 60, 54};
    WrittenPanel panel = WrittenPanel.inSpots(film("50 to 65 um")).putAtPlaces("film-after", stray);
    // spots 55, 47, 63, 73 and 57, mean 59; limits 40 to 78 for a spot, 50 to 65 for the mean
    assertThat(panel.value("film-spots").estimate().value()).isEqualTo(1);
    double[] thick = {70, 70, 70, 70, 70, 70, 61, 63, 65, 70, 70, 70, 57, 60, 54};
    // spots 70, 70, 63, 70, 57: each below 78, their mean 66
    assertThat(panel.putAtPlaces("film-after", thick).value("film-spots").estimate().value())
        .isZero();
  }

  @Test
  void places_that_stand_apart_make_no_spots() {
    WrittenPanel panel = WrittenPanel.against(film("50 to 65 um")).putAtPlaces("film-after", EVEN);
    assertThat(panel.measure("film-spots")).isEqualTo(Missing.of("film-before", "film-after"));
  }
}
