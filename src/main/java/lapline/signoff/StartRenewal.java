package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Puts somebody whose sign-off runs out, or has run out, before the examiners again, when the
 * evidence of today is complete. Time alone tells nobody, so whoever looks after the dates starts
 * it.
 */
@ApplicationScoped
public class StartRenewal {
  private KeepStandings standings;
  private PeopleRecords people;
  private Skills skills;

  protected StartRenewal() {}

  @Inject
  public StartRenewal(KeepStandings standings, PeopleRecords people, Skills skills) {
    this.standings = standings;
    this.people = people;
    this.skills = skills;
  }

  /** The evidence as it stands now; where it is not complete nobody was put before anybody. */
  @Transactional
  public Evidence run(Person by, UUID personId, String skillId) {
    by.mustBe(Role.OWNER, Role.REGISTRAR, Role.EXAMINER);
    Person person = people.person(personId).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    Skill skill = skills.find(skillId).orElseThrow(NotFoundException::new);
    return standings.advance(personId, person.workshop(), skill);
  }
}
