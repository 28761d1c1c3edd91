package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.practice.Attempt;
import lapline.practice.ClearPanel;
import lapline.practice.PanelScore;
import lapline.practice.RememberedAttempts;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A panel that is not accepted says what keeps it from that, and only that. */
class NotYetWordsTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");

  private final RememberedAttempts attempts = new RememberedAttempts();
  private final NotYetWords words = new NotYetWords(attempts, WrittenPanel.COURSE, new Messages());

  @Test
  void a_good_panel_is_accepted() {
    assertThat(said(ClearPanel.good())).isEqualTo("accepted");
  }

  @Test
  void what_was_missed_is_named_by_the_tasks_own_words() {
    assertThat(said(ClearPanel.good().film(40, 1)))
        .startsWith("not yet: ")
        .contains("Film of clear, mean of the panel out of target")
        .doesNotContain("Share of the panel");
  }

  @Test
  void a_panel_nothing_is_known_of_is_not_yet() {
    assertThat(words.of(List.of()).of(UUID.randomUUID(), false)).isEqualTo("not yet");
  }

  private String said(ClearPanel panel) {
    PanelScore score = panel.score();
    UUID any = UUID.randomUUID();
    Attempt draft =
        new Attempt(
            any,
            any,
            any,
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
    attempts.add(draft);
    Attempt.Outcome outcome = new Attempt.Outcome(NOW, score.practiceScore(), score.accepted());
    attempts.keepJudgement(draft.judged("v1", outcome), "key", ClearPanel.TASK, score);
    return words.of(List.of(any)).of(any, score.accepted());
  }
}
