package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt.State;
import lapline.signoff.Step.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An examiner signs somebody off, or says not yet, or is told why they cannot. */
class DecideSkillTest {
  private final SignOffShop shop = new SignOffShop();

  @BeforeEach
  void arrange() {
    shop.meetsTheRule(shop.learner);
  }

  @Test
  void a_learner_who_meets_the_rule_is_signed_off_for_as_long_as_the_skill_says() {
    assertThat(shop.grant(shop.examiner)).isEmpty();
    SignOff given = shop.signOff();
    assertThat(given.granted()).isEqualTo(shop.clock.instant());
    assertThat(given.expires()).isEqualTo("2032-03-04T14:08:00Z");
    assertThat(shop.steps()).extracting(Step::kind).containsExactly(Kind.GRANTED);
    assertThat(shop.steps().get(0).signOff()).isEqualTo(given.id());
    assertThat(shop.steps().get(0).evidence()).contains("clear/two-coats");
    assertThat(shop.learnerWaits()).isFalse();
  }

  @Test
  void an_examiner_who_graded_a_panel_of_the_evidence_is_refused_and_another_is_not() {
    Person both = shop.person(shop.workshop, Role.INSTRUCTOR, Role.EXAMINER);
    shop.threePanels(shop.learner, both);
    assertThat(shop.grant(both)).containsExactly("signoff.refused.graded");
    assertThat(shop.notYet(both)).containsExactly("signoff.refused.graded");
    assertThat(shop.steps()).isEmpty();
    assertThat(shop.grant(shop.examiner)).isEmpty();
  }

  @Test
  void nobody_decides_about_themselves() {
    Person both = shop.person(shop.workshop, Role.APPRENTICE, Role.EXAMINER);
    shop.meetsTheRule(both);
    assertThat(shop.decide.run(both, both.id(), SignOffShop.SKILL, true, SignOffShop.WHY))
        .containsExactly("signoff.refused.self");
    assertThat(shop.signOffs.latest(both.id(), SignOffShop.SKILL)).isEmpty();
  }

  @Test
  void incomplete_evidence_is_refused_but_not_yet_may_be_said_of_it() {
    shop.panel(shop.learner, State.RETURNED);
    shop.panel(shop.learner, State.RETURNED);
    assertThat(shop.grant(shop.examiner)).containsExactly("signoff.refused.incomplete");
    assertThat(shop.steps()).isEmpty();
    assertThat(shop.notYet(shop.examiner)).isEmpty();
    assertThat(shop.steps()).extracting(Step::kind).containsExactly(Kind.NOT_YET);
  }

