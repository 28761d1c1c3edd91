package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.ClearPanel;
import lapline.practice.FindAttempts;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.Phrase;
import lapline.practice.RememberedAttempts;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** One panel hands its one change on to the next. */
class LastAdviceTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final UUID ID = new UUID(0, 7);

  private static final Person LEARNER =
      new Person(
          ID,
          ID,
          "Ansel",
          "ansel",
          Set.of(Role.APPRENTICE),
          UnitSystem.METRIC,
          ZoneId.of("UTC"),
          true);

  private final Messages messages = new Messages();
  private final RememberedAttempts attempts = new RememberedAttempts();
  private final LastAdvice advice = new LastAdvice(new FindAttempts(attempts), messages);

  private String after(Finding... findings) {
    Attempt.Outcome outcome = new Attempt.Outcome(NOW, 61, false);
    Attempt scored = draft().judged("v1", outcome);
    PanelScore score =
        new PanelScore(61, false, List.of(), List.of(), List.of(findings), null, null, "4");
    attempts.keepJudgement(scored, "key", ClearPanel.TASK, score);
    return advice.of(LEARNER, scored);
  }

  private static Finding finding(String id, Phrase... evidence) {
    return new Finding(
        id,
        0.9,
        Phrase.message("cause." + id),
        List.of(evidence),
        List.of(),
        Phrase.message("cause." + id + ".change"),
        null,
        List.of());
  }

  @Test
  void the_change_of_the_first_cause_is_said_as_it_is_noted_on_the_next_panel() {
    assertThat(after(finding("arcing"), finding("tilt")))
        .isEqualTo(messages.get("cause.arcing.change.noted"));
  }

  @Test
  void what_is_to_be_settled_first_changes_nothing_even_where_a_cause_comes_after_it() {
    Finding undecided = finding("arcing", Phrase.message(Finding.UNDECIDED));
    assertThat(after(undecided, finding("tilt"))).isEmpty();
    assertThat(after(finding("film" + Finding.DOUBT), finding("tilt"))).isEmpty();
  }

  @Test
  void a_panel_without_a_cause_and_a_draft_ask_for_no_change() {
    assertThat(after()).isEmpty();
    RememberedAttempts others = new RememberedAttempts();
    others.add(draft());
    assertThat(new LastAdvice(new FindAttempts(others), messages).of(LEARNER, draft())).isEmpty();
  }

  private static Attempt draft() {
    return new Attempt(
        ID,
        ID,
        ID,
        ClearPanel.TASK.id(),
        "v1",
        "clear",
        "clear",
        "code",
        "",
        null,
        UnitSystem.METRIC,
        Attempt.State.DRAFT,
        0,
        NOW,
        null);
  }
}
