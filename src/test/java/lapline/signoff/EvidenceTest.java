package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.content.ContentFiles;
import lapline.signoff.Evidence.Panel;
import org.junit.jupiter.api.Test;

/** What counts towards a skill, and what a sign-off is worth at a moment. */
class EvidenceTest {
  private static final Instant NOW = Instant.parse("2026-03-01T12:00:00Z");
  private static final Skill SKILL =
      new Skill(
          "clear",
          "Clear",
          "clear",
          "Lay clear",
          new Skill.Rule("1", true, true, 5, 6, List.of("clear/*"), Period.ofMonths(6), 2),
          Period.ofMonths(12),
          "because");

  @Test
  void five_good_panels_of_six_with_two_seen_at_the_bench_are_enough() {
    assertThat(evidence(true, true, panels(5, 2, 0)).isComplete()).isTrue();
  }

  @Test
  void without_the_lesson_or_the_exam_or_one_panel_or_the_bench_it_is_not_enough() {
    assertThat(evidence(false, true, panels(5, 2, 0)).isComplete()).isFalse();
    assertThat(evidence(true, false, panels(5, 2, 0)).isComplete()).isFalse();
    assertThat(evidence(true, true, panels(4, 2, 0)).isComplete()).isFalse();
    assertThat(evidence(true, true, panels(5, 1, 0)).isComplete()).isFalse();
  }

  @Test
  void what_there_is_more_of_than_asked_for_is_not_said_as_a_part_of_it() {
    assertThat(new Evidence.Line("k", 4, 2, false, null).words()).isEqualTo("signoff.line.more");
    assertThat(new Evidence.Line("k", 2, 2, false, null).words()).isEqualTo("signoff.line.count");
    assertThat(new Evidence.Line("k", 1, 2, false, null).words()).isEqualTo("signoff.line.count");
  }

  @Test
  void one_that_does_not_count_stays_in_the_way_until_it_drops_out() {
    Panel good = panel(true, false, false);
    Panel bad = panel(false, false, false);
    // five of the last six: the two bad ones, third and fourth from the end, have to go
    List<Panel> four = List.of(good, good, bad, bad, good, good);
    assertThat(evidence(true, true, four).counting()).isEqualTo(4);
    assertThat(evidence(true, true, four).fewestMore()).isEqualTo(3);
    assertThat(evidence(true, true, List.of(good, bad, good, good)).fewestMore()).isEqualTo(2);
    assertThat(evidence(true, true, List.of()).fewestMore()).isEqualTo(5);
    assertThat(evidence(true, true, panels(5, 2, 1)).fewestMore()).isZero();
  }

  @Test
  void a_panel_that_was_sent_back_does_not_count_however_good_its_numbers() {
    assertThat(evidence(true, true, panels(5, 2, 1)).counting()).isEqualTo(5);
    assertThat(panel(true, false, true).counts()).isFalse();
  }

  @Test
  void what_the_rule_does_not_ask_for_is_not_missed() {
    Skill.Rule benchOnly =
        new Skill.Rule("1", false, false, 5, 6, List.of("clear/*"), Period.ofMonths(6), 2);
    Skill skill = new Skill("clear", "Clear", "clear", "Lay", benchOnly, Period.ofMonths(12), "b");
    Evidence evidence =
        new Evidence(UUID.randomUUID(), skill, false, false, panels(5, 2, 0), 5, null);
    assertThat(evidence.isComplete()).isTrue();
    assertThat(evidence.lines())
        .extracting(Evidence.Line::key)
        .containsExactly("signoff.evidence.panels", "signoff.evidence.graded");
  }

  @Test
  void a_line_says_when_a_thing_was_done_where_it_was_done_and_that_is_known() {
    Evidence.Learnt learnt = new Evidence.Learnt(NOW, NOW.plusSeconds(60), null, null);
    Evidence done = new Evidence(UUID.randomUUID(), SKILL, true, true, List.of(), 0, learnt);
    assertThat(done.lines().get(0).on()).isEqualTo(NOW);
    assertThat(done.lines().get(1).on()).isEqualTo(NOW.plusSeconds(60));
    assertThat(done.lines().get(0).words()).isEqualTo("signoff.line.done-on");
    Evidence half = new Evidence(UUID.randomUUID(), SKILL, false, true, List.of(), 0, learnt);
    assertThat(half.lines().get(0).on()).as("read and changed since").isNull();
    assertThat(half.lines().get(0).words()).isEqualTo("signoff.line.not-done");
    assertThat(evidence(true, true, List.of()).lines().get(0).words())
        .isEqualTo("signoff.line.done");
  }

  @Test
  void an_eye_is_waited_for_until_as_many_are_accepted_as_the_rule_asks_for() {
    assertThat(evidence(true, true, panels(4, 1, 1)).waiting()).hasSize(3);
    assertThat(evidence(true, true, panels(4, 2, 1)).waiting()).isEmpty();
  }

