package lapline.practice;

import static lapline.practice.WrittenPanel.criterion;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A number that another unit explains is asked about, one far off too, and no other. */
class OddReadingTest {
  private static final String BETWEEN = "150 to 180 kPa";
  private static final String NEEDED = "critical: yes, weight: 1, fade: ";

  private static Optional<String> asked(String target, String typed) {
    return asked("gun-pressure", target, typed, "");
  }

  private static Optional<String> asked(
      String measurand, String target, String typed, String more) {
    boolean film = measurand.equals("film-after");
    String one = criterion("a", measurand, target, NEEDED + (film ? "1 um" : "1 kPa") + more);
    return question(one, film ? "film-after.at1" : measurand, typed).map(FieldProblem::key);
  }

  /** What is asked about a reading where the task has this criterion. */
  private static Optional<FieldProblem> question(String criterion, String cell, String typed) {
    return question(criterion, cell, typed, UnitSystem.METRIC);
  }

  private static Optional<FieldProblem> question(
      String criterion, String cell, String typed, UnitSystem units) {
    return PanelReader.read(
            WrittenPanel.against(criterion).task(),
            WrittenPanel.COURSE.measurands(),
            Map.of(cell, typed),
            units)
        .questions()
        .stream()
        .findFirst();
  }

  @Test
  void a_bare_number_that_would_be_right_in_another_unit_is_asked_about() {
    assertThat(asked(BETWEEN, "24")).contains("entry.question.unit");
    assertThat(asked(BETWEEN, "1.7")).contains("entry.question.unit");
  }

  @Test
  void with_its_unit_it_is_only_asked_about_when_ten_times_off() {
    assertThat(asked(BETWEEN, "24 kPa")).isEmpty();
    assertThat(asked(BETWEEN, "14 kPa")).contains("entry.question.far");
    assertThat(asked("50 to 60 kPa", "590 kPa")).isEmpty();
    assertThat(asked("50 to 60 kPa", "610 kPa")).contains("entry.question.far");
  }

  /** Named are what stands there, the unit that would explain it, and what to write then. */
  @Test
  void the_question_says_what_was_read_and_what_to_write_instead() {
    String one = criterion("a", "gun-pressure", BETWEEN, NEEDED + "1 kPa");
    assertThat(question(one, "gun-pressure", "24").orElseThrow().args())
        .containsExactly("24\u00a0kPa", "psi", "24\u00a0psi");
    assertThat(question(one, "gun-pressure", "14 kPa").orElseThrow().args())
        .containsExactly("14\u00a0kPa");
  }

  @Test
  void within_five_times_nothing_is_asked() {
    assertThat(asked(BETWEEN, "30")).isEmpty();
    assertThat(asked(BETWEEN, "900")).isEmpty();
    assertThat(asked(BETWEEN, "29")).contains("entry.question.unit");
  }

  /** A fifth and five times are still near; so are a tenth and ten times of what has its unit. */
  @Test
  void a_reading_on_the_edge_of_far_is_not_asked_about() {
    assertThat(asked(BETWEEN, "15 kPa")).isEmpty();
    assertThat(asked("50 to 60 kPa", "600 kPa")).isEmpty();
    assertThat(asked("at least 10 kPa", "500 kPa")).isEmpty();
    assertThat(asked("at most 180 kPa", "3.6 kPa")).isEmpty();
  }

  @Test
  void against_one_limit_another_unit_is_looked_for_too() {
    assertThat(asked("at least 150 kPa", "24")).contains("entry.question.unit");
    assertThat(asked("at most 180 kPa", "1.7")).contains("entry.question.unit");
  }

  /** What is good can lie far from one limit, and nothing at all is no other unit. */
  @Test
  void a_limit_on_one_side_leaves_far_more_room_on_the_other() {
    assertThat(asked("at least 150 kPa", "7400 kPa")).isEmpty();
    assertThat(asked("at least 10 kPa", "510 kPa")).contains("entry.question.far");
    assertThat(asked("at most 180 kPa", "3.7 kPa")).isEmpty();
    assertThat(asked("at most 180 kPa", "3.5 kPa")).contains("entry.question.far");
    assertThat(asked(BETWEEN, "0")).isEmpty();
  }

  @Test
  void only_a_criterion_that_judges_single_readings_or_their_mean_is_compared_with() {
    assertThat(asked("film-after", "50 to 65 um", "900 um", "")).contains("entry.question.far");
    assertThat(asked("film-after", "50 to 65 um", "900 um", ", judged: each"))
        .contains("entry.question.far");
    assertThat(asked("film-after", "50 to 65 um", "900 um", ", judged: sum")).isEmpty();
  }

