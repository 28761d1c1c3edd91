package lapline.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.grading.GradePanel.Bench;
import lapline.grading.GradePanel.Refusal;
import lapline.grading.Grading.Decision;
import lapline.people.LearnerAdvanced;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Anchor;
import lapline.practice.PracticeTask.DefectKind;
import lapline.practice.PracticeTask.RubricItem;
import lapline.practice.RememberedAttempts;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** An instructor accepts or returns a panel by eye, or is told in words why not. */
class GradePanelTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final List<Anchor> ANCHORS =
      List.of(new Anchor(1, "rough"), new Anchor(2, "wavy"), new Anchor(3, "smooth"));

  private final UUID workshop = UUID.randomUUID();
  private final Person apprentice = person(workshop, Role.APPRENTICE);
  private final Person instructor = person(workshop, Role.INSTRUCTOR);
  private final RememberedAttempts attempts = new RememberedAttempts();
  private final RememberedGradings gradings = new RememberedGradings();
  private final List<LearnerAdvanced> told = new ArrayList<>();
  private final GradePanel grade =
      new GradePanel(attempts, gradings, told::add, Clock.fixed(NOW, ZoneOffset.UTC));
  private final Attempt panel = scored(apprentice);

  @Test
  void an_accepted_panel_is_accepted_and_whoever_keeps_standings_is_told() {
    assertThat(run(Decision.ACCEPTED, "", Map.of("texture", 3, "dirt", 1))).isEmpty();
    assertThat(attempts.attempt(panel.id()).orElseThrow().state()).isEqualTo(State.ACCEPTED);
    assertThat(gradings.latest(panel.id()).orElseThrow().grader()).isEqualTo(instructor.id());
    assertThat(told).containsExactly(new LearnerAdvanced(apprentice.id(), workshop, "clear"));
  }

  @Test
  void a_returned_panel_needs_a_remark_and_no_marks() {
    assertThat(keys(run(Decision.RETURNED, "  ", Map.of())))
        .containsExactly("grading.refused.return-remark");
    assertThat(gradings.of(panel.id())).isEmpty();
    assertThat(run(Decision.RETURNED, "Keep the gun square. ", Map.of())).isEmpty();
    assertThat(gradings.latest(panel.id()).orElseThrow().remark())
        .isEqualTo("Keep the gun square.");
    assertThat(attempts.attempt(panel.id()).orElseThrow().state()).isEqualTo(State.RETURNED);
  }

  @Test
  void to_accept_every_item_needs_a_mark_and_the_refusal_names_the_item() {
    assertThat(run(Decision.ACCEPTED, "", Map.of("texture", 3)))
        .containsExactly(new Refusal("dirt", "grading.refused.mark-missing", "Dirt"));
  }

  @Test
  void a_critical_item_one_mark_too_low_keeps_the_panel_from_being_accepted() {
    assertThat(run(Decision.ACCEPTED, "", Map.of("texture", 1, "dirt", 3)))
        .containsExactly(new Refusal("texture", "grading.refused.critical-low", "Texture"));
    assertThat(run(Decision.ACCEPTED, "", Map.of("texture", 2, "dirt", 3))).isEmpty();
  }

  @Test
  void a_mark_that_no_anchor_describes_is_refused() {
    assertThat(keys(run(Decision.RETURNED, "Again.", Map.of("texture", 7))))
        .containsExactly("grading.refused.no-such-mark");
  }

  @Test
  void a_defect_has_to_be_of_the_task_and_on_the_panel_its_edge_included() {
    assertThat(returnWith(new DefectMark("run", 0.6, 0.4, ""))).isEmpty();
    assertThat(returnWith(new DefectMark("run", 0.6001, 0.4, ""))).hasSize(1);
    assertThat(returnWith(new DefectMark("run", -0.0001, 0.1, ""))).hasSize(1);
    assertThat(returnWith(new DefectMark("scrawl", 0.1, 0.1, ""))).hasSize(1);
  }

  @Test
  void nobody_grades_their_own_panel_and_no_draft_is_graded() {
    Person both = person(workshop, Role.INSTRUCTOR, Role.APPRENTICE);
    Attempt own = scored(both);
    assertThat(keys(grade.run(both, own.id(), bench(Decision.RETURNED, "Again.", Map.of()))))
        .containsExactly("grading.refused.own");
    attempts.changeState(panel.id(), State.DRAFT);
    assertThat(keys(run(Decision.RETURNED, "Again.", Map.of())))
        .containsExactly("grading.refused.draft");
  }

  @Test
  void only_an_instructor_of_the_same_workshop_reaches_the_panel() {
    Bench bench = bench(Decision.RETURNED, "Again.", Map.of());
    Person neighbour = person(UUID.randomUUID(), Role.values());
    assertThatThrownBy(() -> grade.run(neighbour, panel.id(), bench))
        .isInstanceOf(NotFoundException.class);
    Person owner = person(workshop, Role.OWNER, Role.APPRENTICE);
    assertThatThrownBy(() -> grade.run(owner, panel.id(), bench))
        .isInstanceOf(NotAllowedException.class);
    assertThat(gradings.of(panel.id())).isEmpty();
  }

  @Test
  void what_was_graded_before_stays_and_the_latest_comes_first() {
    run(Decision.RETURNED, "Dry along the top.", Map.of());
    run(Decision.ACCEPTED, "Seen in daylight: good.", Map.of("texture", 3, "dirt", 3));
    assertThat(gradings.of(panel.id()))
        .extracting(Grading::decision)
        .containsExactly(Decision.ACCEPTED, Decision.RETURNED);
  }

  @Test
  void who_decides_without_having_seen_what_a_colleague_decided_is_told() {
    Person colleague = person(workshop, Role.INSTRUCTOR);
    Bench bench = bench(Decision.RETURNED, "Dry along the top.", Map.of());
    assertThat(grade.run(colleague, panel.id(), bench, null)).isEmpty();
    assertThat(keys(grade.run(instructor, panel.id(), bench, null)))
        .containsExactly(GradePanel.DECIDED_SINCE);
    assertThat(gradings.of(panel.id())).hasSize(1);
    UUID seen = gradings.latest(panel.id()).orElseThrow().id();
    assertThat(grade.run(instructor, panel.id(), bench, seen)).as("now they have").isEmpty();
  }

  @Test
  void what_is_put_down_is_kept_for_its_instructor_alone_until_the_decision() {
    KeepGrading keep = new KeepGrading(attempts, gradings, Clock.fixed(NOW, ZoneOffset.UTC));
    DefectMark placed = new DefectMark("run", 0.1, 0.1, "");
    keep.run(instructor, panel.id(), "Dry", Map.of("texture", 2), List.of(placed));
    keep.run(instructor, panel.id(), "Dry along the top.", Map.of("texture", 1, "made-up", 3));
    UnfinishedGrading kept = keep.of(instructor, panel.id()).orElseThrow();
    assertThat(kept.remark()).isEqualTo("Dry along the top.");
    assertThat(kept.marks()).isEqualTo(Map.of("texture", 1));
    assertThat(kept.defects()).containsExactly(placed);
    assertThat(keep.of(person(workshop, Role.INSTRUCTOR), panel.id())).isEmpty();
    assertThatThrownBy(() -> keep.run(apprentice, panel.id(), "Mine.", Map.of()))
        .isInstanceOf(NotAllowedException.class);

    run(Decision.RETURNED, "Dry along the top.", Map.of());
    assertThat(keep.of(instructor, panel.id())).isEmpty();
  }

  private List<Refusal> run(Decision decision, String remark, Map<String, Integer> marks) {
    return grade.run(instructor, panel.id(), bench(decision, remark, marks));
  }

  private List<Refusal> returnWith(DefectMark defect) {
    Bench bench = new Bench(Decision.RETURNED, "Look here.", Map.of(), List.of(defect));
    return grade.run(instructor, panel.id(), bench);
  }

  private static Bench bench(Decision decision, String remark, Map<String, Integer> marks) {
    return new Bench(decision, remark, marks, List.of());
  }

  private static List<String> keys(List<Refusal> refusals) {
    return refusals.stream().map(Refusal::key).toList();
  }

  private Attempt scored(Person by) {
    Attempt draft =
        new Attempt(
            UUID.randomUUID(),
            by.workshop(),
            by.id(),
            "clear/invented",
            "v1",
            "clear",
            "clear",
            UUID.randomUUID().toString(),
            "",
            null,
            by.units(),
            State.DRAFT,
            0,
            NOW,
            null);
    attempts.add(draft);
    Attempt scored = draft.judged("v1", new Attempt.Outcome(NOW, 91, true));
    PanelScore score = new PanelScore(91, true, List.of(), List.of(), List.of(), null, null, "1");
    attempts.keepJudgement(scored, "key", task(), score);
    return scored;
  }

  private static PracticeTask task() {
    return new PracticeTask(
        "clear/invented",
        "clear",
        "An invented panel",
        "v1",
        "clear",
        "",
        new PanelOutline(0.6, 0.4, List.of(), List.of(), List.of()),
        1,
        1,
        4,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            new RubricItem("texture", "Texture", true, 2, ANCHORS),
            new RubricItem("dirt", "Dirt", false, 2, ANCHORS)),
        List.of(new DefectKind("run", "Run", "a drop with a tail")),
        List.of());
  }

  private static Person person(UUID workshop, Role... roles) {
    return new Person(
        UUID.randomUUID(),
        workshop,
        "Somebody Invented",
        "somebody",
        Set.of(roles),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }
}
