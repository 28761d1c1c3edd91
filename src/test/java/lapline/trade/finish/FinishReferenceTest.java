package lapline.trade.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import lapline.trade.finish.CrossCut.Scheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FinishReferenceTest {

  @ParameterizedTest
  @CsvFileSource(resources = "smooth-gloss.csv", useHeadersInDisplayName = true)
  void a_smooth_film_reads_what_its_index_allows(
      double index,
      double reflected20,
      double gloss20,
      double reflected60,
      double gloss60,
      double reflected85,
      double gloss85) {
    agree(index, GlossAngle.DEGREES_20, reflected20, gloss20);
    agree(index, GlossAngle.DEGREES_60, reflected60, gloss60);
    agree(index, GlossAngle.DEGREES_85, reflected85, gloss85);
  }

  private static void agree(double index, GlossAngle angle, double reflected, double gloss) {
    SmoothGloss film = new SmoothGloss(index);
    assertThat(film.reflectance(angle) * 100).isCloseTo(reflected, within(5.1e-5));
    assertThat(film.gloss(angle)).isCloseTo(gloss, within(5.1e-3));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "grain-sizes.csv", useHeadersInDisplayName = true)
  void fine_grades_have_the_grain_of_the_standard(Abrasive grade, double median, double tolerance) {
    assertThat(grade.grainSize() * 1e6).isCloseTo(median, within(1e-9));
    assertThat(grade.tolerance().orElseThrow() * 1e6).isCloseTo(tolerance, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "grain-sizes-rounded.csv", useHeadersInDisplayName = true)
  void grades_agree_with_a_rounded_chart(Abrasive grade, double median) {
    assertThat(grade.grainSize() * 1e6).isCloseTo(median, within(1.0));
    assertThat("P" + grade.grade()).isEqualTo(grade.name());
  }

  /** Of the whole P scale no two grades are out of order, and sieved grades have no tolerance. */
  @Test
  void sieved_grades_have_no_tolerance_of_a_median() {
    assertThat(Abrasive.P220.tolerance()).isEmpty();
    assertThat(Abrasive.P240.tolerance()).isPresent();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "cross-cut.csv", useHeadersInDisplayName = true)
  void the_detached_area_gives_the_class_of_either_scheme(double percent, String iso, String astm) {
    assertThat(CrossCut.of(Scheme.ISO_2409, percent / 100).written()).isEqualTo(iso);
    assertThat(CrossCut.of(Scheme.ASTM_D3359_B, percent / 100).written()).isEqualTo(astm);
  }

  /** The two scales run in opposite directions: ISO 0 is 5B, ISO 5 is 0B. */
  @ParameterizedTest
  @CsvSource({"0, 5B", "1, 4B", "2, 3B", "3, 2B", "4, 1B", "5, 0B"})
  void classes_of_the_two_schemes_stand_beside_each_other(int iso, String astm) {
    CrossCut found = new CrossCut(Scheme.ISO_2409, iso);

    assertThat(found.in(Scheme.ASTM_D3359_B).written()).isEqualTo(astm);
    assertThat(found.in(Scheme.ASTM_D3359_B).in(Scheme.ISO_2409)).isEqualTo(found);
    assertThat(found.in(Scheme.ISO_2409)).isEqualTo(found);
    assertThat(found.stepsFromBest()).isEqualTo(iso);
    assertThat(found.in(Scheme.ASTM_D3359_B).stepsFromBest()).isEqualTo(iso);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "cross-cut-spacing.csv", useHeadersInDisplayName = true)
  void the_film_sets_how_far_apart_the_cuts_are(
      double film, boolean soft, Double iso, Double astm, Integer cuts) {
    OptionalDouble isoFound = CrossCut.spacing(Scheme.ISO_2409, film * 1e-6, soft);
    OptionalDouble astmFound = CrossCut.spacing(Scheme.ASTM_D3359_B, film * 1e-6, soft);

    agree(isoFound, iso);
    agree(astmFound, astm);
    astmFound.ifPresent(s -> assertThat(CrossCut.cuts(Scheme.ASTM_D3359_B, s)).isEqualTo(cuts));
    isoFound.ifPresent(s -> assertThat(CrossCut.cuts(Scheme.ISO_2409, s)).isEqualTo(6));
  }

  private static void agree(OptionalDouble found, Double millimetres) {
    assertThat(found.isPresent()).isEqualTo(millimetres != null);
    found.ifPresent(s -> assertThat(s * 1000).isCloseTo(millimetres, within(1e-9)));
  }

  /** Usual last grades of trade texts, from memory. */
  @ParameterizedTest
  @CsvSource({
    "SURFACER, P180, P320",
    "SOLID_BASE_OR_SEALER, P400, P500",
    "METALLIC_BASE, P500, P800",
    "BLENDED_CLEAR, P1000, P1500"
  })
  void each_layer_has_its_usual_last_grades(NextLayer next, Abrasive coarsest, Abrasive finest) {
    assertThat(next.coarsest()).isEqualTo(coarsest);
    assertThat(next.finest()).isEqualTo(finest);
  }
}
