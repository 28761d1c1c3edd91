package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import lapline.people.NameChange;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Workshop;

/** Tells whoever holds the code of a sign-off what it is worth now, and little else. */
@ApplicationScoped
public class CheckSignOff {
  private SignOffRecords records;
  private PeopleRecords people;
  private Skills skills;
  private Clock clock;

  protected CheckSignOff() {}

  @Inject
  public CheckSignOff(SignOffRecords records, PeopleRecords people, Skills skills, Clock clock) {
    this.records = records;
    this.people = people;
    this.skills = skills;
    this.clock = clock;
  }

  /**
   * Days are those of the workshop's zone.
   *
   * @param formerName what the person was called when it was granted; empty where that was the same
   * @param changed when it was suspended, resumed or withdrawn last; of the grant where it never
   *     was
   */
  public record Answer(
      SignOff.Standing standing,
      String name,
      String formerName,
      String workshop,
      String allows,
      LocalDate granted,
      LocalDate expires,
      LocalDate changed) {}

  @Transactional
  public Optional<Answer> run(String code) {
    return records.byCode(tidy(code)).map(this::answer);
  }

  /** A code is read from paper: in fours, with hyphens, with the full stop of its sentence. */
  static String tidy(String code) {
    return code.replaceAll("[^A-Za-z0-9]", "").toLowerCase(Locale.ROOT);
  }

  private Answer answer(SignOff signOff) {
    Workshop workshop = people.workshop(signOff.workshop()).orElseThrow();
    ZoneId zone = workshop.zone();
    String name = people.person(signOff.person()).map(Person::name).orElse("");
    String then = NameChange.nameAt(signOff.granted(), people.nameChanges(signOff.person()), name);
    return new Answer(
        signOff.at(clock.instant()),
        name,
        then.equals(name) ? "" : then,
        workshop.name(),
        skills.find(signOff.skill()).map(Skill::allows).orElse(signOff.skill()),
        LocalDate.ofInstant(signOff.granted(), zone),
        LocalDate.ofInstant(signOff.expires(), zone),
        LocalDate.ofInstant(changed(signOff), zone));
  }

  private Instant changed(SignOff signOff) {
    return records.steps(signOff.person(), signOff.skill()).stream()
        .filter(s -> signOff.id().equals(s.signOff()))
        .map(Step::at)
        .max(Comparator.naturalOrder())
        .orElse(signOff.granted());
  }
}
