package lapline.board;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import lapline.RowsInMemory;
import lapline.board.store.StoredBoardRecords;
import lapline.board.store.StoredNeedRecords;
import lapline.content.ContentFiles;
import lapline.exams.DrawPaper;
import lapline.exams.PaperRecords;
import lapline.exams.ReadPapers;
import lapline.exams.bank.QuestionBanks;
import lapline.exams.store.StoredItemRecords;
import lapline.exams.store.StoredPaperRecords;
import lapline.grading.SeeGradings;
import lapline.grading.store.StoredGradingRecords;
import lapline.lessons.Curriculum;
import lapline.lessons.CurriculumReader;
import lapline.lessons.LessonRecords;
import lapline.lessons.store.StoredLessonRecords;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.store.StoredPeopleRecords;
import lapline.practice.Attempt;
import lapline.practice.AttemptQuery;
import lapline.practice.AttemptRecords;
import lapline.practice.FindAttempts;
import lapline.practice.PracticeTasks;
import lapline.practice.photographs.PhotographRecords;
import lapline.practice.store.StoredAttemptRecords;
import lapline.practice.store.StoredPhotographRecords;
import lapline.signoff.GatherEvidence;
import lapline.signoff.SeeForecasts;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Skills;
import lapline.signoff.SkillsReader;
import lapline.signoff.store.StoredForecastRecords;
import lapline.signoff.store.StoredSignOffRecords;
import lapline.trade.measure.UnitSystem;

/** A workshop of any size in a database in memory, with what the boards are made of. */
public final class BoardShop implements AutoCloseable {
  static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final UUID WORKSHOP = new UUID(0, 1);
  private static final Path ROWS = Path.of("src/test/resources/lapline/board/many-rows.sql");

  final Person instructor = person(Role.INSTRUCTOR);
  final Person owner = person(Role.OWNER);
  final LookAtBoard board;
  final LookAtCohort cohort;
  final SeeNeeds needs;
  final SeeDue due;
  final ShowTrainingRecord record;
  final LookAtLearner learner;
  final LookBack back;
  final SeeForecasts forecasts;
  private final PeopleRecords people;
  private final RowsInMemory rows;

  /** Fills a new database with so many learners, each with so many panels for each skill. */
  public static BoardShop of(int people, int panels) throws Exception {
    String fill =
        Files.readString(ROWS).replace(":people", "" + people).replace(":panels", "" + panels);
    return new BoardShop(RowsInMemory.filledBy(fill));
  }

  private BoardShop(RowsInMemory filled) throws Exception {
    rows = filled;
    BoardRecords records = with(new StoredBoardRecords());
    SignOffRecords signOffs = with(new StoredSignOffRecords());
    people = with(new StoredPeopleRecords());
    Skills skills =
        new SkillsReader(Set.of("preparing", "masking", "coverage", "clear"))
            .read(new ContentFiles(Path.of(".")));
    Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
    SkillMarks marks = new SkillMarks(signOffs, skills, clock);
    board = new LookAtBoard(records, people, marks, clock);
    cohort = new LookAtCohort(records, people, marks, clock);
    needs = new SeeNeeds(with(new StoredNeedRecords()), skills, clock);
    due = new SeeDue(records, clock);
    record = new ShowTrainingRecord(records, signOffs, people, marks, clock);
    learner = learner(signOffs, skills, clock);
    back = new LookBack(new FindAttempts(with(new StoredAttemptRecords())), records, clock);
    forecasts = new SeeForecasts(with(new StoredForecastRecords()), people);
  }

  /** What a learner's own pages are made of. */
  private LookAtLearner learner(SignOffRecords signOffs, Skills skills, Clock clock)
      throws ReflectiveOperationException {
    ContentFiles files = new ContentFiles(Path.of("."));
    Curriculum course = new CurriculumReader(files).read();
    AttemptRecords attempts = with(new StoredAttemptRecords());
    LessonRecords lessons = with(new StoredLessonRecords());
    PaperRecords papers = with(new StoredPaperRecords());
    QuestionBanks banks = new QuestionBanks(List.of(), List.of());
    DrawPaper draw =
        new DrawPaper(papers, with(new StoredItemRecords()), banks, clock, new Random(7));
    return new LookAtLearner(
        course,
        lessons,
        PracticeTasks.read(files),
        attempts,
        skills,
        new GatherEvidence(course, lessons, attempts, papers, signOffs),
        signOffs,
        new LookAtExam(new ReadPapers(papers), draw),
        people,
        clock);
  }

