package lapline.trade.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

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
    assertThat(tolerance).isPositive();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "grain-sizes-rounded.csv", useHeadersInDisplayName = true)
  void grades_agree_with_a_rounded_chart(Abrasive grade, double median) {
    assertThat(grade.grainSize() * 1e6).isCloseTo(median, within(1.0));
    assertThat("P" + grade.grade()).isEqualTo(grade.name());
  }
}
