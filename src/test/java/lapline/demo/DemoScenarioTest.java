package lapline.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lapline.content.ContentFiles;
import lapline.practice.PanelReader;
import lapline.practice.PanelReading;
import lapline.practice.PanelScorer;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The invented panels of the demo are readable, scored by the scorer alone, and get better. */
class DemoScenarioTest {
  private static final PracticeTasks COURSE = PracticeTasks.read(new ContentFiles(Path.of(".")));
  private static final long SEED = 20;

  private record Judged(PracticeTask task, boolean early, double score, boolean accepted) {}

  @Test
  void the_plan_has_more_than_two_hundred_panels() {
    assertThat(DemoPlan.ALL.stream().mapToInt(DemoPlan::allPanels).sum()).isGreaterThan(200);
  }

  @Test
  void all_invented_readings_are_understood_in_both_unit_systems() {
    for (PracticeTask task : COURSE.all()) {
      for (UnitSystem units : UnitSystem.values()) {
        Random chance = new Random(SEED);
        for (int i = 0; i < 5; i++) {
          assertThat(read(task, units, form(i, chance), chance).problems())
              .as("%s in %s, seed %d", task.id(), units, SEED)
              .isEmpty();
        }
      }
    }
  }

  @Test
  void every_task_is_failed_by_some_beginners_and_met_by_most_of_the_practised() {
    for (PracticeTask task : COURSE.all()) {
      List<Judged> all = judged(task);
      double first = share(all.stream().filter(Judged::early).toList());
      double last = share(all.stream().filter(j -> !j.early()).toList());
      assertThat(first).as("beginners at %s", task.id()).isLessThan(0.7);
      assertThat(last).as("practised at %s", task.id()).isGreaterThanOrEqualTo(0.6);
      assertThat(mean(all, false)).isGreaterThan(mean(all, true));
    }
  }

  @Test
  void the_same_seed_invents_the_same_panels() {
    PracticeTask task = COURSE.all().get(COURSE.all().size() - 1);
    assertThat(typed(task, 1)).isEqualTo(typed(task, 1)).isNotEqualTo(typed(task, 2));
  }

  private static Map<String, String> typed(PracticeTask task, long seed) {
    Random chance = new Random(seed);
    Form form = form(0, chance);
    return new InventedPanel(new PanelDay(task, form, chance))
        .typed(COURSE.measurands(), UnitSystem.METRIC);
  }

  private static List<Judged> judged(PracticeTask task) {
    Random chance = new Random(SEED);
    List<Judged> all = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      boolean early = i % 2 == 0;
      Form form = form(early ? 0 : 8, chance);
      var score = PanelScorer.score(task, read(task, UnitSystem.METRIC, form, chance).entry());
      all.add(new Judged(task, early, score.practiceScore(), score.accepted()));
    }
    return all;
  }

  private static Form form(int panelsBefore, Random chance) {
    return Form.after(0.8, panelsBefore, Fault.values()[chance.nextInt(5)], chance);
  }

  private static PanelReading read(PracticeTask task, UnitSystem units, Form form, Random chance) {
    var panel = new InventedPanel(new PanelDay(task, form, chance));
    return PanelReader.read(
        task, COURSE.measurands(), panel.typed(COURSE.measurands(), units), units);
  }

  private static double share(List<Judged> some) {
    return some.stream().filter(Judged::accepted).count() / (double) some.size();
  }

  private static double mean(List<Judged> all, boolean early) {
    return all.stream()
        .filter(j -> j.early() == early)
        .mapToDouble(Judged::score)
        .average()
        .orElseThrow();
  }
}
