package lapline.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.lessons.NextStep.Step;
import org.junit.jupiter.api.Test;

class NextStepTest {

  private static UnitFacts facts(boolean read, int right, boolean exam, int counting, int waiting) {
    return new UnitFacts(read, 5, right, exam, ExamFacts.NONE, false, 3, counting, waiting, false);
  }

  @Test
  void the_lesson_comes_first() {
    assertThat(NextStep.of(facts(false, 0, false, 0, 0)).step()).isEqualTo(Step.READ_LESSON);
  }

  @Test
  void then_its_checks_with_how_many_are_right() {
    assertThat(NextStep.of(facts(true, 2, false, 0, 0)))
        .isEqualTo(new NextStep(Step.ANSWER_CHECKS, 2, 5));
  }

  @Test
  void then_the_exam_since_the_cautions_are_in_it() {
    assertThat(NextStep.of(facts(true, 5, false, 0, 0)).step()).isEqualTo(Step.SIT_EXAM);
  }

  private static UnitFacts notPassed(ExamFacts exam, int counting) {
    return new UnitFacts(true, 5, 5, false, exam, false, 3, counting, 0, false);
  }

  @Test
  void a_paper_half_done_is_gone_on_with() {
    assertThat(NextStep.of(notPassed(new ExamFacts(2, 8, false), 0)))
        .isEqualTo(new NextStep(Step.FINISH_EXAM, 2, 8));
  }

  @Test
  void while_an_exam_rests_panels_are_taken_and_nobody_is_sent_to_a_closed_door() {
    ExamFacts rests = new ExamFacts(0, 0, true);
    assertThat(NextStep.of(notPassed(rests, 1))).isEqualTo(new NextStep(Step.TAKE_PANEL, 1, 3));
    NextStep all = NextStep.of(notPassed(rests, 3));
    assertThat(all.step()).isEqualTo(Step.REST_BEFORE_EXAM);
    assertThat(all.step().yours()).isFalse();
  }

  @Test
  void an_entry_that_was_begun_is_finished_before_the_exam() {
    UnitFacts begun = new UnitFacts(true, 5, 5, false, ExamFacts.NONE, true, 3, 0, 0, false);
    assertThat(NextStep.of(begun).step()).isEqualTo(Step.FINISH_ENTRY);
  }

  @Test
  void an_entry_that_was_begun_comes_first_whatever_the_units_standing() {
    UnitFacts unread = new UnitFacts(false, 5, 0, false, ExamFacts.NONE, true, 3, 0, 0, false);
    assertThat(NextStep.of(unread).step()).isEqualTo(Step.FINISH_ENTRY);
    UnitFacts waits = new UnitFacts(true, 5, 5, true, ExamFacts.NONE, true, 3, 3, 0, false);
    assertThat(NextStep.of(waits).step()).isEqualTo(Step.FINISH_ENTRY);
    UnitFacts signed = new UnitFacts(true, 5, 5, true, ExamFacts.NONE, true, 3, 3, 0, true);
    assertThat(NextStep.of(signed).step()).isEqualTo(Step.FINISH_ENTRY);
    assertThat(NextStep.of(signed).step().yours()).isTrue();
  }

  @Test
  void then_panels_until_enough_would_count() {
    assertThat(NextStep.of(facts(true, 5, true, 1, 1)))
        .isEqualTo(new NextStep(Step.TAKE_PANEL, 1, 3));
  }

  @Test
  void when_enough_lie_with_the_instructor_the_learner_waits() {
    NextStep next = NextStep.of(facts(true, 5, true, 1, 2));
    assertThat(next.step()).isEqualTo(Step.WAIT_FOR_INSTRUCTOR);
    assertThat(next.step().yours()).isFalse();
  }

  @Test
  void when_all_evidence_is_there_the_examiner_decides() {
    assertThat(NextStep.of(facts(true, 5, true, 3, 0)).step()).isEqualTo(Step.WAIT_FOR_EXAMINER);
  }

  @Test
  void a_signed_off_unit_asks_for_nothing_even_if_its_lesson_has_grown() {
    UnitFacts signed = new UnitFacts(true, 6, 5, true, ExamFacts.NONE, false, 3, 3, 0, true);
    assertThat(NextStep.of(signed).step()).isEqualTo(Step.DONE);
  }
}
