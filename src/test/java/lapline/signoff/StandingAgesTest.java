package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import lapline.practice.Attempt.State;
import org.junit.jupiter.api.Test;

/** What the boards read stays true although nobody does anything: panels grow too old to count. */
class StandingAgesTest {
  private final SignOffShop shop = new SignOffShop();

  @Test
  void nobody_waits_for_an_examiner_on_panels_that_have_grown_too_old() {
    shop.meetsTheRule(shop.learner);
    shop.clock.pass(Period.ofMonths(6).minusDays(1));
    assertThat(shop.refresh()).as("nothing is too old yet").isZero();
    assertThat(shop.learnerWaits()).isTrue();
    shop.clock.pass(Duration.ofDays(1));
    assertThat(shop.refresh()).isOne();
    assertThat(shop.standing().panelsCounting()).isZero();
    assertThat(shop.learnerWaits()).isFalse();
    assertThat(shop.refresh()).as("once is enough").isZero();
  }

  @Test
  void a_panel_that_no_longer_counts_waits_for_no_eye() {
    shop.panel(shop.learner, State.SCORED);
    Instant first = shop.clock.instant();
    shop.clock.pass(Period.ofDays(20));
    shop.panel(shop.learner, State.SCORED);
    shop.advanced(shop.learner);
    assertThat(shop.standing().panelsWaiting()).isEqualTo(2);
    assertThat(shop.standing().waitingSince()).isEqualTo(first);
    shop.clock.pass(Period.ofMonths(6).minusDays(19));
    shop.refresh();
    assertThat(shop.standing().panelsWaiting()).isOne();
    assertThat(shop.standing().waitingSince()).isAfter(first);
  }

  @Test
  void at_the_end_of_a_long_month_it_is_looked_at_again_the_day_after_and_not_without_end() {
    Instant longMonth = Instant.parse("2031-08-31T14:05:00Z");
    shop.clock.pass(Duration.between(shop.clock.instant(), longMonth));
    shop.panel(shop.learner, State.SCORED);
    shop.advanced(shop.learner);
    shop.clock.pass(Period.ofMonths(6));
    assertThat(shop.refresh()).isOne();
    assertThat(shop.standing().panelsCounting()).as("29 February less half a year").isOne();
    assertThat(shop.refresh()).isZero();
    shop.clock.pass(Period.ofDays(2));
    assertThat(shop.refresh()).isOne();
    assertThat(shop.standing().panelsCounting()).isZero();
  }

  /** A file without the skill makes nobody wait, and is not looked at every hour. */
  @Test
  void of_a_skill_that_has_left_the_course_nothing_grows_older() {
    shop.meetsTheRule(shop.learner);
    shop.clock.pass(Period.ofMonths(7));
    assertThat(shop.refreshWithoutTheSkill()).isOne();
    assertThat(shop.standing().panelsCounting()).as("as it was").isEqualTo(3);
    assertThat(shop.standing().panelsWaiting()).isZero();
    assertThat(shop.learnerWaits()).isFalse();
    assertThat(shop.refreshWithoutTheSkill()).isZero();
  }

  @Test
  void whoever_was_signed_off_once_is_no_longer_on_the_way() {
    shop.panel(shop.learner, State.SCORED);
    shop.advanced(shop.learner);
    assertThat(shop.standing().onTheWay()).isTrue();
    shop.meetsTheRule(shop.learner);
    assertThat(shop.standing().onTheWay()).as("ready").isFalse();
    shop.grant(shop.examiner);
    shop.clock.pass(Period.ofYears(2));
    shop.refresh();
    assertThat(shop.standing().onTheWay()).as("long ago").isFalse();
  }
}
