package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NameChange;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a code that somebody reads from paper is worth, and whose name stands there. */
class CheckSignOffTest {

  private final SignOffShop shop = new SignOffShop();

  private Optional<CheckSignOff.Answer> answer(String code) {
    CheckSignOff check =
        new CheckSignOff(
            shop.signOffs,
            shop.people,
            new Skills(List.of(SignOffShop.CLEAR), List.of()),
            shop.clock);
    return check.run(code);
  }

  private CheckSignOff.Answer answer() {
    return answer(shop.signOff().code()).orElseThrow();
  }

  private void signedOff() {
    shop.people.addWorkshop(
        new Workshop(shop.workshop, "Invented", ZoneId.of("Europe/Dublin"), UnitSystem.METRIC),
        shop.clock.instant());
    shop.meetsTheRule(shop.learner);
    shop.decide.run(shop.examiner, shop.learner.id(), SignOffShop.SKILL, true, SignOffShop.WHY);
  }

  private void corrected(String before, String after) {
    UUID id = UUID.randomUUID();
    shop.people.add(
        new NameChange(
            id,
            shop.learner.id(),
            NameChange.What.NAME,
            before,
            after,
            shop.owner.id(),
            shop.clock.instant()));
  }

  @Test
  void a_name_that_was_corrected_since_is_told_beside_the_one_that_stands_on_the_paper() {
    signedOff();
    assertThat(answer().name()).isEqualTo(shop.learner.name());
    assertThat(answer().formerName()).as("nothing was corrected").isEmpty();
    shop.clock.pass(Duration.ofDays(3));
    corrected("Somebody Misspelt", shop.learner.name());
    assertThat(answer().formerName()).isEqualTo("Somebody Misspelt");
  }

  @Test
  void a_name_that_was_corrected_before_the_paper_was_printed_is_nobodys_business() {
    corrected("Somebody Misspelt", shop.learner.name());
    shop.clock.pass(Duration.ofDays(3));
    signedOff();
    assertThat(answer().formerName()).isEmpty();
  }

  @Test
  void a_code_says_what_may_be_done_where_and_until_when_by_the_workshops_own_days() {
    shop.clock.pass(Duration.between(shop.clock.instant(), Instant.parse("2031-07-01T23:20:00Z")));
    signedOff();
    assertThat(answer().standing()).isEqualTo(SignOff.Standing.GOOD);
    assertThat(answer().name()).isEqualTo(shop.learner.name());
    assertThat(answer().workshop()).isEqualTo("Invented");
    assertThat(answer().allows()).isEqualTo("Lay clear alone");
    assertThat(answer().granted()).as("past midnight in Dublin").isEqualTo("2031-07-02");
    assertThat(answer().expires()).isEqualTo("2032-07-02");
    assertThat(answer().changed()).isEqualTo("2031-07-02");
    assertThat(answer("kxwc7cqbaq5y")).as("nobody's code").isEmpty();
  }

  @Test
  void a_code_says_since_when_it_is_stopped() {
    signedOff();
    shop.clock.pass(Duration.ofDays(5));
    shop.change(shop.owner, Step.Kind.SUSPENDED);
    assertThat(answer().standing()).isEqualTo(SignOff.Standing.SUSPENDED);
    assertThat(answer().granted()).isEqualTo("2031-03-04");
    assertThat(answer().changed()).isEqualTo("2031-03-09");
  }

  /** A paper of before a new sign-off tells of its own end. */
  @Test
  void what_became_of_a_later_sign_off_is_not_told_of_an_earlier_one() {
    signedOff();
    String before = shop.signOff().code();
    shop.clock.pass(Duration.ofDays(5));
    shop.change(shop.examiner, Step.Kind.WITHDRAWN);
    shop.clock.pass(Duration.ofDays(5));
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.grant(shop.examiner)).isEmpty();
    assertThat(answer(before).orElseThrow().changed()).isEqualTo("2031-03-09");
    assertThat(answer(before).orElseThrow().standing()).isEqualTo(SignOff.Standing.WITHDRAWN);
    assertThat(answer().standing()).isEqualTo(SignOff.Standing.GOOD);
  }

  @Test
  void a_code_typed_in_fours_or_with_the_full_stop_of_its_sentence_is_the_same_code() {
    assertThat(CheckSignOff.tidy(" KXWC 7cqb-aq5y. ")).isEqualTo("kxwc7cqbaq5y");
  }
}