  @Test
  void anything_done_begins_the_way_and_being_complete_or_signed_off_ends_it() {
    assertThat(standing(evidence(false, false, List.of()), false, null).onTheWay()).isFalse();
    assertThat(standing(evidence(true, false, List.of()), false, null).onTheWay()).isTrue();
    assertThat(standing(evidence(false, true, List.of()), false, null).onTheWay()).isTrue();
    assertThat(standing(evidence(false, false, panels(1, 0, 0)), false, null).onTheWay()).isTrue();
    assertThat(standing(evidence(true, true, List.of()), true, null).onTheWay()).isFalse();
    assertThat(standing(evidence(true, true, List.of()), false, NOW).onTheWay()).isFalse();
  }

  private static Standing standing(Evidence evidence, boolean wasSignedOff, Instant readySince) {
    return Standing.of(evidence, UUID.randomUUID(), wasSignedOff, readySince, NOW);
  }

  @Test
  void a_rule_names_its_one_task_only_where_it_is_one() {
    assertThat(ruleOf("clear/two-coats").onlyTask()).contains("clear/two-coats");
    assertThat(ruleOf("clear/*").onlyTask()).isEmpty();
    assertThat(ruleOf("clear/two-coats", "clear/door").onlyTask()).isEmpty();
    assertThat(ruleOf("clear/two-coats", "clear/door").covers("clear/door")).isTrue();
    assertThat(ruleOf("clear/two-coats").covers("clear/two-coats-more")).isFalse();
  }

  private static Skill.Rule ruleOf(String... tasks) {
    return new Skill.Rule("1", true, true, 5, 6, List.of(tasks), Period.ofMonths(6), 2);
  }

  @Test
  void a_rule_covers_its_own_unit_only() {
    assertThat(SKILL.rule().covers("clear/two-coats")).isTrue();
    assertThat(SKILL.rule().covers("clearing/two-coats")).isFalse();
  }

  @Test
  void a_sign_off_is_good_until_the_moment_it_ends_and_not_while_it_is_suspended() {
    SignOff granted = signOff(SignOff.State.GRANTED);
    assertThat(granted.at(NOW.minusSeconds(1))).isEqualTo(SignOff.Standing.GOOD);
    assertThat(granted.at(NOW)).isEqualTo(SignOff.Standing.EXPIRED);
    assertThat(signOff(SignOff.State.SUSPENDED).at(NOW.minusSeconds(1)))
        .isEqualTo(SignOff.Standing.SUSPENDED);
    assertThat(signOff(SignOff.State.WITHDRAWN).at(NOW)).isEqualTo(SignOff.Standing.WITHDRAWN);
  }

  @Test
  void a_sign_off_may_be_renewed_in_its_last_sixty_days_and_not_before() {
    SignOff granted = signOff(SignOff.State.GRANTED);
    assertThat(granted.settledAt(NOW.minus(SignOff.RENEWABLE_BEFORE).minusSeconds(1))).isTrue();
    assertThat(granted.settledAt(NOW.minus(SignOff.RENEWABLE_BEFORE))).isFalse();
  }

  @Test
  void the_skills_of_the_course_read_without_a_problem() {
    Skills skills =
        new SkillsReader(Set.of("preparing", "masking", "coverage", "clear"))
            .read(ContentFiles.fromClasspath());
    assertThat(skills.problems()).isEmpty();
    assertThat(skills.all())
        .extracting(Skill::id)
        .containsExactly("preparing", "masking", "coverage", "clear");
  }

  @Test
  void a_skill_of_a_unit_that_is_not_there_is_told() {
    assertThat(new SkillsReader(Set.of("preparing")).read(ContentFiles.fromClasspath()).problems())
        .isNotEmpty();
  }

  private static Evidence evidence(boolean lesson, boolean exam, List<Panel> panels) {
    return new Evidence(UUID.randomUUID(), SKILL, lesson, exam, panels, panels.size(), null);
  }

  private static List<Panel> panels(int good, int atBench, int returned) {
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < good; i++) {
      panels.add(panel(true, i < atBench, false));
    }
    for (int i = 0; i < returned; i++) {
      panels.add(panel(true, false, true));
    }
    return panels;
  }

  private static Panel panel(boolean byNumbers, boolean atBench, boolean returned) {
    return new Panel(UUID.randomUUID(), "clear/two-coats", NOW, 90, byNumbers, atBench, returned);
  }

  private static SignOff signOff(SignOff.State state) {
    UUID any = UUID.randomUUID();
    return new SignOff(
        any, any, any, "clear", "1", "code", state, any, NOW.minusSeconds(1000), NOW);
  }
}
