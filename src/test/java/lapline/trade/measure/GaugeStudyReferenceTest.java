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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /**
   * Invented: 5 panels × 3 people × 2 repeats with all four components; computed by an independent
   * program (numpy 2, the textbook's sums of squares), not published.
   */
  @Test
  void all_components_come_apart_where_people_differ_by_panel() {
    double[][][] readings = {
      {{46.3, 46.2}, {48.8, 46.4}, {54.5, 55.0}},
      {{49.6, 48.0}, {51.7, 51.2}, {53.1, 55.0}},
      {{44.5, 45.3}, {50.8, 49.3}, {49.6, 49.8}},
      {{40.8, 39.5}, {41.1, 42.4}, {44.6, 47.0}},
      {{40.7, 40.0}, {49.0, 47.7}, {47.6, 48.8}}
    };

    GaugeStudy study = GaugeStudy.of(readings);

    assertThat(study.interactionSeen()).isTrue();
    assertThat(study.repeatability()).isCloseTo(0.968331899, within(1e-9));
    assertThat(study.reproducibility()).isCloseTo(3.552886151, within(1e-9));
    assertThat(study.panels()).isCloseTo(3.294085609, within(1e-9));
    assertThat(study.gauge()).isCloseTo(3.682481048, within(1e-9));
    assertThat(study.total()).isCloseTo(4.940816397, within(1e-9));
    assertThat(study.shareOfTotal()).isCloseTo(0.745318334, within(1e-9));
    assertThat(study.categories()).isEqualTo(1);
  }

  /** Two by two by two: F = 4 d² with 1 and 4 degrees of freedom; p 0.2514 and 0.2483 by scipy. */
  @ParameterizedTest
  @CsvSource({"0.67, false", "0.675, true"})
  void an_interaction_is_seen_up_to_a_probability_of_a_quarter(double d, boolean seen) {
    double[][][] readings = {
      {{10 + d - 1, 10 + d + 1}, {10 - d - 1, 10 - d + 1}},
      {{20 - d - 1, 20 - d + 1}, {20 + d - 1, 20 + d + 1}}
    };

    GaugeStudy study = GaugeStudy.of(readings);
    assertThat(study.interactionSeen()).isEqualTo(seen);
    // by hand: mean squares 2 of the error and 8 d² of the interaction, none of people
    double error = seen ? 2 : (8 + 8 * d * d) / 5;
    assertThat(study.repeatability()).isCloseTo(Math.sqrt(error), within(1e-12));
    assertThat(study.reproducibility())
        .isCloseTo(seen ? Math.sqrt((8 * d * d - 2) / 2) : 0, within(1e-12));
  }

  /** By hand: the panels' mean square 2 is less than the error's 8, so nothing of it is theirs. */
  @Test
  void panels_that_differ_less_than_the_gauge_strays_do_not_differ() {
    double[][][] readings = {{{8, 12}, {8, 12}}, {{9, 13}, {9, 13}}};

    assertThat(GaugeStudy.of(readings).panels()).isZero();
    assertThat(GaugeStudy.of(readings).shareOfTotal()).isEqualTo(1);
    assertThat(GaugeStudy.of(readings).categories()).isZero();
  }

  @Test
  void where_nothing_differs_nothing_is_the_gauges() {
    double[][][] readings = {{{10, 10}, {10, 10}}, {{10, 10}, {10, 10}}};

    assertThat(GaugeStudy.of(readings).total()).isZero();
    assertThat(GaugeStudy.of(readings).shareOfTotal()).isZero();
    assertThat(GaugeStudy.of(readings).categories()).isEqualTo(Integer.MAX_VALUE);
  }

  /** Without error any difference is seen, and one that is not there is not. */
  @Test
  void people_who_repeat_themselves_exactly_are_told_apart_at_once() {
    double[][][] crossed = {{{10, 10}, {12, 12}}, {{20, 20}, {20, 20}}};
    double[][][] shifted = {{{10, 10}, {12, 12}}, {{20, 20}, {22, 22}}};

    assertThat(GaugeStudy.of(crossed).interactionSeen()).isTrue();
    assertThat(GaugeStudy.of(shifted).interactionSeen()).isFalse();
    // two people 2 apart: variance 2
    assertThat(GaugeStudy.of(shifted).reproducibility()).isCloseTo(Math.sqrt(2), within(1e-12));
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