  @Test
  void a_sign_off_that_is_good_is_not_decided_about_again() {
    shop.grant(shop.examiner);
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.decide.isOpen(shop.evidence())).isFalse();
    assertThat(shop.grant(shop.examiner)).containsExactly("signoff.refused.good-already");
    assertThat(shop.notYet(shop.examiner)).containsExactly("signoff.refused.good-already");
    assertThat(shop.steps()).hasSize(1);
  }

  @Test
  void a_suspended_sign_off_is_lifted_or_withdrawn_before_a_new_decision() {
    shop.grant(shop.examiner);
    shop.change(shop.owner, Kind.SUSPENDED);
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.learnerWaits()).isFalse();
    assertThat(shop.decide.isOpen(shop.evidence())).isFalse();
    assertThat(shop.grant(shop.examiner)).containsExactly("signoff.refused.suspended");
  }

  @Test
  void not_yet_takes_the_learner_off_the_list_until_they_have_advanced() {
    assertThat(shop.learnerWaits()).isTrue();
    assertThat(shop.notYet(shop.examiner)).isEmpty();
    assertThat(shop.learnerWaits()).isFalse();
    shop.clock.pass(Duration.ofDays(1));
    assertThat(shop.evidence().isComplete()).as("looked at again").isTrue();
    assertThat(shop.learnerWaits()).as("old evidence only looked at").isFalse();
    shop.panel(shop.learner, State.SCORED);
    shop.advanced(shop.learner);
    assertThat(shop.learnerWaits()).as("a new panel").isTrue();
  }

  @Test
  void who_waits_keeps_their_place_when_they_go_on_working() {
    var since = shop.signOffs.ready(shop.workshop, 0, 1).get(0).readySince();
    shop.clock.pass(Duration.ofDays(2));
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.signOffs.ready(shop.workshop, 0, 1).get(0).readySince()).isEqualTo(since);
  }

  @Test
  void a_reason_has_to_be_written_and_fits_into_the_record() {
    assertThat(because(" \n ")).containsExactly("signoff.refused.reason");
    assertThat(because("x".repeat(DecideSkill.LONGEST_REASON + 1)))
        .containsExactly("signoff.refused.reason-long");
    assertThat(because("x".repeat(DecideSkill.LONGEST_REASON))).isEmpty();
  }

  @Test
  void who_decides_without_having_seen_what_a_colleague_decided_is_told() {
    assertThat(decide(false, null)).isEmpty();
    assertThat(decide(true, null)).containsExactly(DecideSkill.DECIDED_SINCE);
    assertThat(shop.steps()).hasSize(1);
    assertThat(decide(true, shop.steps().get(0).id())).as("now they have").isEmpty();
  }

  /** What a colleague decided is nobody's business who may not decide. */
  @Test
  void who_may_not_decide_is_not_told_whether_somebody_has() {
    decide(false, null);
    assertThatThrownBy(() -> decide(shop.owner, true, null))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> decide(shop.neighbour, true, null))
        .isInstanceOf(NotFoundException.class);
  }

  private List<String> decide(boolean grant, UUID seen) {
    return decide(shop.examiner, grant, seen);
  }

  private List<String> decide(Person by, boolean grant, UUID seen) {
    return shop.decide.run(by, shop.learner.id(), SignOffShop.SKILL, grant, SignOffShop.WHY, seen);
  }

  @Test
  void a_step_says_who_decided_when_where_and_why() {
    because("  Laid three doors.\n");
    Step step = shop.steps().get(0);
    assertThat(step.reason()).isEqualTo("Laid three doors.");
    assertThat(step.by()).isEqualTo(shop.examiner.id());
    assertThat(step.workshop()).isEqualTo(shop.workshop);
    assertThat(step.at()).isEqualTo(shop.clock.instant());
    assertThat(shop.signOff().grantedBy()).isEqualTo(shop.examiner.id());
    assertThat(shop.signOff().ruleVersion()).isEqualTo("1");
  }

  @Test
  void before_the_first_decision_there_is_one_to_be_taken() {
    assertThat(shop.decide.isOpen(shop.evidence())).isTrue();
    shop.grant(shop.examiner);
    assertThat(shop.decide.isOpen(shop.evidence())).isFalse();
    shop.change(shop.examiner, Kind.WITHDRAWN);
    assertThat(shop.decide.isOpen(shop.evidence())).as("begin anew").isTrue();
  }

  @Test
  void evidence_is_seen_by_its_learner_and_those_who_teach_and_judge_and_by_no_other_learner() {
    Person other = shop.person(shop.workshop, Role.APPRENTICE);
    for (Person by : List.of(shop.learner, shop.instructor, shop.examiner, shop.owner)) {
      assertThat(seenBy(by).isComplete()).isTrue();
    }
    assertThatThrownBy(() -> seenBy(other)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> seenBy(shop.neighbour)).isInstanceOf(NotFoundException.class);
  }

  private Evidence seenBy(Person by) {
    return shop.decide.evidence(by, shop.learner.id(), SignOffShop.SKILL);
  }

  private List<String> because(String reason) {
    return shop.decide.run(shop.examiner, shop.learner.id(), SignOffShop.SKILL, true, reason);
  }

  @Test
  void only_an_examiner_of_the_same_workshop_decides() {
    assertThatThrownBy(() -> shop.grant(shop.owner)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.grant(shop.instructor)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.grant(shop.neighbour)).isInstanceOf(NotFoundException.class);
    assertThat(shop.steps()).isEmpty();
  }
}
