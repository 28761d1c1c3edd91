package lapline.signoff;

import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.RowsInMemory;
import lapline.demo.ScenarioClock;
import lapline.exams.store.StoredPaperRecords;
import lapline.lessons.Curriculum;
import lapline.lessons.store.StoredLessonRecords;
import lapline.people.LearnerAdvanced;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.store.StoredPeopleRecords;
import lapline.practice.store.StoredAttemptRecords;
import lapline.signoff.store.StoredForecastRecords;
import lapline.signoff.store.StoredSignOffRecords;
import lapline.trade.measure.UnitSystem;

/** An invented workshop whose panels are put straight into a database in memory. */
final class ForecastShop implements AutoCloseable {
  static final UUID WORKSHOP = new UUID(0, 1);
  static final UUID LEARNER = new UUID(1, 1);
  private static final String FILL =
      "insert into workshop (id, name, zone, units, created_at) values ('%s', 'Shop', 'UTC',"
          + " 'METRIC', timestamp with time zone '2030-01-01 00:00:00Z');"
          + "insert into person (id, workshop_id, name, sign_in_name, units, active, created_at)"
          + " select cast('00000000-0000-0001-0000-00000000000' || x as uuid), '%s', 'P' || x,"
          + " 'p' || x, 'METRIC', true, timestamp with time zone '2030-01-01 00:00:00Z'"
          + " from system_range(1, 3)";

  final ScenarioClock clock = new ScenarioClock(Instant.parse("2031-03-04T14:05:00Z"));
  final StoredForecastRecords records;
  private final RowsInMemory rows;
  private final SeeForecasts see;
  private String version = "1";
  private int panels;

  ForecastShop() throws Exception {
    rows = RowsInMemory.filledBy(FILL.formatted(WORKSHOP, WORKSHOP));
    records = rows.with(new StoredForecastRecords());
    see = new SeeForecasts(records, rows.with(new StoredPeopleRecords()));
  }

  /** From now on the rule is another one. */
  void ruleChanges() {
    version = "2";
  }

  /** Panels of the learner, each scored a day after the one before: '+' counts. */
  UUID learns(String... done) throws Exception {
    return panels(LEARNER, done);
  }

  UUID panels(UUID who, String... done) throws Exception {
    UUID last = null;
    for (String panel : String.join("", done).split("")) {
      last = new UUID(3, ++panels);
      clock.pass(Duration.ofDays(1));
      rows.put(
          ("insert into attempt (id, workshop_id, person_id, task_id, task_version, unit_id, skill_id,"
                  + " sheet_code, state, changed_what, revision, started_at, scored_at,"
                  + " practice_score, accepted, units) values ('%s', '%s', '%s', 'clear/two-coats',"
                  + " 'v1', 'clear', 'clear', 'S%s', 'SCORED', '', 1, timestamp with time zone '%s',"
                  + " timestamp with time zone '%s', 90, %s, 'METRIC')")
              .formatted(
                  last,
                  WORKSHOP,
                  who,
                  panels,
                  clock.instant(),
                  clock.instant(),
                  panel.equals("+")));
      advanced(who);
    }
    return last;
  }

  void returns(UUID attempt) throws Exception {
    rows.put("update attempt set state = 'RETURNED' where id = '" + attempt + "'");
    advanced(LEARNER);
  }

  /** Measured again: the judgement is taken back. */
  void reopens(UUID attempt) throws Exception {
    rows.put(
        "update attempt set state = 'DRAFT', scored_at = null, accepted = null where id = '"
            + attempt
            + "'");
    advanced(LEARNER);
  }

  private void advanced(UUID who) throws Exception {
    Skill.Rule rule =
        new Skill.Rule(version, false, false, 3, 4, List.of("clear/*"), Period.ofMonths(6), 0);
    Skill skill =
        new Skill("clear", "Clear", "clear", "Lay clear", rule, Period.ofMonths(12), "because");
    Skills skills = new Skills(List.of(skill), List.of());
    StoredSignOffRecords signOffs = rows.with(new StoredSignOffRecords());
    GatherEvidence gather =
        new GatherEvidence(
            new Curriculum(List.of(), Map.of(), List.of()),
            rows.with(new StoredLessonRecords()),
            rows.with(new StoredAttemptRecords()),
            rows.with(new StoredPaperRecords()),
            signOffs);
    LearnerAdvanced news = new LearnerAdvanced(who, WORKSHOP, "clear");
    AdvanceSkills advance =
        new AdvanceSkills(
            skills,
            new KeepStandings(skills, gather, signOffs, clock),
            new KeepForecasts(records, clock));
    rows.kept(() -> advance.advanced(news));
  }

  Map<String, SkillForecast> inForce() {
    return see.of(person(LEARNER, WORKSHOP, Role.APPRENTICE), LEARNER);
  }

  Map<String, SkillForecast> seenBy(UUID who, UUID workshop, Role role) {
    return see.of(person(who, workshop, role), LEARNER);
  }

  ForecastRecord record() {
    return see.record(person(LEARNER, WORKSHOP, Role.APPRENTICE));
  }

  long statements(Runnable page) {
    return rows.statements(page);
  }

  private static Person person(UUID id, UUID workshop, Role role) {
    return new Person(
        id, workshop, "P", "p", Set.of(role), UnitSystem.METRIC, ZoneOffset.UTC, true);
  }

  @Override
  public void close() {
    rows.close();
  }
}
