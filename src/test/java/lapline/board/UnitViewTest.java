package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.lessons.NextStep;
import lapline.lessons.NextStep.Step;
import lapline.practice.Attempt;
import lapline.practice.ClearPanel;
import lapline.practice.PracticeTask;
import lapline.signoff.SignOff;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a learner is told about a sign-off that is near its end. */
class UnitViewTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final Instant SOON = NOW.plus(Duration.ofDays(24));
  private static final Instant PAST = NOW.minus(Duration.ofDays(14));

  private static UnitView view(Step next, SignOff.State state, Instant expires) {
    return view(next, state, expires, next == Step.DONE);
  }

  private static UnitView view(Step next, SignOff.State state, Instant expires, boolean settled) {
    UUID id = new UUID(0, 1);
    SignOff signOff = new SignOff(id, id, id, "clear", "1", "c", state, id, NOW, expires);
    return new UnitView(
        null,
        new NextStep(next, 1, 5),
        0,
        0,
        true,
        null,
        List.of(),
        null,
        List.of(),
        null,
        signOff,
        signOff.at(NOW),
        settled);
  }

  @Test
  void what_is_next_is_for_the_renewal_of_one_that_ends_soon_or_has_ended() {
    UnitView soon = view(Step.TAKE_PANEL, SignOff.State.GRANTED, SOON);
    assertThat(soon.renewing()).isEqualTo(SOON);
    assertThat(soon.ended()).isFalse();
    UnitView past = view(Step.TAKE_PANEL, SignOff.State.GRANTED, PAST);
    assertThat(past.renewing()).isEqualTo(PAST);
    assertThat(past.ended()).isTrue();
  }

  @Test
  void nothing_is_renewed_of_one_that_is_settled_or_stopped_or_not_there() {
    assertThat(view(Step.DONE, SignOff.State.GRANTED, SOON).renewing()).isNull();
    assertThat(view(Step.TAKE_PANEL, SignOff.State.SUSPENDED, SOON).renewing()).isNull();
    UnitView none = view(Step.TAKE_PANEL, SignOff.State.GRANTED, SOON);
    assertThat(
            new UnitView(
                    null,
                    none.next(),
                    0,
                    0,
                    true,
                    null,
                    List.of(),
                    null,
                    List.of(),
                    null,
                    null,
                    null,
                    false)
                .renewing())
        .isNull();
  }

  @Test
  void a_panel_begun_while_the_signoff_is_settled_is_not_for_its_renewal() {
    assertThat(view(Step.FINISH_ENTRY, SignOff.State.GRANTED, SOON, true).renewing()).isNull();
    assertThat(view(Step.FINISH_ENTRY, SignOff.State.GRANTED, SOON, false).renewing())
        .isEqualTo(SOON);
  }

  private static Attempt panel(String task, int day) {
    UUID id = new UUID(1, day);
    Instant scored = NOW.plus(Duration.ofDays(day));
    Attempt.Outcome outcome = new Attempt.Outcome(scored, 70, false);
    return new Attempt(
        id,
        id,
        id,
        task,
        "v1",
        "clear",
        "clear",
        "code",
        "",
        null,
        UnitSystem.METRIC,
        Attempt.State.SCORED,
        0,
        scored,
        outcome);
  }

  private static UnitView withPanels(Attempt... newestFirst) {
    NextStep next = new NextStep(Step.TAKE_PANEL, 1, 5);
    List<PracticeTask> tasks = List.of(ClearPanel.TASK);
    return new UnitView(
        null, next, 0, 0, true, null, tasks, null, List.of(newestFirst), null, null, null, false);
  }

  @Test
  void the_last_panel_that_counts_for_the_next_one_is_of_the_same_task() {
    String task = ClearPanel.TASK.id();
    Attempt latest = panel(task, 3);
    assertThat(withPanels(panel("clear/other", 4), latest, panel(task, 1)).lastOfNextTask())
        .contains(latest);
    assertThat(withPanels(panel("clear/other", 4)).lastOfNextTask()).isEmpty();
  }
}
