package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.practice.PracticeTask.Anchor;
import lapline.practice.PracticeTask.FindingRule;
import lapline.practice.PracticeTask.RubricItem;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import lapline.trade.stroke.PassPlan;
import lapline.trade.stroke.ReadingPlan;
import lapline.trade.stroke.Spot;
import lapline.trade.stroke.WrittenPasses;
import org.junit.jupiter.api.Test;

/** The practice tasks and measurands of the course as they lie in the files. */
class PracticeTaskContentTest {
  private static final PracticeTasks COURSE = WrittenPanel.COURSE;

  /** Of the example gun, fan full open, metres. */
  private static final double FAN = 0.23;

  /** Of one reading, as a share of the film. */
  private static final double UNSURE = 0.03;

  /** What a gun card can speak for; a misspelt word would never find its card. */
  private static final Set<String> ON_A_CARD =
      Set.of("", "distance", "pressure", "overlap", "speed", "fan");

  /** Every such thing of the course of which a sentence does not hold, as 'task: thing'. */
  private static <T> List<String> failing(
      Function<PracticeTask, Stream<T>> things, Predicate<T> holds) {
    return COURSE.all().stream()
        .flatMap(
            task ->
                things.apply(task).filter(holds.negate()).map(thing -> task.id() + ": " + thing))
        .toList();
  }

  private static Stream<Criterion> criteria(PracticeTask task) {
    return task.criteria().stream();
  }

  private static Stream<RubricItem> rubric(PracticeTask task) {
    return task.rubric().stream();
  }

  @Test
  void every_task_and_every_measurand_reads_without_a_problem() {
    assertThat(COURSE.problems()).isEmpty();
    assertThat(COURSE.all())
        .extracting(PracticeTask::id)
        .contains(
            "preparing/flat-panel",
            "masking/hatch-lid-aperture",
            "coverage/spray-out-card",
            "coverage/base-over-spot",
            "clear/two-coats");
  }

  @Test
  void every_side_on_which_a_criterion_can_fail_has_a_likely_cause() {
    List<String> untold =
        COURSE.all().stream()
            .flatMap(
                t ->
                    criteria(t)
                        .flatMap(
                            c ->
                                sides(c)
                                    .filter(s -> !isTold(t, c, s))
                                    .map(s -> t.id() + ": " + c.id() + " " + s)))
            .toList();
    assertThat(untold).isEmpty();
  }

  private static Stream<String> sides(Criterion criterion) {
    return Stream.of("low", "high")
        .filter(
            s -> s.equals("low") ? criterion.target().hasLeast() : criterion.target().hasMost());
  }

  private static boolean isTold(PracticeTask task, Criterion criterion, String side) {
    return task.findings().stream()
        .filter(f -> f.criterion().equals(criterion.id()))
        .anyMatch(f -> f.side().equals("any") || f.side().equals(side));
  }

  @Test
  void every_target_of_the_course_is_one_that_a_panel_can_have() {
    assertThat(failing(PracticeTaskContentTest::criteria, PracticeTaskContentTest::isPossible))
        .isEmpty();
  }

  private static boolean isPossible(Criterion c) {
    TargetRange possible = PossibleTarget.of(c, COURSE.measurands());
    return (!c.target().hasLeast() || possible.contains(c.target().least()))
        && (!c.target().hasMost() || possible.contains(c.target().most()));
  }

  @Test
  void every_cause_has_one_change_and_at_least_one_rival() {
    assertThat(failing(t -> t.findings().stream(), PracticeTaskContentTest::isWhole)).isEmpty();
  }

  private static boolean isWhole(FindingRule rule) {
    return !rule.change().isBlank() && !rule.rivals().isEmpty();
  }

  @Test
  void no_rule_stands_behind_another_that_always_comes_first() {
    for (PracticeTask task : COURSE.all()) {
      List<FindingRule> rules = task.findings();
      for (int i = 0; i < rules.size(); i++) {
        FindingRule rule = rules.get(i);
        assertThat(rules.subList(0, i))
            .as(task.id() + ": " + rule)
            .noneMatch(earlier -> alwaysComesBefore(earlier, rule));
      }
    }
  }

