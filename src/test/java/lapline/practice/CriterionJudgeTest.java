package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import lapline.practice.PanelScore.Result;
import lapline.trade.film.FurtherReadings;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriterionJudgeTest {
  private static final TargetRange FILM = new TargetRange(50e-6, 65e-6);

  private static WrittenPanel judging(String quantity, String target, String judged, String fade) {
    return WrittenPanel.against(
        criterion(
            "it",
            quantity,
            target,
            "judged: %s, critical: yes, weight: 1, fade: %s".formatted(judged, fade)));
  }

  private static Result result(WrittenPanel panel) {
    return panel.score().results().get(0);
  }

  /** Φ((180 − 175)/3) − Φ((150 − 175)/3) = Φ(1.6667) = 0.95221; JCGM 106:2012, 7.4. */
  @Test
  void a_single_reading_is_met_when_it_is_sure_enough() {
    WrittenPanel panel = judging("gun-pressure", "150 to 180 kPa", "mean", "9 kPa");
    Result met = result(panel.put("gun-pressure", "175 kPa"));
    assertThat(met.conformance()).isCloseTo(0.95221, within(1e-5));
    assertThat(met.verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void a_reading_inside_but_near_the_limit_is_in_doubt_with_advice() {
    WrittenPanel panel = judging("gun-pressure", "150 to 180 kPa", "mean", "9 kPa");
    Result near = result(panel.put("gun-pressure", "178 kPa"));
    assertThat(near.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(near.advice().key()).isEqualTo("score.advice.sure-most");
    assertThat(near.advice().args().get(0).value())
        .as("180 kPa less the guard band of 1.645 × 3 kPa; JCGM 106:2012, 8.3.2")
        .isCloseTo(175065, within(5.0));
    assertThat(result(panel.put("gun-pressure", "190 kPa")).verdict()).isEqualTo(Verdict.MISSED);
  }

  /**
   * Of three readings 5 µm inside the limit, s = 3: t(0.95, 2) · 3/√3 = 5.06 leaves the mean in
   * doubt. As many more as are told settle it in four cases out of five, one fewer does not.
   */
  @Test
  void a_mean_in_doubt_tells_how_many_readings_more_would_likely_settle_it() {
    WrittenPanel panel = judging("film-build", "50 to 65 um", "mean", "6 um");
    Result result = result(panel.putAtPlaces("film-after", 57, 63, 60));
    assertThat(result.value()).isCloseTo(60e-6, within(1e-12));
    assertThat(result.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(result.advice().key()).isEqualTo("score.advice.more");
    int more = result.advice().args().get(0).value().intValue();
    double gauge =
        result.instances().stream()
            .mapToDouble(i -> i.standardUncertainty())
            .average()
            .orElseThrow();
    assertThat(settled(more, gauge)).isGreaterThanOrEqualTo(0.8);
    assertThat(settled(more - 1, gauge)).isLessThan(0.8);
  }

  /** Half of the gauge's uncertainty is common to all. */
  private static double settled(int more, double gauge) {
    return FurtherReadings.chanceSettled(60e-6, 3e-6, 3, gauge / 2, FILM, more);
  }

  /** Six readings 3 µm inside it would take 33 more, which nobody reads; the limit is told. */
  @Test
  void where_more_than_a_dozen_would_be_needed_the_sure_limit_is_told_instead() {
    WrittenPanel panel = judging("film-build", "50 to 65 um", "mean", "6 um");
    Result result = result(panel.putAtPlaces("film-after", 58, 66, 57, 64, 67, 60));
    assertThat(result.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(result.advice().key()).isEqualTo("score.advice.sure-most");
  }

  /** The spread of a share of the area shrinks towards all and nothing. */
  @ParameterizedTest
  @CsvSource({
    "56 58 55 53 52 59 53 59 59 46 56 53 54 56 63, 0.907",
    "52 61 57 50 49 52 47 48 52 60 51 55 52 50 63, 0.726"
  })
  void of_a_share_of_the_area_in_doubt_no_sure_limit_is_told(String films, double share) {
    double[] after = Stream.of(films.split(" ")).mapToDouble(Double::parseDouble).toArray();
    WrittenPanel panel =
        WrittenPanel.against(
            criterion("film", "film-build", "50 to 65 um", "critical: yes, weight: 1, fade: 6 um"),
            criterion("it", "film-share", "at least 80 %", "weight: 1, fade: 10 %"));
    panel.putAtPlaces("film-before", new double[after.length]).putAtPlaces("film-after", after);
    Result result = panel.score().result("it").orElseThrow();
    assertThat(result.value()).isCloseTo(share, within(0.001));
    assertThat(result.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(result.advice().key()).isEqualTo("score.advice.near-limit");
  }

  /**
   * JCGM 100:2008, table G.2 (from memory): 2.87 for 95.45 % with 4 degrees of freedom, so that 60
   * ± 2.87 s/√5 held against just that range is 95.45 % likely.
   */
  @Test
  void the_plus_minus_of_few_readings_is_the_interval_that_the_probability_is_of() {
    WrittenPanel panel = judging("film-build", "39.6 to 80.4 um", "mean", "6 um");
    panel.putAtPlaces("film-before", new double[5]);
    Result result = result(panel.putAtPlaces("film-after", 40, 80, 60, 50, 70));
    assertThat(result.estimate().expandedUncertainty())
        .isCloseTo(2.87 * 15.811e-6 / Math.sqrt(5), within(0.3e-6));
    assertThat(result.conformance()).isCloseTo(0.9545, within(0.002));
  }

  /** t(0.95, 4) = 2.132, handbook tables (from memory): 80 − 2.132 × 15.811/√5 = 64.9. */
  @Test
  void the_sure_limit_of_few_readings_leaves_room_for_their_few_degrees_of_freedom() {
    WrittenPanel panel = judging("film-build", "at least 45 um", "mean", "6 um");
    panel.putAtPlaces("film-before", new double[5]);
    Result result = result(panel.putAtPlaces("film-after", 38, 78, 58, 48, 68));
    assertThat(result.verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(result.advice().key()).isEqualTo("score.advice.sure-least");
    assertThat(result.advice().args().get(0).value())
        .isCloseTo(45e-6 + 2.132 * 15.811e-6 / Math.sqrt(5), within(0.2e-6));
  }

  @Test
  void where_each_counts_the_least_sure_one_decides() {
    WrittenPanel panel = judging("film-build", "50 to 65 um", "each", "6 um");
    Result result = result(panel.putAtPlaces("film-after", 57, 58, 41));
    assertThat(result.verdict()).isEqualTo(Verdict.MISSED);
    assertThat(result.value()).isCloseTo(41e-6, within(1e-12));
    assertThat(result.instances()).hasSize(3);
    assertThat(result.points()).isGreaterThan(0.66);
  }

  @Test
  void a_share_counts_the_places_that_are_not_as_they_should_be() {
    WrittenPanel panel = judging("shine-left", "at most 10 %", "share", "10 %");
    for (int place = 1; place <= 10; place++) {
      panel.put("shine-left.at" + place, place == 4 ? "shine" : "dull");
    }
    assertThat(result(panel).value()).isEqualTo(0.1);
    assertThat(result(panel).verdict()).isEqualTo(Verdict.MET);
    assertThat(result(panel.put("shine-left.at5", "shine")).verdict()).isEqualTo(Verdict.MISSED);
  }

  @Test
  void a_sum_adds_up_and_carries_its_uncertainty() {
    WrittenPanel panel = judging("jamb-overhang", "at most 100 mm", "sum", "10 mm");
    Result result = result(panel.putAtPlaces("jamb-overhang", 25, 30, 20, 22));
    assertThat(result.value()).isCloseTo(0.097, within(1e-12));
    assertThat(result.standardUncertainty()).isCloseTo(0.002, within(1e-12));
  }

  @Test
  void the_last_one_stands_for_all() {
    WrittenPanel panel = judging("room-left", "at least 50 mm", "last", "10 mm");
    panel.put("room-left.c2", "150").put("room-left.c4", "70");
    assertThat(result(panel).value()).isCloseTo(0.07, within(1e-12));
  }

  @Test
  void a_step_back_to_a_coarser_paper_is_the_largest_one() {
    WrittenPanel panel = judging("grit", "1 to 200", "largest-step", "50");
    panel.put("grit.s1", "P400").put("grit.s2", "P1000").put("grit.s3", "P240");
    assertThat(result(panel).value()).isEqualTo(-760);
    assertThat(result(panel).verdict()).isEqualTo(Verdict.MISSED);
  }

  @Test
  void what_was_not_measured_is_not_judged_and_says_what_was_wanted() {
    Result result = result(judging("overlap", "65 % to 75 %", "mean", "5 %"));
    assertThat(result.judged()).isFalse();
    assertThat(result.missing()).containsExactly("pass-spacing", "fan-width");
  }

  @Test
  void what_was_written_down_is_not_among_what_is_missing() {
    WrittenPanel panel = judging("overlap", "65 % to 75 %", "mean", "5 %");
    assertThat(result(panel.put("fan-width", "230 mm")).missing()).containsExactly("pass-spacing");
  }
}
