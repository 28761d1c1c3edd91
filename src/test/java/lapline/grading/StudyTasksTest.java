package lapline.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import lapline.RowsInMemory;
import lapline.content.ContentFiles;
import lapline.grading.TaskStudyRecords.Agreed;
import lapline.grading.TaskStudyRecords.Tries;
import lapline.grading.TaskStudyRecords.Verdicts;
import lapline.grading.store.StoredTaskStudyRecords;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.TargetsInForce;
import lapline.practice.store.StoredTargetRecords;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What panels say about a practice task, added up on the real schema. */
class StudyTasksTest {
  private static final UUID SHOP = new UUID(0, 1);
  private static final UUID OTHER_SHOP = new UUID(0, 2);
  private static final String PEOPLE =
      """
      insert into workshop (id, name, zone, units, created_at) values
        ('%1$s', 'Shop', 'UTC', 'METRIC', now()), ('%2$s', 'Other shop', 'UTC', 'METRIC', now());
      insert into person (id, workshop_id, name, sign_in_name, units, active, created_at)
        select cast('00000000-0000-0001-0000-00000000000' || x as uuid), '%1$s', 'L' || x, 'l' || x,
          'METRIC', true, now() from system_range(1, 3);
      """
          .formatted(SHOP, OTHER_SHOP);
  private static final String PANEL =
      """
      insert into attempt (id, workshop_id, person_id, task_id, task_version, unit_id, skill_id,
        sheet_code, state, changed_what, revision, started_at, scored_at, practice_score, accepted,
        units) values ('%s', '%s', '%s', '%s', '%s', 'clear', 'clear', '%s', '%s', '', 1,
        timestamp with time zone '2031-01-01 00:00:00Z',
        dateadd(day, %d, timestamp with time zone '2031-01-01 00:00:00Z'), 80, %b, 'METRIC');
      """;

  private final PracticeTasks course = PracticeTasks.read(new ContentFiles(Path.of(".")));
  private final PracticeTask task = course.find("clear/two-coats").orElseThrow();
  private RowsInMemory rows;
  private TaskStudyRecords records;
  private StudyTasks study;
  private int panels;

  @BeforeEach
  void open() throws Exception {
    rows = RowsInMemory.filledBy(PEOPLE);
    records = rows.with(new StoredTaskStudyRecords());
    study =
        new StudyTasks(records, course, new TargetsInForce(rows.with(new StoredTargetRecords())));
  }

  @AfterEach
  void close() {
    rows.close();
  }