  private static boolean alwaysComesBefore(FindingRule earlier, FindingRule later) {
    return earlier.criterion().equals(later.criterion())
        && List.of("any", later.side()).contains(earlier.side())
        && earlier.beyond() <= later.beyond();
  }

  @Test
  void no_criterion_outweighs_all_the_others_and_none_fades_over_more_than_its_target() {
    for (PracticeTask task : COURSE.all()) {
      double all = criteria(task).mapToDouble(Criterion::weight).sum();
      assertThat(criteria(task)).as(task.id()).allMatch(c -> c.weight() <= 0.3 * all);
    }
    assertThat(failing(PracticeTaskContentTest::criteria, PracticeTaskContentTest::fadesSanely))
        .isEmpty();
  }

  /** Points are gone within two widths of a range: else a miss would cost next to nothing. */
  private static boolean fadesSanely(Criterion criterion) {
    TargetRange target = criterion.target();
    boolean twoSided = target.hasLeast() && target.hasMost();
    return !twoSided || criterion.fade() <= target.most() - target.least();
  }

  @Test
  void a_target_is_wide_enough_for_its_instrument_to_show_that_it_is_met() {
    assertThat(failing(PracticeTaskContentTest::criteria, PracticeTaskContentTest::canBeMet))
        .isEmpty();
  }

  /** One reading in the middle of a two-sided target would be met: 1.96 u to either side. */
  private static boolean canBeMet(Criterion criterion) {
    TargetRange target = criterion.target();
    boolean twoSided = target.hasLeast() && target.hasMost();
    double middle = (target.least() + target.most()) / 2;
    return !twoSided
        || COURSE
            .measurands()
            .find(criterion.quantity())
            .map(m -> (target.most() - middle) >= 1.96 * m.uncertaintyAt(middle))
            .orElse(true);
  }

  @Test
  void a_gun_card_is_asked_for_what_it_can_say() {
    assertThat(failing(PracticeTaskContentTest::criteria, c -> ON_A_CARD.contains(c.card())))
        .isEmpty();
  }

  @Test
  void every_source_says_where_a_number_comes_from() {
    Predicate<Criterion> named =
        c ->
            Stream.of("common practice", "course target", "ISO", "usual rule")
                .anyMatch(c.source()::contains);
    assertThat(failing(PracticeTaskContentTest::criteria, named)).isEmpty();
  }

  /** A workshop may set a film of its own, and a sentence with the former range would stay. */
  @Test
  void no_source_repeats_the_film_that_it_was_worked_out_from() {
    for (PracticeTask task : COURSE.all()) {
      for (Criterion film : task.criteria()) {
        String range = words(film);
        assertThat(RestingTargets.on(film, task).staying())
            .noneMatch(c -> c.source().contains(range));
      }
    }
  }

  /** Such as '50 to 65'. */
  private static String words(Criterion c) {
    return Math.round(c.target().least() * 1e6) + " to " + Math.round(c.target().most() * 1e6);
  }

  @Test
  void prose_writes_micrometres_as_a_data_sheet_does() {
    assertThat(
            failing(
                PracticeTaskContentTest::criteria,
                c -> !(c.source() + " " + c.why()).matches(".*\\d um\\b.*")))
        .isEmpty();
  }

  @Test
  void anchors_rise_from_the_worst_mark_and_the_best_is_not_asked_for() {
    assertThat(failing(PracticeTaskContentTest::rubric, PracticeTaskContentTest::rises)).isEmpty();
  }

  private static boolean rises(RubricItem item) {
    List<Integer> marks = item.anchors().stream().map(Anchor::mark).toList();
    return marks.equals(marks.stream().distinct().sorted().toList())
        && item.acceptedFrom() > marks.get(0)
        && item.acceptedFrom() < marks.get(marks.size() - 1);
  }

