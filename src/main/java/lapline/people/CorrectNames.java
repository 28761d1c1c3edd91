package lapline.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/**
 * Corrects how a person is called or signs in, and keeps what it was. Records show the name a
 * person has now; whoever checks a paper printed before sees the name that stands on it too.
 */
@ApplicationScoped
public class CorrectNames {
  private PeopleRecords records;
  private Clock clock;

  protected CorrectNames() {}

  @Inject
  public CorrectNames(PeopleRecords records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  /**
   * @return what is wrong with the fields {@code name} and {@code signInName}; empty when both are
   *     as wanted
   * @throws AccountRefusedException when somebody took the sign-in name at this very moment
   */
  @Transactional
  public List<AccountProblem> run(Person by, UUID person, String name, String signInName) {
    Person now = find(by, person);
    List<AccountProblem> problems = new AccountNames(records).problems(person, name, signInName);
    if (problems.isEmpty()) {
      Person corrected = now.called(name.strip(), CheckPassword.tidy(signInName));
      keep(by, now, NameChange.What.NAME, now.name(), corrected.name());
      keep(by, now, NameChange.What.SIGN_IN_NAME, now.signInName(), corrected.signInName());
      records.change(corrected);
    }
    return problems;
  }

  /** Newest first. */
  @Transactional
  public List<NameChange> history(Person by, UUID person) {
    return records.nameChanges(find(by, person).id());
  }

  private void keep(Person by, Person of, NameChange.What what, String before, String after) {
    if (!before.equals(after)) {
      records.add(
          new NameChange(
              UUID.randomUUID(), of.id(), what, before, after, by.id(), clock.instant()));
    }
  }

  private Person find(Person by, UUID person) {
    by.mustBe(Role.REGISTRAR);
    Person found = records.person(person).orElseThrow(NotFoundException::new);
    by.mustBeIn(found.workshop());
    return found;
  }
}
