package lapline.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import lapline.content.ContentFiles;
import lapline.practice.PanelReader;
import lapline.practice.PanelReading;
import lapline.practice.PanelScore;
import lapline.practice.PanelScorer;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The invented panels of the demo are readable, scored by the scorer alone, and get better. */
class DemoScenarioTest {
  private static final PracticeTasks COURSE = PracticeTasks.read(new ContentFiles(Path.of(".")));
  private static final long SEED = 20;
  private static final int MANY = 40;

  private record Judged(double score, boolean accepted) {}

  @Test
  void the_plan_has_more_than_two_hundred_panels() {
    assertThat(DemoPlan.ALL.stream().mapToInt(DemoPlan::allPanels).sum()).isGreaterThan(200);
  }

  @Test
  void all_invented_readings_are_understood_in_both_unit_systems() {
    for (PracticeTask task : COURSE.all()) {
      for (UnitSystem units : UnitSystem.values()) {
        SplittableRandom chance = new SplittableRandom(SEED);
        for (int i = 0; i < 5; i++) {
          assertThat(read(task, units, form(i, chance), chance).problems())
              .as("%s in %s, seed %d", task.id(), units, SEED)
              .isEmpty();
        }
      }
    }
  }

  @Test
  void nothing_is_read_finer_than_the_rule_the_cup_or_the_gauge_shows() {
    SplittableRandom chance = new SplittableRandom(SEED);
    for (PracticeTask task : COURSE.all()) {
      for (int i = 0; i < 5; i++) {
        Map<String, String> typed = typed(task, chance.nextLong());
        assertThat(typed)
            .as("%s, seed %d", task.id(), SEED)
            .isNotEmpty()
            .allSatisfy((cell, text) -> assertThat(text).matches(asRead(cell)));
      }
    }
  }

  /** Only what is no length, amount, film or share is read to a decimal. */
  private static String asRead(String cell) {
    return switch (cell.replaceAll("[.].*", "")) {
      case "fluid-turns", "fan-turns" -> "\\d+(\\.(25|5|75))?";
      case "air-temperature", "panel-temperature" -> "\\d+(\\.5)?";
      case "gloss-60", "gloss-20", "stroke-time", "tape-used" -> "\\d+(\\.\\d)?";
      case "tip-size" -> "1\\.\\d{1,2}";
      default -> "\\d+|\\d\\d:\\d\\d|P?\\d+|[A-Z][a-z ]+";
    };
  }

  /**
   * Over five and six other seeds (200 and 240 panels a task) 80 to 97 of 100 practised panels were
   * accepted, fewest under clear. At 80 of 100, chance would leave no more than seven in ten of
   * {@value #MANY} about once in eleven times: so the seed here is fixed.
   */
  @Test
  void every_task_is_failed_by_most_beginners_and_met_by_most_of_the_practised() {
    for (PracticeTask task : COURSE.all()) {
      List<Judged> beginners = judged(task, 0);
      List<Judged> practised = judged(task, 8);
      assertThat(share(beginners)).as("beginners at %s", task.id()).isLessThan(0.3);
      assertThat(share(practised)).as("practised at %s", task.id()).isGreaterThan(0.7);
      assertThat(mean(practised)).isGreaterThan(mean(beginners));
    }
  }

  @Test
  void who_is_stuck_misses_three_panels_in_a_row_in_the_same_way() {
    var units = COURSE.all().stream().map(PracticeTask::unit).distinct().toList();
    DemoChapter stuck =
        DemoChapter.all(units).stream()
            .filter(c -> c.plan().number() == DemoPlan.STUCK && c.isLatest())
            .findFirst()
            .orElseThrow();
    PracticeTask task = COURSE.ofUnit(stuck.unit()).get(0);
    var chance = stuck.chance();
    List<String> first =
        stuck.plan().forms(stuck.number(), chance).stream()
            .map(form -> score(task, form, chance))
            .map(score -> score.findings().get(0).id())
            .toList();
    assertThat(first).hasSizeGreaterThanOrEqualTo(3);
    assertThat(Set.copyOf(first.subList(first.size() - 3, first.size()))).hasSize(1);
  }

  @Test
  void the_last_panel_of_everybody_is_wanted_when_the_plan_says_and_no_unit_runs_into_the_next() {
    Instant now = Instant.parse("2031-03-04T14:05:00Z");
    var units = COURSE.all().stream().map(PracticeTask::unit).distinct().toList();
    for (DemoChapter chapter : DemoChapter.all(units)) {
      DemoPlan plan = chapter.plan();
      Instant last = chapter.panel(plan.panels().get(chapter.number()) - 1, now);
      if (chapter.isLatest()) {
        Instant planned = now.minus(Duration.ofDays(plan.ended())).minus(Duration.ofHours(2));
        assertThat(last).as("%s", chapter).isEqualTo(planned);
      } else {
        DemoChapter next = new DemoChapter(plan, chapter.number() + 1, "");
        assertThat(last).as("%s", chapter).isBefore(next.panel(0, now));
      }
    }
  }

  @Test
  void the_same_seed_invents_the_same_panels() {
    PracticeTask task = COURSE.all().get(COURSE.all().size() - 1);
    assertThat(typed(task, 1)).isEqualTo(typed(task, 1)).isNotEqualTo(typed(task, 2));
  }

  private static Map<String, String> typed(PracticeTask task, long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    Form form = form(0, chance);
    return new InventedPanel(new PanelDay(task, form, chance))
        .typed(COURSE.measurands(), UnitSystem.METRIC);
  }

  private static List<Judged> judged(PracticeTask task, int panelsBefore) {
    var chance = new SplittableRandom(SEED);
    return Stream.generate(() -> form(panelsBefore, chance))
        .limit(MANY)
        .map(form -> score(task, form, chance))
        .map(score -> new Judged(score.practiceScore(), score.accepted()))
        .toList();
  }

  private static PanelScore score(PracticeTask task, Form form, RandomGenerator chance) {
    return PanelScorer.score(task, read(task, UnitSystem.METRIC, form, chance).entry());
  }

  private static Form form(int panelsBefore, RandomGenerator chance) {
    return Form.after(0.8, panelsBefore, Fault.values()[chance.nextInt(5)], chance);
  }

  private static PanelReading read(
      PracticeTask task, UnitSystem units, Form form, RandomGenerator chance) {
    var panel = new InventedPanel(new PanelDay(task, form, chance));
    return PanelReader.read(
        task, COURSE.measurands(), panel.typed(COURSE.measurands(), units), units);
  }

  private static double share(List<Judged> some) {
    return some.stream().filter(Judged::accepted).count() / (double) some.size();
  }

  private static double mean(List<Judged> all) {
    return all.stream().mapToDouble(Judged::score).average().orElseThrow();
  }
}
