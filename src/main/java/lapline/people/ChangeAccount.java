package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.random.RandomGenerator;
import lapline.trade.measure.UnitSystem;

/** What a person may change about their own account. */
@ApplicationScoped
public class ChangeAccount {
  private static final int TOKEN_LETTERS = 40;

  private PeopleRecords records;
  private Passwords passwords;
  private Clock clock;
  private RandomGenerator chance;

  protected ChangeAccount() {}

  @Inject
  public ChangeAccount(
      PeopleRecords records, Passwords passwords, Clock clock, RandomGenerator chance) {
    this.records = records;
    this.passwords = passwords;
    this.clock = clock;
    this.chance = chance;
  }

  @Transactional
  public void units(Person by, UnitSystem units) {
    records.change(
        new Person(
            by.id(),
            by.workshop(),
            by.name(),
            by.signInName(),
            by.roles(),
            units,
            by.zone(),
            by.active()));
  }

  /**
   * @return the key of why not, or null when the password was changed
   */
  @Transactional
  public String password(Person by, char[] old, char[] fresh) {
    boolean right =
        records.passwordHash(by.id()).filter(h -> passwords.matches(old, h)).isPresent();
    if (!right) {
      return "account.password.old-wrong";
    }
    if (fresh.length < Passwords.LEAST_LENGTH) {
      return "people.password.short";
    }
    records.setPasswordHash(by.id(), passwords.hash(fresh));
    return null;
  }

  /**
   * Makes a token with exactly the person's own rights; returned once, kept only as its digest.
   *
   * @return empty when a good one of that name is there: of two presses the second would leave a
   *     key that opens everything and that nobody has
   */
  @Transactional
  public Optional<String> makeToken(Person by, String name) {
    records.hold(by.workshop());
    if (goodToken(by, name).isPresent()) {
      return Optional.empty();
    }
    String token = "lap_" + Secrets.code(chance, TOKEN_LETTERS);
    records.addToken(
        new AccessToken(UUID.randomUUID(), by.id(), name, clock.instant(), null, null),
        Secrets.digest(token));
    return Optional.of(token);
  }

  /** The person's good token of that name. */
  @Transactional
  public Optional<AccessToken> goodToken(Person by, String name) {
    return records.tokens(by.id()).stream()
        .filter(t -> t.good() && t.name().equalsIgnoreCase(name))
        .findFirst();
  }

  @Transactional
  public void revokeToken(Person by, UUID token) {
    boolean own = records.tokens(by.id()).stream().anyMatch(t -> t.id().equals(token));
    if (!own) {
      throw new NotFoundException();
    }
    records.revokeToken(token, clock.instant());
  }

  /** The active person whose good token this is. */
  @Transactional
  public Optional<Person> byToken(String token) {
    Optional<AccessToken> good =
        records.tokenByDigest(Secrets.digest(token)).filter(AccessToken::good);
    good.ifPresent(t -> records.touchToken(t.id(), clock.instant()));
    return good.flatMap(t -> records.person(t.person())).filter(Person::active);
  }
}
