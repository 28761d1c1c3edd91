package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * The worked data of Measurement Systems Analysis, 4th ed. (2010), chapter III-B; components by R
 * 4.2.2 (aov, and lme4 1.1-31 by restricted likelihood, which agree).
 */
class GaugeStudyReferenceTest {

  private static double[][][] published() throws IOException {
    double[][][] readings = new double[10][3][3];
    try (InputStream file = GaugeStudyReferenceTest.class.getResourceAsStream("gauge-study.csv")) {
      List<String> lines =
          new String(file.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(l -> l.matches("[ABC],.*"))
              .toList();
      for (String line : lines) {
        String[] cells = line.split(",");
        for (int part = 0; part < 10; part++) {
          readings[part][cells[0].charAt(0) - 'A'][Integer.parseInt(cells[1]) - 1] =
              Double.parseDouble(cells[part + 2]);
        }
      }
    }
    return readings;
  }

  @Test
  void published_readings_come_apart_as_other_programs_find() throws IOException {
    GaugeStudy study = GaugeStudy.of(published());

    assertThat(study.interactionSeen()).isFalse();
    assertThat(study.repeatability()).isCloseTo(0.1999332, within(5e-8));
    assertThat(study.reproducibility()).isCloseTo(0.2268375, within(5e-8));
    assertThat(study.gauge()).isCloseTo(0.3023715, within(5e-8));
    assertThat(study.panels()).isCloseTo(1.042327, within(6e-7));
    assertThat(study.total()).isCloseTo(1.085300, within(6e-7));
    assertThat(100 * study.shareOfTotal()).isCloseTo(27.86065, within(5e-6));
    assertThat(study.categories()).isEqualTo(4);
  }

  /** Invented: 2 panels × 2 people × 2 repeats, of which each sum of squares is done by hand. */
  @Test
  void a_person_who_reads_one_panel_differently_is_seen() {
    double[][][] readings = {{{10, 10.2}, {14, 14.2}}, {{20, 20.2}, {20, 20.2}}};

    GaugeStudy study = GaugeStudy.of(readings);

    assertThat(study.interactionSeen()).isTrue();
    assertThat(study.repeatability()).isCloseTo(Math.sqrt(0.02), within(1e-12));
    // mean square of the interaction 8, less the error 0.02, over 2 repeats; of people none is left
    assertThat(study.reproducibility()).isCloseTo(Math.sqrt((8 - 0.02) / 2), within(1e-12));
    assertThat(study.panels()).isCloseTo(Math.sqrt((128 - 8) / 4.0), within(1e-12));
  }

  @Test
  void many_readings_give_the_spreads_back_that_they_were_drawn_with() {
    RandomGenerator chance = new Random(11);
    double[][][] readings = new double[200][60][2];
    double[] people = DoubleStream.generate(() -> 2 * chance.nextGaussian()).limit(60).toArray();
    for (double[][] panel : readings) {
      double truth = 50 + 5 * chance.nextGaussian();
      for (int j = 0; j < 60; j++) {
        for (int k = 0; k < 2; k++) {
          panel[j][k] = truth + people[j] + 1.5 * chance.nextGaussian();
        }
      }
    }

    GaugeStudy study = GaugeStudy.of(readings);

    assertThat(study.repeatability()).isCloseTo(1.5, within(0.03));
    assertThat(study.reproducibility()).isCloseTo(2, within(0.5));
    assertThat(study.panels()).isCloseTo(5, within(0.6));
  }

  @Test
  void a_study_with_a_hole_or_too_small_to_tell_is_refused() {
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}}))
        .withMessageContaining("panels is 1.0");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3}}}))
        .withMessageContaining("repeats is 1.0");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(
            () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3, Double.NaN}}}))
        .withMessageContaining("values is NaN");
  }

  @Test
  void a_gauge_without_any_spread_tells_all_panels_apart() {
    double[][][] readings = {{{10, 10}, {10, 10}}, {{20, 20}, {20, 20}}};

    assertThat(GaugeStudy.of(readings).shareOfTotal()).isZero();
    assertThat(GaugeStudy.of(readings).categories()).isEqualTo(Integer.MAX_VALUE);
  }
}
