package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.UUID;
import lapline.people.LearnerAdvanced;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import lapline.trade.measure.Verdict;
import org.junit.jupiter.api.Test;

class ScoreAttemptTest {
  private final PracticeShop shop = new PracticeShop();
  private final Attempt draft = shop.draft();

  private ScoreAttempt.Outcome score() {
    return shop.score.run(shop.apprentice, draft.id(), "key");
  }

  private List<String> problems() {
    return ((ScoreAttempt.NotYet) score()).problems().stream().map(FieldProblem::key).toList();
  }

  @Test
  void a_panel_without_what_the_task_needs_is_not_scored() {
    assertThat(problems()).containsExactly("entry.required");
    assertThat(shop.find.attempt(shop.apprentice, draft.id()).isDraft()).isTrue();
  }

  @Test
  void a_wrong_reading_keeps_a_panel_from_being_scored_and_is_told_once() {
    shop.type(draft, "gun-pressure", "much");
    assertThat(problems()).containsExactly("entry.reading.not-a-number");
  }

  @Test
  void the_score_is_kept_with_the_task_as_it_was_applied() {
    shop.type(draft, "gun-pressure", "165 kPa");
    assertThat(score()).isInstanceOf(ScoreAttempt.Scored.class);
    FindAttempts.Judged judged = shop.find.judged(shop.instructor, draft.id()).orElseThrow();
    assertThat(judged.attempt().state()).isEqualTo(Attempt.State.SCORED);
    assertThat(judged.attempt().outcome().scored()).isEqualTo(PracticeShop.NOW);
    assertThat(judged.attempt().taskVersion())
        .isEqualTo(shop.tasks.find(PracticeShop.TASK).orElseThrow().version());
    assertThat(judged.score().results().get(0).verdict()).isEqualTo(Verdict.MET);
    assertThat(judged.task().criteria().get(0).target()).isEqualTo(new TargetRange(150e3, 180e3));
  }

  @Test
  void sent_twice_it_is_scored_once() {
    shop.type(draft, "gun-pressure", "165 kPa");
    PanelScore first = ((ScoreAttempt.Scored) score()).score();
    assertThat(((ScoreAttempt.Scored) score()).score()).isSameAs(first);
  }

  @Test
  void the_workshops_data_sheet_is_what_it_is_held_against() {
    shop.change.run(
        shop.instructor, PracticeShop.TASK, "pressure", "200 to 220", "Sheet C4", "New product");
    shop.type(draft, "gun-pressure", "165 kPa");
    PanelScore score = ((ScoreAttempt.Scored) score()).score();
    assertThat(score.accepted()).isFalse();
    assertThat(score.results().get(0).criterion().source()).isEqualTo("Sheet C4");
  }

  @Test
  void the_card_of_the_gun_in_use_goes_before_the_tasks_own_target() {
    GunCard.Ranges ranges = new GunCard.Ranges("", "200 to 220 kPa", "", "", "");
    assertThat(shop.cards.add(shop.instructor, "Gravity gun", ranges)).isEmpty();
    UUID card = shop.cards.inUse(shop.instructor).get(0).id();
    shop.choose.run(shop.apprentice, draft.id(), card, "");
    shop.type(draft, "gun-pressure", "165 kPa");
    PanelScore score = ((ScoreAttempt.Scored) score()).score();
    assertThat(score.results().get(0).criterion().source()).isEqualTo("Gravity gun");
  }

  @Test
  void a_figure_is_judged_in_the_units_it_was_written_in() {
    shop.type(draft, "gun-pressure", "165");
    Person changed = PracticeShop.inUnits(shop.apprentice, UnitSystem.US);
    shop.score.run(changed, draft.id(), "key");
    PanelScore score = shop.find.judged(shop.apprentice, draft.id()).orElseThrow().score();
    assertThat(score.results().get(0).verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void who_waits_for_a_learner_to_advance_is_told_once() {
    shop.type(draft, "gun-pressure", "165 kPa");
    score();
    score();
    assertThat(shop.told)
        .containsExactly(
            new LearnerAdvanced(shop.apprentice.id(), shop.apprentice.workshop(), draft.unit()));
  }

  @Test
  void nobody_else_has_it_scored() {
    assertThatThrownBy(() -> shop.score.run(shop.other, draft.id(), "k"))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.score.run(shop.stranger, draft.id(), "k"))
        .isInstanceOf(NotFoundException.class);
    shop.type(draft, "gun-pressure", "165 kPa");
    score();
    assertThatThrownBy(() -> shop.score.run(shop.other, draft.id(), "key"))
        .as("nor is told what came of it")
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void a_scored_panel_can_be_measured_again_until_the_instructor_has_decided() {
    MeasureAgain again = new MeasureAgain(shop.attempts, shop.told::add);
    shop.type(draft, "gun-pressure", "165 kPa");
    score();
    int told = shop.told.size();
    assertThat(again.run(shop.apprentice, draft.id()).isDraft()).isTrue();
    assertThat(shop.told).as("what is no longer judged no longer counts").hasSize(told + 1);
    assertThat(shop.find.judged(shop.apprentice, draft.id())).isEmpty();
    score();
    shop.attempts.changeState(draft.id(), Attempt.State.ACCEPTED);
    assertThatThrownBy(() -> again.run(shop.apprentice, draft.id()))
        .isInstanceOf(NotAllowedException.class)
        .hasMessage("entry.decided");
  }
}
