package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.random.RandomGenerator;

/** What a registrar does with the accounts of their workshop. */
@ApplicationScoped
public class LookAfterPeople {
  /** How long a link for choosing a password is good. */
  public static final Duration LINK_GOOD_FOR = Duration.ofDays(7);

  private static final int LINK_LETTERS = 30;
  private static final int MOST_NAMESAKES = 50;

  private PeopleRecords records;
  private Clock clock;
  private RandomGenerator chance;

  protected LookAfterPeople() {}

  @Inject
  public LookAfterPeople(PeopleRecords records, Clock clock, RandomGenerator chance) {
    this.records = records;
    this.clock = clock;
    this.chance = chance;
  }

  /** What is wrong with the fields of a new account, all at once. */
  @Transactional
  public List<AccountProblem> wrong(Person by, String name, String signInName, Set<Role> roles) {
    by.mustBe(Role.REGISTRAR);
    List<AccountProblem> problems = new AccountNames(records).problems(null, name, signInName);
    if (roles.isEmpty()) {
      problems.add(AccountProblem.of("roles", "people.add.no-role"));
    }
    return problems;
  }

  /** People of the workshop who have exactly this name, since two may well be one. */
  @Transactional
  public List<Person> namesakes(Person by, String name) {
    by.mustBe(Role.REGISTRAR);
    String tidy = name.strip();
    return records.page(by.workshop(), tidy, null, 0, MOST_NAMESAKES).stream()
        .filter(p -> p.name().equalsIgnoreCase(tidy))
        .toList();
  }

  /**
   * Adds an account that nobody can sign in to until its password has been chosen.
   *
   * @throws AccountRefusedException when something is wrong that {@link #wrong} tells, if only
   *     since somebody else took the sign-in name in the meantime
   */
  @Transactional
  public Person add(Person by, String name, String signInName, Set<Role> roles) {
    by.mustBe(Role.REGISTRAR);
    records.hold(by.workshop());
    List<AccountProblem> problems = wrong(by, name, signInName, roles);
    if (!problems.isEmpty()) {
      throw new AccountRefusedException(problems);
    }
    Workshop workshop = records.workshop(by.workshop()).orElseThrow(NotFoundException::new);
    Person added =
        new Person(
            UUID.randomUUID(),
            workshop.id(),
            name.strip(),
            CheckPassword.tidy(signInName),
            roles,
            workshop.units(),
            workshop.zone(),
            true);
    records.add(added, clock.instant());
    return added;
  }

  /** Changes roles and whether the account is open; a registrar cannot shut themselves out. */
  @Transactional
  public void change(Person by, UUID person, Set<Role> roles, boolean active) {
    Person now = find(by, person);
    boolean self = by.id().equals(person);
    if (self && (!active || !roles.contains(Role.REGISTRAR))) {
      throw new NotAllowedException("people.not-allowed.self");
    }
    records.change(
        new Person(
            now.id(),
            now.workshop(),
            now.name(),
            now.signInName(),
            roles,
            now.units(),
            now.zone(),
            active));
  }

  /**
   * A code with which the person may choose a password once, within a week. It ends the ones made
   * before, which may lie in somebody else's hands.
   */
  @Transactional
  public String passwordLink(Person by, UUID person) {
    Person owner = find(by, person);
    String code = Secrets.code(chance, LINK_LETTERS);
    records.endPasswordLinks(owner.id(), clock.instant());
    records.addPasswordLink(Secrets.digest(code), owner.id(), clock.instant().plus(LINK_GOOD_FOR));
    return code;
  }

  /** Changes the workshop's name, zone and usual units. */
  @Transactional
  public void change(Person by, Workshop workshop) {
    by.mustBe(Role.REGISTRAR);
    by.mustBeIn(workshop.id());
    records.changeWorkshop(workshop);
  }

  /** A person of the registrar's own workshop. */
  @Transactional
  public Person find(Person by, UUID person) {
    by.mustBe(Role.REGISTRAR);
    Person found = records.person(person).orElseThrow(NotFoundException::new);
    by.mustBeIn(found.workshop());
    return found;
  }
}