  @Test
  void every_task_is_watched_for_safe_work_and_says_what_the_data_sheet_decides() {
    assertThat(COURSE.all())
        .allMatch(t -> t.rubric().stream().anyMatch(r -> r.id().equals("conduct") && r.critical()))
        .allMatch(t -> String.join(" ", t.cautions()).contains("local codes"));
  }

  @Test
  void a_task_demands_one_reading_at_least_and_four_at_most() {
    for (PracticeTask task : COURSE.all()) {
      Set<String> demanded =
          task.sections().stream()
              .flatMap(s -> s.fields().stream())
              .filter(PracticeTask.Field::required)
              .map(PracticeTask.Field::measurand)
              .collect(Collectors.toSet());
      assertThat(demanded).as(task.id()).hasSizeBetween(1, 4);
    }
  }

  /**
   * Where a pattern is sought, the places are those of the reading plan but for a few millimetres.
   */
  @Test
  void places_that_show_a_stroke_tell_its_faults_as_well_as_the_best_do() {
    List<PracticeTask> patterned =
        COURSE.all().stream()
            .filter(t -> t.passesPerCoat() > 0)
            .filter(t -> t.panel().places().size() >= ReadingPlan.LEAST)
            .toList();
    assertThat(patterned).isNotEmpty();
    for (PracticeTask task : patterned) {
      List<Spot> places = task.panel().places().stream().map(p -> new Spot(p.x(), p.y())).toList();
      PassPlan plan = plan(task, 0.7);
      List<Spot> best = ReadingPlan.of(plan, places.size(), UNSURE);
      assertThat(ReadingPlan.worth(plan, places, UNSURE))
          .as(task.id())
          .isGreaterThan(ReadingPlan.worth(plan, best, UNSURE) - 0.05);
    }
  }

  /** On the phone's keys a minus may be the longer one. */
  @Test
  void a_first_pass_above_the_edge_is_written_with_a_minus() {
    PracticeTask clear = COURSE.find("clear/two-coats").orElseThrow();
    for (String typed : List.of("-20 mm", "−20", "-2 cm")) {
      PanelReading read =
          PanelReader.read(
              clear, COURSE.measurands(), Map.of("first-pass.c2", typed), UnitSystem.METRIC);
      assertThat(read.problems()).as(typed).isEmpty();
      assertThat(read.entry().of("first-pass").get(0).value()).isCloseTo(-0.02, within(1e-12));
    }
  }

  @Test
  void a_first_pass_below_the_panel_is_told() {
    PracticeTask clear = COURSE.find("clear/two-coats").orElseThrow();
    PanelReading read =
        PanelReader.read(
            clear, COURSE.measurands(), Map.of("first-pass.c1", "450 mm"), UnitSystem.METRIC);
    assertThat(read.problems())
        .extracting(FieldProblem::key)
        .containsExactly("entry.together.first-pass");
  }

  private static PassPlan plan(PracticeTask task, double overlap) {
    List<Map<Integer, Estimate>> nothingWritten = Collections.nCopies(task.coats(), Map.of());
    return new WrittenPasses(
            task.panel().width(),
            task.panel().height(),
            Estimate.of(FAN, 0.04 * FAN),
            (1 - overlap) * FAN,
            nothingWritten)
        .asMeant();
  }

  @Test
  void sections_and_defects_have_names_of_their_own() {
    for (PracticeTask task : COURSE.all()) {
      assertThat(task.sections()).extracting(PracticeTask.Section::id).doesNotHaveDuplicates();
      assertThat(task.defects()).extracting(PracticeTask.DefectKind::id).doesNotHaveDuplicates();
      assertThat(task.rubric()).extracting(RubricItem::id).doesNotHaveDuplicates();
      assertThat(task.criteria()).extracting(Criterion::id).noneMatch(id -> id.matches(".*[./].*"));
    }
  }
}
