package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Locale;
import java.util.Optional;

/** Finds the active account that a sign-in name and password open. */
@ApplicationScoped
public class CheckPassword {
  private PeopleRecords records;
  private Passwords passwords;
  private volatile String decoy;

  protected CheckPassword() {}

  @Inject
  public CheckPassword(PeopleRecords records, Passwords passwords) {
    this.records = records;
    this.passwords = passwords;
  }

  @Transactional
  public Optional<Person> run(String signInName, char[] password) {
    Optional<Person> person = records.bySignInName(tidy(signInName)).filter(Person::active);
    Optional<String> hash = person.flatMap(p -> records.passwordHash(p.id()));
    // an unknown name costs as much time as a known one, so that names cannot be probed
    boolean right = passwords.matches(password, hash.orElseGet(this::decoy)) && hash.isPresent();
    return right ? person : Optional.empty();
  }

  /** Sign-in names are kept in lower case without spaces around them. */
  public static String tidy(String signInName) {
    return signInName.strip().toLowerCase(Locale.ROOT);
  }

  private String decoy() {
    if (decoy == null) {
      decoy = passwords.hash("nobody has this".toCharArray());
    }
    return decoy;
  }
}
