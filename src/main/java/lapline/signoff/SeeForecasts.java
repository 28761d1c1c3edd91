package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.judgement.progress.PanelsNeeded;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/** How many more panels are foretold for a person, and how such forecasts have turned out. */
@ApplicationScoped
public class SeeForecasts {
  /** So many panels have to be scored before anything is foretold. */
  public static final int FEWEST = PanelsNeeded.FEWEST;

  private ForecastRecords records;
  private PeopleRecords people;

  protected SeeForecasts() {}

  @Inject
  public SeeForecasts(ForecastRecords records, PeopleRecords people) {
    this.records = records;
    this.people = people;
  }

  /** The forecasts in force, by skill; for the person themselves and for who teaches them. */
  @Transactional
  public Map<String, SkillForecast> of(Person by, UUID learner) {
    Person person = people.person(learner).orElseThrow(NotFoundException::new);
    by.mustBeIn(person.workshop());
    if (!by.id().equals(learner)) {
      by.mustBe(Role.INSTRUCTOR, Role.EXAMINER, Role.OWNER, Role.REGISTRAR);
    }
    return records.inForce(learner).stream()
        .collect(Collectors.toMap(SkillForecast::skill, Function.identity()));
  }

  /** How the forecasts of one's own workshop have turned out; it names nobody. */
  @Transactional
  public ForecastRecord record(Person by) {
    return records.record(by.workshop());
  }
}