  /** Waiting between coats is spoken of in minutes, and a phone's stopwatch shows seconds. */
  @Test
  void a_reading_is_held_against_the_mean_that_is_computed_from_it_and_nothing_else() {
    String flash = criterion("a", "flash-time", "10 to 15 min", NEEDED + "1 min");
    assertThat(question(flash, "flash.c2", "600").orElseThrow().args()).contains("600\u00a0s");
    assertThat(question(flash, "work-time", "600")).isEmpty();
  }

  /** Ten degrees are not ten times as warm as one. */
  @Test
  void what_has_no_nought_of_its_own_is_never_asked_about() {
    String warm = criterion("a", "panel-temperature", "18 to 25 \u00b0C", NEEDED + "1 \u00b0C");
    assertThat(question(warm, "panel-temperature", "1")).isEmpty();
  }

  @Test
  void a_warmth_that_would_be_right_in_the_other_degrees_is_asked_about() {
    String warm = criterion("a", "panel-temperature", "55 to 65 \u00b0C", NEEDED + "1 \u00b0C");
    assertThat(inUs(warm, "panel-temperature", "60"))
        .contains("60\u00a0\u00b0F, \u00b0C, 60\u00a0\u00b0C");
    assertThat(inUs(warm, "panel-temperature", "140")).isEmpty();
    assertThat(inUs(warm, "panel-temperature", "70"))
        .contains("70\u00a0\u00b0F, \u00b0C, 70\u00a0\u00b0C");
    assertThat(inUs(warm, "panel-temperature", "71")).isEmpty();
    assertThat(question(warm, "panel-temperature", "60")).isEmpty();
  }

  /** A task that asks for no warmth is still done in a workshop, not in the snow. */
  @Test
  void warmth_that_no_task_asks_for_is_that_of_a_workshop() {
    String any = criterion("a", "gun-pressure", BETWEEN, NEEDED + "1 kPa");
    assertThat(inUs(any, "air-temperature", "21"))
        .contains("21\u00a0\u00b0F, \u00b0C, 21\u00a0\u00b0C");
    assertThat(inUs(any, "panel-temperature", "20")).isPresent();
    assertThat(inUs(any, "air-temperature", "70")).isEmpty();
    assertThat(inUs(any, "air-temperature", "45")).isEmpty();
    assertThat(inUs(any, "air-temperature", "21 \u00b0F")).isEmpty();
    assertThat(question(any, "panel-temperature", "72").orElseThrow().args())
        .containsExactly("72\u00a0\u00b0C", "\u00b0F", "72\u00a0\u00b0F");
  }

  /** Film laid on is the difference of two readings, each of which has the old paint in it. */
  @Test
  void a_gauge_reading_is_held_against_the_film_that_will_be_computed_from_it() {
    String film = criterion("a", "film-build", "50 to 65 um", NEEDED + "1 um");
    assertThat(inUs(film, "film-after.at1", "62"))
        .contains("62\u00a0mil, \u00b5m, 62\u00a0\u00b5m");
    assertThat(inUs(film, "film-before.at1", "16"))
        .contains("16\u00a0mil, \u00b5m, 16\u00a0\u00b5m");
    assertThat(inUs(film, "film-after.at1", "12")).isEmpty();
    assertThat(question(film, "film-after.at1", "2.4").orElseThrow().args())
        .contains("2.4\u00a0mil");
    assertThat(question(film, "film-after.at1", "160")).isEmpty();
  }

  /** Bare metal has no film before painting, and a dent may be full of filler. */
  @Test
  void old_paint_may_be_as_thin_or_thick_as_it_likes() {
    String film = criterion("a", "film-build", "50 to 65 um", NEEDED + "1 um");
    assertThat(question(film, "film-before.at1", "2")).isEmpty();
    assertThat(question(film, "film-before.at1", "0")).isEmpty();
    assertThat(question(film, "film-before.at1", "1500 um")).isEmpty();
    assertThat(question(film, "film-after.at1", "1500 um")).isEmpty();
    assertThat(question(film, "film-after.at1", "4 um").orElseThrow().key())
        .isEqualTo("entry.question.far");
  }

  /** What stands there in US units, the unit that would explain it, and what to write then. */
  private static Optional<String> inUs(String criterion, String cell, String typed) {
    return question(criterion, cell, typed, UnitSystem.US).map(q -> String.join(", ", q.args()));
  }
}
