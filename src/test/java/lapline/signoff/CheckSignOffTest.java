package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import lapline.people.NameChange;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What a code that somebody reads from paper is worth, and whose name stands there. */
class CheckSignOffTest {

  private final SignOffShop shop = new SignOffShop();

  private CheckSignOff.Answer answer() {
    CheckSignOff check =
        new CheckSignOff(
            shop.signOffs,
            shop.people,
            new Skills(List.of(SignOffShop.CLEAR), List.of()),
            shop.clock);
    return check.run(shop.signOff().code()).orElseThrow();
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
    shop.clock.turn(Duration.ofDays(3));
    corrected("Somebody Misspelt", shop.learner.name());
    assertThat(answer().formerName()).isEqualTo("Somebody Misspelt");
  }

  @Test
  void a_name_that_was_corrected_before_the_paper_was_printed_is_nobodys_business() {
    corrected("Somebody Misspelt", shop.learner.name());
    shop.clock.turn(Duration.ofDays(3));
    signedOff();
    assertThat(answer().formerName()).isEmpty();
  }

  @Test
  void a_code_typed_in_fours_or_with_the_full_stop_of_its_sentence_is_the_same_code() {
    assertThat(CheckSignOff.tidy(" KXWC 7cqb-aq5y. ")).isEqualTo("kxwc7cqbaq5y");
  }
}
