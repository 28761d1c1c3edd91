package lapline.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import lapline.demo.ScenarioClock;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A token is one person's, is made once under its name, and opens nothing once it is revoked. */
class ChangeAccountTest {
  private final ScenarioClock clock = new ScenarioClock(Instant.parse("2031-03-04T14:05:00Z"));
  private final RememberedPeople people = new RememberedPeople();
  private final ChangeAccount account = new ChangeAccount(people, null, clock, new Random(7));
  private final Person owner = person(true);

  private Person person(boolean active) {
    Person person =
        new Person(
            UUID.randomUUID(),
            new UUID(0, 1),
            "Somebody Invented",
            UUID.randomUUID().toString(),
            Set.of(Role.OWNER),
            UnitSystem.METRIC,
            ZoneOffset.UTC,
            active);
    people.add(person, clock.instant());
    return person;
  }

  @Test
  void who_asks_twice_for_a_token_of_one_name_has_one() {
    assertThat(account.makeToken(owner, "rack")).isPresent();
    assertThat(account.makeToken(owner, "Rack")).as("however it is written").isEmpty();
    assertThat(people.tokens(owner.id())).hasSize(1);
    assertThat(account.makeToken(person(true), "rack")).as("somebody else's").isPresent();
  }

  @Test
  void a_name_is_free_again_when_its_token_is_revoked() {
    String first = account.makeToken(owner, "rack").orElseThrow();
    assertThat(account.byToken(first)).contains(owner);
    account.revokeToken(owner, people.tokens(owner.id()).get(0).id());
    assertThat(account.byToken(first)).isEmpty();
    assertThat(account.makeToken(owner, "rack")).isPresent();
  }

  @Test
  void nobody_revokes_what_is_not_theirs() {
    String token = account.makeToken(owner, "rack").orElseThrow();
    UUID id = people.tokens(owner.id()).get(0).id();
    assertThatThrownBy(() -> account.revokeToken(person(true), id))
        .isInstanceOf(NotFoundException.class);
    assertThat(account.byToken(token)).contains(owner);
  }

  @Test
  void a_token_of_who_has_left_opens_nothing() {
    String token = account.makeToken(person(false), "rack").orElseThrow();
    assertThat(account.byToken(token)).isEmpty();
    assertThat(account.byToken("lap_nobodys")).isEmpty();
  }
}