  /** The learner of this number, from 1. */
  UUID learner(int number) {
    return new UUID(1, number);
  }

  /** How many statements something takes, with nothing remembered from before. */
  long statements(Runnable page) {
    return rows.statements(page);
  }

  @Override
  public void close() {
    rows.close();
  }

  private static Person person(Role role) {
    UUID id = new UUID(2, role.ordinal());
    return new Person(
        id,
        WORKSHOP,
        role.name(),
        role.name(),
        Set.of(role),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }

  /** The least that can be asked: one row by its key. */
  public Runnable onePerson() {
    return () -> people.person(learner(1)).orElseThrow();
  }

  /** Does something with nothing remembered from before. */
  public void afresh(Runnable page) {
    rows.afresh(page);
  }

  private <T> T with(T records) throws ReflectiveOperationException {
    return rows.with(records);
  }

  /** The pages a learner opens of their own, by their names. */
  Map<String, Runnable> learnersPages() {
    Person learning = people.person(learner(1)).orElseThrow();
    return Map.of(
        "today", () -> learner.units(learning, learning.id()),
        "unit", () -> learner.unit(learning, learning.id(), "clear"),
        "my record", () -> record.of(learning, learning.id()),
        "my record, across panels", () -> acrossPanels(learning));
  }

  private void acrossPanels(Person learning) {
    back.of(learning, learning.id());
    forecasts.of(learning, learning.id());
    forecasts.record(learning);
  }

  /** What the result page of a learner's last panel of clear asks for. */
  Runnable resultPage() throws ReflectiveOperationException {
    Person learning = people.person(learner(1)).orElseThrow();
    FindAttempts find = new FindAttempts(with(new StoredAttemptRecords()));
    SeeGradings gradings = new SeeGradings(find, with(new StoredGradingRecords()), people);
    PhotographRecords photographs = with(new StoredPhotographRecords());
    AttemptQuery last =
        AttemptQuery.of(WORKSHOP, 0, 1)
            .by(learning.id())
            .towards("clear")
            .in(Attempt.State.ACCEPTED);
    UUID panel = find.page(learning, last).get(0).id();
    return rows.undone(
        () -> {
          find.judged(learning, panel);
          find.readings(learning, panel);
          back.on(learning, find.attempt(learning, panel), "film.low");
          find.upTo(learning, find.attempt(learning, panel), 8);
          gradings.of(learning, panel);
          photographs.of(panel);
        });
  }

  /** The first learner's panels of clear on which something was found, the latest first. */
  List<Attempt> found(String finding) throws ReflectiveOperationException {
    FindAttempts find = new FindAttempts(with(new StoredAttemptRecords()));
    BoardRecords records = with(new StoredBoardRecords());
    AttemptQuery clear = AttemptQuery.of(WORKSHOP, 0, 100).by(learner(1)).towards("clear");
    return find.page(owner, clear).stream()
        .filter(
            a -> records.sizes(List.of(a.id())).stream().anyMatch(f -> f.finding().equals(finding)))
        .toList();
  }

  /** Every board, by its name. */
  public Map<String, Runnable> pages() {
    return Map.of(
        "needs, eye",
        () -> needs.waiting(instructor, needs.counts(instructor), 1),
        "needs, stuck",
        () -> needs.stuck(instructor, needs.counts(instructor), 1),
        "needs, returned",
        () -> needs.returned(instructor, needs.counts(instructor), 1),
        "cohort",
        () -> {
          board.learners(instructor, "", 1);
          cohort.onTheWay(instructor);
          cohort.findings(instructor);
        },
        "skills board",
        () -> {
          board.good(owner, "");
          board.rows(owner, "", 1);
        },
        "due",
        () -> {
          due.ending(owner, 90, 1);
          List.of(30, 60, 90, 0).forEach(days -> due.count(owner, days));
        },
        "skills board, clear",
        () -> {
          board.good(owner, "clear");
          board.rows(owner, "clear", 1);
        },
        "cohort, clear",
        () -> board.learners(instructor, "clear", 1),
        "finding",
        () -> cohort.found(instructor, "clear", "film.low", 1),
        "training record",
        () -> record.of(owner, learner(1)));
  }
}