  private static Person person(UUID workshop, Role role) {
    return new Person(
        UUID.randomUUID(),
        workshop,
        "A",
        "a",
        Set.of(role),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }

  /** One panel, a day after the one before. */
  private UUID panel(UUID workshop, int who, String state, boolean accepted) {
    return panel(workshop, who, state, accepted, task.version());
  }

  private UUID panel(UUID workshop, int who, String state, boolean accepted, String version) {
    UUID id = UUID.randomUUID();
    panels++;
    rows.put(
        PANEL.formatted(
            id,
            workshop,
            new UUID(1, who),
            task.id(),
            version,
            "s" + panels,
            state,
            panels,
            accepted));
    return id;
  }

  private void verdict(UUID panel, String criterion, String verdict, String share) {
    rows.put(
        "insert into attempt_verdict (attempt_id, criterion_id, judged, verdict, uncertainty_share)"
            + " values ('%s', '%s', %b, %s, %s)"
                .formatted(
                    panel,
                    criterion,
                    verdict != null,
                    verdict == null ? "null" : "'" + verdict + "'",
                    share));
  }

  @Test
  void first_tries_are_told_from_later_ones_person_by_person() {
    panel(SHOP, 1, "RETURNED", false);
    panel(SHOP, 1, "ACCEPTED", true);
    panel(SHOP, 1, "SCORED", true);
    panel(SHOP, 2, "SCORED", true);
    panel(SHOP, 3, "SCORED", false);
    panel(OTHER_SHOP, 3, "SCORED", true);
    assertThat(records.tries(SHOP)).containsExactly(new Tries(task.id(), 5, 3, 3, 1, 2, 2));
    assertThat(study.all(person(SHOP, Role.INSTRUCTOR)))
        .as("every task of the course")
        .hasSameSizeAs(course.all())
        .filteredOn(r -> r.tries().panels() > 0)
        .extracting(r -> r.task().id())
        .containsExactly(task.id());
  }

  @Test
  void verdicts_are_counted_for_the_task_as_it_stands() {
    verdict(panel(SHOP, 1, "SCORED", true), "film", "MET", "0.2");
    verdict(panel(SHOP, 1, "SCORED", true), "film", "DOUBTFUL", "0.4");
    verdict(panel(SHOP, 2, "SCORED", true), "film", "MISSED", "null");
    verdict(panel(SHOP, 2, "SCORED", true), "film", null, "null");
    verdict(panel(SHOP, 2, "SCORED", true, "an older file"), "film", "MET", "0.9");
    verdict(panel(OTHER_SHOP, 3, "SCORED", true), "film", "MET", "0.9");
    Verdicts film = records.verdicts(SHOP, task.id(), task.version()).get(0);
    assertThat(film.uncertaintyShare()).isCloseTo(0.3, within(1e-12));
    assertThat(film).isEqualTo(new Verdicts("film", 1, 1, 1, 1, film.uncertaintyShare(), 2));
  }

  @Test
  void a_target_that_was_changed_begins_anew_and_the_others_go_on() {
    UUID before = panel(SHOP, 1, "SCORED", true);
    verdict(before, "film", "MISSED", "null");
    verdict(before, "gloss-60", "MET", "null");
    rows.put(
        """
        insert into target_override (id, workshop_id, task_id, criterion_id, target, sheet, reason,
          made_by, made_at) values ('%s', '%s', '%s', 'film', '50 to 62 um', 's', 'r', '%s',
          timestamp with time zone '2031-01-02 12:00:00Z')
        """
            .formatted(UUID.randomUUID(), SHOP, task.id(), new UUID(1, 1)));
    UUID since = panel(SHOP, 1, "SCORED", true);
    verdict(since, "film", "MET", "null");
    assertThat(records.verdicts(SHOP, task.id(), task.version()))
        .containsExactlyInAnyOrder(
            new Verdicts("film", 1, 0, 0, 0, null, 0),
            new Verdicts("gloss-60", 1, 0, 0, 0, null, 0));
  }

  @Test
  void numbers_and_eye_are_counted_where_the_eye_has_decided() {
    panel(SHOP, 1, "ACCEPTED", true);
    panel(SHOP, 1, "ACCEPTED", true);
    panel(SHOP, 1, "ACCEPTED", false);
    panel(SHOP, 2, "RETURNED", true);
    IntStream.range(0, 3).forEach(i -> panel(SHOP, 2, "RETURNED", false));
    panel(SHOP, 3, "SCORED", true);
    assertThat(records.agreed(SHOP, task.id())).isEqualTo(new Agreed(2, 1, 1, 3));
  }

  @Test
  void a_task_asks_as_often_after_many_panels_as_after_one() {
    Person instructor = person(SHOP, Role.INSTRUCTOR);
    verdict(panel(SHOP, 1, "SCORED", true), "film", "MET", "0.2");
    long one = rows.statements(() -> study.one(instructor, task.id()));
    for (int i = 0; i < 40; i++) {
      verdict(panel(SHOP, 1 + i % 3, "RETURNED", i % 2 == 0), "film", "MET", "0.2");
    }
    assertThat(rows.statements(() -> study.one(instructor, task.id()))).isEqualTo(one);
    assertThat(one).as("targets in force, tries, verdicts, agreement").isEqualTo(4);
    assertThat(rows.statements(() -> study.all(instructor))).isEqualTo(1);
  }

  @Test
  void what_needs_a_look_comes_first_and_what_nobody_read_is_there() {
    for (int i = 0; i < 12; i++) {
      UUID panel = panel(SHOP, 1, "SCORED", false);
      verdict(panel, task.criteria().get(2).id(), "MISSED", "null");
    }
    TaskStudied studied = study.one(person(SHOP, Role.INSTRUCTOR), task.id());
    assertThat(studied.criteria()).hasSameSizeAs(task.criteria());
    assertThat(studied.criteria().get(0).criterion().id()).isEqualTo(task.criteria().get(2).id());
    assertThat(studied.lookAt()).isEqualTo(1);
    assertThat(studied.isTelling()).isTrue();
    assertThat(study.one(person(OTHER_SHOP, Role.INSTRUCTOR), task.id()).isTelling()).isFalse();
  }

  @Test
  void only_an_instructor_studies_and_only_what_there_is() {
    for (Role role : List.of(Role.APPRENTICE, Role.EXAMINER, Role.OWNER, Role.REGISTRAR)) {
      assertThatThrownBy(() -> study.all(person(SHOP, role)))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(() -> study.one(person(SHOP, role), task.id()))
          .isInstanceOf(NotAllowedException.class);
    }
    assertThatThrownBy(() -> study.one(person(SHOP, Role.INSTRUCTOR), "no/such-task"))
        .isInstanceOf(NotFoundException.class);
  }
}
