package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A workshop cannot set a target that no panel, or every panel, would meet. */
class PossibleTargetTest {
  private static final TargetRange FILM = new TargetRange(0, 500e-6);

  private static Optional<String> problem(String text) {
    return PossibleTarget.problem(
            "film", text, FILM, SpokenUnits.usual(Dimension.FILM), UnitSystem.METRIC)
        .map(FieldProblem::key);
  }

  private static TargetRange possible(String criterion) {
    PracticeTask task = WrittenPanel.against(criterion).task();
    return PossibleTarget.of(task.criteria().get(0), WrittenPanel.COURSE.measurands());
  }

  @Test
  void limits_within_what_can_be_are_taken() {
    assertThat(problem("50 to 65 µm")).isEmpty();
    assertThat(problem("0 to 500 µm")).isEmpty();
    assertThat(problem("at most 500 µm")).isEmpty();
  }

  @Test
  void a_limit_beyond_what_can_be_is_named_on_its_side() {
    assertThat(problem("50 to 501 µm")).contains("targets.wrong.above");
    assertThat(problem("at least 501 µm")).contains("targets.wrong.above");
    assertThat(problem("-1 to 65 µm")).isPresent();
  }

  @Test
  void a_text_longer_than_any_target_is_refused_for_that() {
    assertThat(problem("50 to 65 µm" + " ".repeat(60))).isEmpty();
    assertThat(problem("5".repeat(51))).contains("targets.wrong.long");
    assertThat(problem("5".repeat(50))).isNotEqualTo(Optional.of("targets.wrong.long"));
  }

  @Test
  void a_share_lies_between_none_and_all_and_a_sum_of_readings_has_no_most() {
    assertThat(
            possible(
                WrittenPanel.criterion(
                    "a",
                    "water-break",
                    "at most 5 %",
                    "critical: yes, judged: share, weight: 1, fade: 1 %")))
        .isEqualTo(new TargetRange(0, 1));
    assertThat(
            possible(
                WrittenPanel.criterion(
                    "a",
                    "tape-used",
                    "at most 5 m",
                    "critical: yes, judged: sum, weight: 1, fade: 1 m")))
        .extracting(TargetRange::hasMost)
        .isEqualTo(false);
  }
}
