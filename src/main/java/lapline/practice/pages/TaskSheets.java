package lapline.practice.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.Criterion;
import lapline.practice.FindAttempts;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.ReadPanel;
import lapline.practice.TargetsInForce;
import lapline.server.Settings;
import lapline.trade.measure.UnitSystem;

/** Makes the sheet of a panel with the targets in force, in the units of who prints it. */
@ApplicationScoped
public class TaskSheets {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private FindAttempts find;
  private ReadPanel read;
  private PracticeTasks tasks;
  private TargetsInForce targets;
  private PeopleRecords people;
  private Messages messages;
  private Settings settings;

  protected TaskSheets() {}

  @Inject
  public TaskSheets(
      FindAttempts find,
      ReadPanel read,
      PracticeTasks tasks,
      TargetsInForce targets,
      PeopleRecords people,
      Messages messages,
      Settings settings) {
    this.find = find;
    this.read = read;
    this.tasks = tasks;
    this.targets = targets;
    this.people = people;
    this.messages = messages;
    this.settings = settings;
  }

  /**
   * @param here address under which the page was opened
   */
  public TaskSheet of(Person by, UUID attemptId, String here) {
    Attempt attempt = find.attempt(by, attemptId);
    return new TaskSheet(
        task(by, attempt),
        tasks.measurands()::find,
        head(attempt, by.zone(), here),
        new PhraseWriter(messages, attempt.units()));
  }

  public PracticeTask task(Person by, Attempt attempt) {
    return targets.apply(by, read.task(attempt), attempt.gunCard());
  }

  /** What a criterion asks for. */
  public String target(UnitSystem units, Criterion criterion) {
    PhraseWriter words = new PhraseWriter(messages, units);
    return new CriterionWriter(words, tasks.measurands()::find).target(criterion);
  }

  private TaskSheet.Head head(Attempt attempt, ZoneId zone, String here) {
    Person apprentice = people.person(attempt.person()).orElseThrow(NotFoundException::new);
    String changed = attempt.changedWhat() == null ? "" : attempt.changedWhat();
    return new TaskSheet.Head(
        apprentice.name(),
        DAY.format(attempt.started().atZone(zone)),
        attempt.sheetCode(),
        settings.addressOr(here) + "/s/" + attempt.sheetCode(),
        changed);
  }
}
