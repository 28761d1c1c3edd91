package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;

/** Lets the holder of a link choose the password of one account, once. */
@ApplicationScoped
public class ChoosePassword {
  private PeopleRecords records;
  private Passwords passwords;
  private Clock clock;

  protected ChoosePassword() {}

  @Inject
  public ChoosePassword(PeopleRecords records, Passwords passwords, Clock clock) {
    this.records = records;
    this.passwords = passwords;
    this.clock = clock;
  }

  /** Whose password the link is for; empty when it is unknown, used, too old or of no use. */
  @Transactional
  public Optional<Person> owner(String code) {
    return anybody(code).filter(Person::active);
  }

  /** Whether the link would be good, were the account not closed. */
  @Transactional
  public boolean isOfClosedAccount(String code) {
    return anybody(code).filter(p -> !p.active()).isPresent();
  }

  private Optional<Person> anybody(String code) {
    return Optional.ofNullable(code)
        .flatMap(c -> records.passwordLinkOwner(Secrets.digest(c), clock.instant()))
        .flatMap(records::person);
  }

  /**
   * @throws NotAllowedException when the link is no longer good
   */
  @Transactional
  public void run(String code, char[] password) {
    Person owner =
        owner(code).orElseThrow(() -> new NotAllowedException("people.password.link-bad"));
    if (password.length < Passwords.LEAST_LENGTH) {
      throw new IllegalArgumentException("password shorter than " + Passwords.LEAST_LENGTH);
    }
    records.setPasswordHash(owner.id(), passwords.hash(password));
    records.usePasswordLink(Secrets.digest(code), clock.instant());
  }
}
