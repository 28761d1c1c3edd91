package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.random.RandomGenerator;
import lapline.trade.measure.UnitSystem;

/**
 * Opens the first workshop and its first registrar through a link that is good once. The link is
 * made anew at each start while there is no registrar, and is never stored.
 */
@ApplicationScoped
public class SetUpWorkshop {
  private PeopleRecords records;
  private Passwords passwords;
  private Clock clock;
  private RandomGenerator chance;
  private volatile String digest;

  protected SetUpWorkshop() {}

  @Inject
  public SetUpWorkshop(
      PeopleRecords records, Passwords passwords, Clock clock, RandomGenerator chance) {
    this.records = records;
    this.passwords = passwords;
    this.clock = clock;
    this.chance = chance;
  }

  /** The code of a fresh set-up link, or nothing when a registrar exists. */
  @Transactional
  public Optional<String> offer() {
    if (records.anyRegistrar()) {
      return Optional.empty();
    }
    String code = Secrets.code(chance, 30);
    digest = Secrets.digest(code);
    return Optional.of(code);
  }

  /** Whether nobody has opened the link yet that was printed at the start. */
  public boolean isWaiting() {
    return digest != null;
  }

  public boolean good(String code) {
    return code != null && digest != null && digest.equals(Secrets.digest(code));
  }

  /** What is wrong with the first registrar's names, on the fields of an account. */
  @Transactional
  public List<AccountProblem> wrong(String name, String signInName) {
    return new AccountNames(records).problems(null, name, signInName);
  }

  /**
   * @throws NotAllowedException when the link has been used or is not the one last printed
   */
  @Transactional
  public synchronized Person run(
      String code,
      String workshopName,
      ZoneId zone,
      UnitSystem units,
      String name,
      String signIn,
      char[] password) {
    if (!good(code) || records.anyRegistrar()) {
      throw new NotAllowedException("people.setup.link-used");
    }
    Workshop workshop = new Workshop(UUID.randomUUID(), workshopName, zone, units);
    records.addWorkshop(workshop, clock.instant());
    Person registrar =
        new Person(
            UUID.randomUUID(),
            workshop.id(),
            name,
            signIn,
            Set.of(Role.REGISTRAR),
            units,
            zone,
            true);
    records.add(registrar, clock.instant());
    records.setPasswordHash(registrar.id(), passwords.hash(password));
    digest = null;
    return registrar;
  }
}
