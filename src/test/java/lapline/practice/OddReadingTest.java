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

  private static Optional<String> asked(String target, String typed) {
    return asked("gun-pressure", target, typed, "");
  }

  private static Optional<String> asked(
      String measurand, String target, String typed, String more) {
    String one = criterion("a", measurand, target, "critical: yes, weight: 1, fade: 1 kPa" + more);
    WrittenPanel panel =
        WrittenPanel.against(measurand.equals("gun-pressure") ? one : one.replace("kPa", "um"));
    Measurand m = WrittenPanel.COURSE.measurands().find(measurand).orElseThrow();
    String cell = m.scope() == Scope.PLACE ? measurand + ".at1" : measurand;
    return PanelReader.read(
            panel.task(), WrittenPanel.COURSE.measurands(), Map.of(cell, typed), UnitSystem.METRIC)
        .questions()
        .stream()
        .map(FieldProblem::key)
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

  @Test
  void within_five_times_nothing_is_asked() {
    assertThat(asked(BETWEEN, "31")).isEmpty();
    assertThat(asked(BETWEEN, "890")).isEmpty();
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
    assertThat(asked("film-after", "50 to 65 um", "900 um", ", judged: sum")).isEmpty();
  }
}
