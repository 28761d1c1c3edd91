package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.practice.Attempt.State;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A sign-off that runs out is renewed on panels of the last months, and not before its time. */
class StartRenewalTest {
  private static final Duration TO_THE_LAST_SIXTY_DAYS =
      Duration.ofDays(366).minus(SignOff.RENEWABLE_BEFORE);

  private final SignOffShop shop = new SignOffShop();

  @BeforeEach
  void arrange() {
    shop.meetsTheRule(shop.learner);
    shop.grant(shop.examiner);
  }

  @Test
  void panels_older_than_the_rule_says_count_no_more_to_the_minute() {
    shop.clock.pass(Period.ofMonths(6).minusDays(1));
    assertThat(shop.evidence().counting()).isEqualTo(3);
    shop.clock.pass(Duration.ofDays(1).minusMinutes(2));
    assertThat(shop.evidence().counting()).as("the oldest is six months old").isEqualTo(2);
    shop.clock.pass(Duration.ofMinutes(2));
    assertThat(shop.evidence().counting()).isZero();
  }

  @Test
  void in_the_last_sixty_days_who_has_new_panels_waits_for_a_decision_again() {
    shop.clock.pass(TO_THE_LAST_SIXTY_DAYS.minusDays(1));
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(renewedBy(shop.owner).isComplete()).isTrue();
    assertThat(shop.learnerWaits()).as("too early").isFalse();
    shop.clock.pass(Duration.ofDays(1));
    assertThat(shop.learnerWaits()).as("time alone tells nobody").isFalse();
    renewedBy(shop.owner);
    assertThat(shop.learnerWaits()).isTrue();
    assertThat(shop.decide.isOpen(shop.evidence())).isTrue();
    SignOff before = shop.signOff();
    assertThat(shop.grant(shop.examiner)).isEmpty();
    assertThat(shop.signOff().expires()).isAfter(before.expires());
    assertThat(shop.learnerWaits()).isFalse();
  }

  /** Common practice, no source. */
  @Test
  void an_early_renewal_runs_from_its_decision_and_the_one_before_ends_as_it_would_have() {
    SignOff before = shop.signOff();
    shop.clock.pass(TO_THE_LAST_SIXTY_DAYS);
    shop.threePanels(shop.learner, shop.instructor);
    Instant told = shop.decide.expiryIfGivenNow(shop.examiner, SignOffShop.CLEAR);
    assertThat(shop.grant(shop.examiner)).isEmpty();
    SignOff after = shop.signOff();
    assertThat(after.expires())
        .isEqualTo(told)
        .isEqualTo(
            after.granted().atZone(shop.examiner.zone()).plus(Period.ofMonths(12)).toInstant());
    assertThat(shop.signOffs.signOff(before.id()).orElseThrow()).isEqualTo(before);
  }

  @Test
  void the_panels_of_the_first_time_are_too_old_to_renew_on() {
    shop.clock.pass(TO_THE_LAST_SIXTY_DAYS);
    assertThat(shop.grant(shop.examiner)).containsExactly("signoff.refused.incomplete");
  }

  @Test
  void who_lacks_a_panel_is_put_before_nobody_and_the_one_who_asked_sees_what_is_missing() {
    shop.clock.pass(TO_THE_LAST_SIXTY_DAYS);
    shop.panel(shop.learner, State.SCORED);
    shop.panel(shop.learner, State.ACCEPTED);
    assertThat(renewedBy(shop.owner).counting()).isEqualTo(2);
    assertThat(shop.learnerWaits()).isFalse();
    shop.panel(shop.learner, State.SCORED);
    renewedBy(shop.owner);
    assertThat(shop.learnerWaits()).isTrue();
  }

  @Test
  void a_sign_off_that_has_run_out_can_still_be_renewed() {
    shop.clock.pass(Period.ofYears(1).plusDays(30));
    shop.threePanels(shop.learner, shop.instructor);
    renewedBy(shop.owner);
    assertThat(shop.learnerWaits()).isTrue();
  }

  @Test
  void neither_the_learner_nor_another_workshop_starts_it() {
    assertThatThrownBy(() -> renewedBy(shop.learner)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> renewedBy(shop.instructor)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> renewedBy(shop.neighbour)).isInstanceOf(NotFoundException.class);
  }

  private Evidence renewedBy(Person who) {
    return shop.renew.run(who, shop.learner.id(), SignOffShop.SKILL);
  }
}
