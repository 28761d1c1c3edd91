package lapline.practice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import lapline.content.ContentFiles;
import lapline.people.LearnerAdvanced;
import lapline.people.Person;
import lapline.people.RememberedPeople;
import lapline.people.Role;
import lapline.trade.measure.UnitSystem;

/**
 * An invented workshop with one small task and its people, wired by hand around records in memory.
 */
final class PracticeShop {
  static final String TASK = "clear/small";
  static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");

  private static final String TASK_FILE =
      """
      title: A small panel of clear
      skill: clear
      purpose: Lay one even coat.
      panel:
        width: 300 mm
        height: 200 mm
        places:
          - {number: 1, at: [75, 100]}
          - {number: 2, at: [225, 100]}
      coats: 2
      passes-per-coat: 3
      prepare: [Clean the panel.]
      cautions: [Read the data sheet.]
      sections:
        - id: gun
          title: Gun
          fields:
            - {measurand: gun-pressure, required: yes}
            - {measurand: fan-width}
        - id: passes
          title: Passes
          fields:
            - {measurand: pass-spacing}
        - id: film
          title: Film
          fields:
            - {measurand: wet-film}
            - {measurand: film-before}
            - {measurand: film-after}
            - {measurand: shine-left, places: [2]}
      criteria:
        - id: pressure
          label: Inlet pressure
          quantity: gun-pressure
          target: 150 to 180 kPa
          critical: yes
          weight: 1
          fade: 10 kPa
          card: pressure
          why: It breaks the paint up.
          source: common practice, no source
      """;

  final UUID workshop = UUID.randomUUID();
  final Person apprentice = person(workshop, Role.APPRENTICE);
  final Person other = person(workshop, Role.APPRENTICE);
  final Person instructor = person(workshop, Role.INSTRUCTOR);
  final Person stranger = person(UUID.randomUUID(), Role.INSTRUCTOR, Role.APPRENTICE);
  final List<LearnerAdvanced> told = new ArrayList<>();
  final RememberedAttempts attempts = new RememberedAttempts();
  final RememberedTargets targets = new RememberedTargets();
  final RememberedPeople people = new RememberedPeople();
  final PracticeTasks tasks = readTasks();
  final Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
  final ReadPanel read = new ReadPanel(tasks);
  final ChooseGunCard choose = new ChooseGunCard(attempts, targets);
  final StartAttempt start = new StartAttempt(attempts, tasks, choose, clock, new Random(7));
  final KeepReadings keep = new KeepReadings(attempts, read, clock);
  final TargetsInForce inForce = new TargetsInForce(targets);
  final ScoreAttempt score = new ScoreAttempt(attempts, read, inForce, told::add, clock);
  final FindAttempts find = new FindAttempts(attempts);
  final ChangeTargets change = new ChangeTargets(targets, tasks, people, clock);
  final LookAfterGunCards cards = new LookAfterGunCards(targets, attempts, people, clock);

  static Person person(UUID workshop, Role... roles) {
    return new Person(
        UUID.randomUUID(),
        workshop,
        "Somebody Invented",
        "somebody",
        Set.copyOf(Arrays.asList(roles)),
        UnitSystem.METRIC,
        ZoneId.of("Europe/Dublin"),
        true);
  }

  /** The same person after they changed the units they read. */
  static Person inUnits(Person person, UnitSystem units) {
    return new Person(
        person.id(),
        person.workshop(),
        person.name(),
        person.signInName(),
        person.roles(),
        units,
        person.zone(),
        person.active());
  }

  {
    people.add(instructor, NOW);
  }

  Attempt draft() {
    return start.run(apprentice, TASK, null, "");
  }

  /** Types into a draft on top of its newest revision. */
  KeptReadings type(Attempt draft, String cell, String typed) {
    long now = attempts.attempt(draft.id()).orElseThrow().revision();
    return keep.run(apprentice, draft.id(), now, List.of(new TypedReading(cell, typed, now)));
  }

  private static PracticeTasks readTasks() {
    try {
      Path folder = Files.createTempDirectory("lapline-shop");
      Path measurands = folder.resolve("curriculum/measurands.yaml");
      Path task = folder.resolve("curriculum/40-clear/tasks/small.yaml");
      Files.createDirectories(task.getParent());
      Files.copy(Path.of("curriculum/measurands.yaml"), measurands);
      Files.writeString(task, TASK_FILE);
      PracticeTasks tasks = PracticeTasks.read(new ContentFiles(folder));
      if (!tasks.problems().isEmpty()) {
        throw new IllegalStateException(tasks.problems().toString());
      }
      return tasks;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
