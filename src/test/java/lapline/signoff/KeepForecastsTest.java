package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import lapline.judgement.progress.PanelsNeeded;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Role;
import lapline.signoff.SkillForecast.State;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A forecast after each panel, and what comes of it; the rule asks for 3 of the last 4. */
class KeepForecastsTest {
  private final ForecastShop shop = new ForecastShop();

  KeepForecastsTest() throws Exception {}

  @AfterEach
  void close() {
    shop.close();
  }

  private List<SkillForecast> open() {
    return shop.records.open(ForecastShop.LEARNER, "clear");
  }

  @Test
  void from_the_third_panel_on_there_is_one_after_each_and_the_latest_is_in_force()
      throws Exception {
    shop.learns("-+");
    assertThat(shop.inForce()).isEmpty();
    UUID third = shop.learns("-");
    assertThat(shop.inForce().get("clear").attempt()).isEqualTo(third);
    UUID fourth = shop.learns("-");
    SkillForecast told = shop.inForce().get("clear");
    assertThat(told.attempt()).isEqualTo(fourth);
    assertThat(told.tried()).isEqualTo(4);
    assertThat(told.panels().least()).as("-+-- and three more").isGreaterThanOrEqualTo(3);
    assertThat(open()).extracting(SkillForecast::tried).containsExactly(3, 4);
  }

  @Test
  void once_the_rule_is_met_each_is_held_against_the_panels_it_took() throws Exception {
    shop.learns("+-+-");
    assertThat(shop.inForce().get("clear").panels().least()).isEqualTo(2);
    shop.learns("++");
    assertThat(shop.inForce()).isEmpty();
    ForecastRecord record = shop.record();
    assertThat(record.due()).isEqualTo(3);
    assertThat(record.held()).isEqualTo(3);
    assertThat(record.open()).isZero();
    assertThat(record.people()).isOne();
    assertThat(record.promisedShare()).isBetween(0.8, 1.0);
    assertThat(record.share()).isEqualTo(1);
  }

  @Test
  void one_whose_upper_end_has_passed_is_a_miss_before_the_rule_is_ever_met() throws Exception {
    shop.learns("-+-+");
    SkillForecast told = shop.inForce().get("clear");
    shop.learns("-".repeat(told.most() - 1));
    assertThat(open()).extracting(SkillForecast::tried).contains(4);
    shop.learns("-");
    assertThat(open()).extracting(SkillForecast::tried).doesNotContain(4);
    assertThat(shop.record().due()).isPositive();
    assertThat(shop.record().held()).isZero();
  }

  @Test
  void one_met_sooner_than_foretold_is_a_miss_as_well() {
    SkillForecast told =
        new SkillForecast(
            UUID.randomUUID(),
            ForecastShop.WORKSHOP,
            ForecastShop.LEARNER,
            "clear",
            "1",
            5,
            shop.clock.instant(),
            new PanelsNeeded(OptionalInt.of(4), 3, OptionalInt.of(6), 0.8),
            State.OPEN,
            null);
    assertThat(told.met(7)).map(SkillForecast::state).contains(State.MISSED);
    assertThat(told.met(8)).map(SkillForecast::state).contains(State.HELD);
    assertThat(told.met(11)).map(SkillForecast::state).contains(State.HELD);
    assertThat(told.met(11)).map(SkillForecast::needed).contains(6);
    assertThat(told.met(12)).map(SkillForecast::state).contains(State.MISSED);
    assertThat(told.notYet(10).state()).isEqualTo(State.OPEN);
    assertThat(told.notYet(11).state()).isEqualTo(State.MISSED);
  }

  @Test
  void a_panel_sent_back_changes_the_forecast_after_it_and_adds_none() throws Exception {
    UUID last = shop.learns("--++");
    int before = shop.inForce().get("clear").panels().least();
    shop.returns(last);
    SkillForecast told = shop.inForce().get("clear");
    assertThat(told.attempt()).isEqualTo(last);
    assertThat(told.panels().least()).isGreaterThan(before);
    assertThat(open()).hasSize(2);
  }

  @Test
  void a_panel_measured_again_takes_its_forecast_back() throws Exception {
    shop.learns("--+");
    UUID last = shop.learns("-");
    shop.reopens(last);
    assertThat(open()).extracting(SkillForecast::tried).containsExactly(3);
  }

  @Test
  void what_was_foretold_under_another_rule_is_not_held_against_this_one() throws Exception {
    shop.learns("-+-");
    shop.ruleChanges();
    shop.learns("+-");
    assertThat(open()).extracting(SkillForecast::ruleVersion).containsOnly("2");
    assertThat(open()).extracting(SkillForecast::tried).containsExactly(4, 5);
  }

  @Test
  void what_is_too_far_off_is_told_but_not_counted() throws Exception {
    shop.learns("-".repeat(14));
    SkillForecast told = shop.inForce().get("clear");
    assertThat(told.panels().hasEnds()).isFalse();
    long open = shop.record().open();
    assertThat(open).isLessThan(open().size());
    shop.learns("+++");
    assertThat(open()).isEmpty();
    assertThat(shop.record().open()).isZero();
  }

  @Test
  void others_are_not_shown_it_and_the_record_names_nobody() throws Exception {
    shop.learns("-+-");
    UUID other = new UUID(1, 2);
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> shop.seenBy(other, ForecastShop.WORKSHOP, Role.APPRENTICE));
    assertThatExceptionOfType(NotFoundException.class)
        .isThrownBy(() -> shop.seenBy(other, new UUID(0, 2), Role.INSTRUCTOR));
    assertThat(shop.seenBy(other, ForecastShop.WORKSHOP, Role.INSTRUCTOR)).hasSize(1);
  }

  @Test
  void a_page_asks_twice_however_much_was_foretold() throws Exception {
    shop.learns("-+-");
    shop.panels(new UUID(1, 2), "-+-+-+-");
    long few = shop.statements(shop::inForce) + shop.statements(shop::record);
    shop.learns("-+--+-");
    assertThat(shop.statements(shop::inForce) + shop.statements(shop::record)).isEqualTo(few);
    assertThat(few).isLessThanOrEqualTo(5);
  }
}
