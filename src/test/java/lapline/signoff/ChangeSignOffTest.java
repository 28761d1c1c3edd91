package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Period;
import java.util.Optional;
import lapline.content.Json;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt.State;
import lapline.signoff.Step.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A sign-off is stopped, goes on, or ends for good; each with a reason, by who may. */
class ChangeSignOffTest {
  private final SignOffShop shop = new SignOffShop();

  @BeforeEach
  void arrange() {
    shop.meetsTheRule(shop.learner);
    shop.grant(shop.examiner);
  }

  @Test
  void a_sign_off_and_its_evidence_stay_when_the_paper_it_rests_on_is_marked_anew_and_falls() {
    shop.paperFalls(shop.learner);
    assertThat(shop.evidence().isComplete()).as("what would be decided on now").isFalse();
    SignOff given = shop.signOffs.latest(shop.learner.id(), SignOffShop.SKILL).orElseThrow();
    assertThat(given.at(shop.clock.instant())).isEqualTo(SignOff.Standing.GOOD);
    Evidence kept = Json.read(shop.steps().get(0).evidence(), Evidence.class);
    assertThat(kept.isComplete()).as("what was decided on then").isTrue();
  }

  @Test
  void it_is_suspended_resumed_and_withdrawn_and_every_step_stays() {
    assertThat(shop.change(shop.examiner, Kind.SUSPENDED)).isEmpty();
    assertThat(shop.signOff().state()).isEqualTo(SignOff.State.SUSPENDED);
    assertThat(shop.change(shop.examiner, Kind.RESUMED)).isEmpty();
    assertThat(shop.signOff().state()).isEqualTo(SignOff.State.GRANTED);
    assertThat(shop.change(shop.examiner, Kind.WITHDRAWN)).isEmpty();
    assertThat(shop.signOff().state()).isEqualTo(SignOff.State.WITHDRAWN);
    assertThat(shop.steps())
        .extracting(Step::kind)
        .containsExactly(Kind.GRANTED, Kind.SUSPENDED, Kind.RESUMED, Kind.WITHDRAWN);
  }

  @Test
  void a_step_that_does_not_follow_from_where_it_stands_is_refused() {
    Optional<String> refused = Optional.of("signoff.refused.state");
    assertThat(shop.change(shop.examiner, Kind.RESUMED)).isEqualTo(refused);
    assertThat(shop.change(shop.examiner, Kind.GRANTED)).isEqualTo(refused);
    shop.change(shop.examiner, Kind.SUSPENDED);
    assertThat(shop.change(shop.examiner, Kind.SUSPENDED)).isEqualTo(refused);
    shop.change(shop.examiner, Kind.WITHDRAWN);
    for (Kind kind : Kind.values()) {
      assertThat(shop.change(shop.examiner, kind)).as("%s", kind).isEqualTo(refused);
    }
    assertThat(shop.steps()).hasSize(3);
  }

  @Test
  void the_owner_stops_work_at_once_but_only_an_examiner_lets_it_go_on_or_ends_it() {
    assertThatThrownBy(() -> shop.change(shop.instructor, Kind.SUSPENDED))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.change(shop.owner, Kind.WITHDRAWN))
        .isInstanceOf(NotAllowedException.class);
    assertThat(shop.change(shop.owner, Kind.SUSPENDED)).isEmpty();
    assertThatThrownBy(() -> shop.change(shop.owner, Kind.RESUMED))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.change(shop.neighbour, Kind.RESUMED))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void nobody_changes_their_own_sign_off() {
    Person both = shop.person(shop.workshop, Role.APPRENTICE, Role.EXAMINER);
    shop.meetsTheRule(both);
    shop.decide.run(shop.examiner, both.id(), SignOffShop.SKILL, true, SignOffShop.WHY);
    SignOff own = shop.signOffs.latest(both.id(), SignOffShop.SKILL).orElseThrow();
    assertThat(shop.change.run(both, own.id(), Kind.SUSPENDED, SignOffShop.WHY))
        .contains("signoff.refused.self");
  }

  @Test
  void a_reason_has_to_be_written_and_fits_into_the_record() {
    assertThat(because(" \t ")).contains("signoff.refused.reason");
    assertThat(because("x".repeat(DecideSkill.LONGEST_REASON + 1)))
        .contains("signoff.refused.reason-long");
    assertThat(shop.signOff().state()).isEqualTo(SignOff.State.GRANTED);
    assertThat(because("x".repeat(DecideSkill.LONGEST_REASON))).isEmpty();
  }

  private Optional<String> because(String reason) {
    return shop.change.run(shop.examiner, shop.signOff().id(), Kind.SUSPENDED, reason);
  }

  @Test
  void after_a_withdrawal_no_earlier_panel_counts_and_new_ones_do() {
    shop.clock.pass(Duration.ofDays(3));
    shop.change(shop.examiner, Kind.WITHDRAWN);
    assertThat(shop.evidence().counting()).isZero();
    assertThat(shop.grant(shop.examiner)).containsExactly("signoff.refused.incomplete");
    shop.panel(shop.learner, State.SCORED);
    assertThat(shop.evidence().counting()).isEqualTo(1);
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.learnerWaits()).isTrue();
    assertThat(shop.grant(shop.examiner)).isEmpty();
  }

  /** Boards read the standing; nobody has to look at the evidence first. */
  @Test
  void a_withdrawal_shows_on_the_boards_at_once() {
    assertThat(shop.standing().panelsCounting()).isEqualTo(3);
    shop.clock.pass(Duration.ofDays(3));
    shop.change(shop.examiner, Kind.WITHDRAWN);
    assertThat(shop.standing().panelsCounting()).isZero();
  }

  @Test
  void a_withdrawal_of_long_ago_makes_no_old_panel_count_again() {
    shop.clock.pass(Duration.ofDays(3));
    shop.change(shop.examiner, Kind.WITHDRAWN);
    shop.threePanels(shop.learner, shop.instructor);
    shop.clock.pass(Period.ofMonths(7));
    assertThat(shop.evidence().counting()).isZero();
  }

  @Test
  void a_step_says_who_took_it_when_and_why() {
    shop.clock.pass(Duration.ofDays(3));
    because("  Too thin on two doors. ");
    Step step = shop.steps().get(1);
    assertThat(step.reason()).isEqualTo("Too thin on two doors.");
    assertThat(step.by()).isEqualTo(shop.examiner.id());
    assertThat(step.at()).isEqualTo(shop.clock.instant());
    assertThat(step.signOff()).isEqualTo(shop.signOff().id());
  }

  @Test
  void a_suspension_that_was_lifted_costs_no_panel() {
    shop.change(shop.examiner, Kind.SUSPENDED);
    shop.change(shop.examiner, Kind.RESUMED);
    assertThat(shop.evidence().counting()).isEqualTo(3);
  }
}
