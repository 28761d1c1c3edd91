package lapline.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.grading.CriterionStudied.Worth;
import lapline.grading.TaskStudyRecords.Agreed;
import lapline.grading.TaskStudyRecords.Tries;
import lapline.grading.TaskStudyRecords.Verdicts;
import org.junit.jupiter.api.Test;

/** What asks for a look at a target, and what is not claimed from few panels. */
class CriterionStudiedTest {

  private static CriterionStudied of(long met, long doubtful, long missed, long notJudged) {
    return of(met, doubtful, missed, notJudged, null);
  }

  private static CriterionStudied of(
      long met, long doubtful, long missed, long notJudged, Double share) {
    return new CriterionStudied(
        null, new Verdicts("film", met, doubtful, missed, notJudged, share, share == null ? 0 : 1));
  }

  @Test
  void a_target_that_some_meet_and_some_miss_is_good() {
    assertThat(of(6, 1, 3, 0).worth()).isEqualTo(Worth.GOOD);
    assertThat(of(6, 1, 3, 0).needsALook()).isFalse();
  }

  @Test
  void nothing_is_said_of_fewer_than_ten_panels() {
    assertThat(of(0, 0, 9, 0).worth()).isEqualTo(Worth.TOO_FEW);
    assertThat(of(0, 0, 9, 0).needsALook()).isFalse();
    assertThat(of(0, 0, 10, 0).worth()).isEqualTo(Worth.OUT_OF_REACH);
    assertThat(of(0, 0, 9, 5).worth()).as("judged on nine of fourteen").isEqualTo(Worth.TOO_FEW);
  }

  @Test
  void a_target_that_hardly_any_or_nearly_all_meet_is_told() {
    assertThat(of(1, 0, 19, 0).worth()).isEqualTo(Worth.OUT_OF_REACH);
    assertThat(of(2, 0, 18, 0).worth()).isEqualTo(Worth.GOOD);
    assertThat(of(19, 0, 1, 0).worth()).isEqualTo(Worth.ALWAYS_MET);
    assertThat(of(19, 0, 1, 0).needsALook()).as("it may guard something").isFalse();
    assertThat(of(1, 0, 19, 0).needsALook()).isTrue();
    assertThat(of(18, 1, 1, 0).worth()).isEqualTo(Worth.GOOD);
  }

  @Test
  void what_is_often_doubtful_is_laid_on_the_reading_only_where_that_is_coarse() {
    assertThat(of(7, 3, 0, 0).worth()).isEqualTo(Worth.OFTEN_DOUBTFUL);
    assertThat(of(7, 3, 0, 0, 0.2).worth()).as("Cm is 5").isEqualTo(Worth.OFTEN_DOUBTFUL);
    assertThat(of(7, 3, 0, 0, 0.5).worth()).as("Cm is 2").isEqualTo(Worth.TOO_COARSE);
    assertThat(of(8, 2, 0, 0, 0.5).worth()).as("not often").isEqualTo(Worth.GOOD);
    assertThat(of(7, 3, 0, 0, 0.5).capability()).hasValueCloseTo(2.0, within(1e-12));
    assertThat(of(7, 3, 0, 0, 0.0).capability()).as("read without any doubt").isEmpty();
  }

  @Test
  void what_is_left_open_more_often_than_not_says_so() {
    assertThat(of(4, 0, 0, 6).worth()).isEqualTo(Worth.SELDOM_READ);
    assertThat(of(5, 0, 5, 10).worth()).isEqualTo(Worth.GOOD);
  }

  @Test
  void agreement_is_told_from_ten_panels_on() {
    assertThat(studied(new Agreed(4, 1, 1, 3)).kappa()).isEmpty();
    // [[5, 1], [1, 3]]: po 0.8, pe 0.52, by hand
    assertThat(studied(new Agreed(5, 1, 1, 3)).kappa().orElseThrow().kappa())
        .isCloseTo(0.28 / 0.48, within(1e-12));
    assertThat(studied(new Agreed(12, 0, 0, 0)).kappa()).as("all of one mind").isEmpty();
  }

  private static TaskStudied studied(Agreed agreed) {
    return new TaskStudied(null, new Tries("t", 0, 0, 0, 0, 0, 0), java.util.List.of(), agreed);
  }
}
