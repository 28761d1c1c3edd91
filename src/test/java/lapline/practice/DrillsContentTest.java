package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import lapline.content.ContentFiles;
import lapline.content.Problems;
import lapline.content.WrittenProblems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.pages.Messages;
import lapline.practice.fit.CausesNamed;
import org.junit.jupiter.api.Test;

/** The drills as they are written: one for every cause that a result may name. */
class DrillsContentTest {
  private static final ContentFiles FILES = new ContentFiles(Path.of("."));
  private static final Pattern HAZARD =
      Pattern.compile("solvent|compressed air|blow |trigger|the gun|sand(ed|ing)?\\b|blade");

  private final Drills drills = DrillsReader.read(FILES);
  private final WrittenProblems problems = new WrittenProblems(FILES, drills.problems());

  @Test
  void every_rule_of_a_tasks_findings_has_a_drill() {
    for (String path : FILES.list("curriculum", ".yaml")) {
      if (path.contains("/tasks/")) {
        String task = path.replaceAll("curriculum/\\d+-(.*)/tasks/\\d+-(.*)\\.yaml", "$1/$2");
        rules(path).forEach(rule -> hasDrill(task, rule));
      }
    }
    problems.none();
  }

  private static List<YamlNode> rules(String path) {
    Problems own = new Problems(path);
    return FILES
        .read(path, own)
        .flatMap(f -> YamlFile.read(f, own))
        .map(root -> root.optionalList("findings"))
        .orElseThrow();
  }

  private void hasDrill(String task, YamlNode rule) {
    String side = rule.text("side");
    for (String which : side.equals("any") ? List.of("low", "high") : List.of(side)) {
      String finding = rule.text("criterion") + "." + which;
      if (drills.find(task, finding).isEmpty()) {
        problems.add(
            rule.file(),
            rule.line(),
            "no drill for '" + finding + "'",
            "add '" + rule.text("criterion") + "' to the 'for' of one in " + DrillsReader.FILE);
      }
    }
  }

  @Test
  void every_cause_that_the_film_can_name_has_a_drill() {
    for (String cause : CausesNamed.all()) {
      if (drills.find("clear/two-coats", cause).isEmpty()) {
        problems.add(DrillsReader.FILE, "drills:", "no drill for '" + cause + "'", "add one");
      }
    }
    problems.none();
  }

  @Test
  void what_a_drill_is_for_is_there() {
    Messages messages = new Messages();
    Set<String> known = new HashSet<>();
    for (PracticeTask task : PracticeTasks.read(FILES).all()) {
      for (PracticeTask.FindingRule rule : task.findings()) {
        for (String side : List.of("", ".low", ".high")) {
          known.add(rule.criterion() + side);
          known.add(task.id() + ":" + rule.criterion() + side);
        }
      }
    }
    for (Drill drill : drills.all()) {
      drill.meantFor().stream()
          .filter(m -> !known.contains(m) && !messages.has("cause." + m + ".change"))
          .forEach(m -> add(drill, "nothing is called '" + m + "'", "name a cause or a criterion"));
    }
    problems.none();
  }

  @Test
  void every_drill_can_be_done_and_seen_to_be_right_and_warns_of_what_may_hurt() {
    for (Drill drill : drills.all()) {
      String text = String.join(" ", drill.steps());
      if (drill.steps().size() < 3) {
        add(drill, "there are too few steps to follow", "write three or more");
      }
      if (!drill
          .right()
          .matches(
              "(?is).*(\\d|one|two|three|five|six|nine|ten|twenty|twice|none|no |nothing).*")) {
        add(drill, "'right' has no number", "say how often, or how near");
      }
      if (HAZARD.matcher(text).find() && drill.caution().isEmpty()) {
        add(drill, "a hazard comes without a caution", "say what to wear or do");
      }
    }
    problems.none();
  }

  private void add(Drill drill, String whatIsWrong, String whatToWrite) {
    problems.add(DrillsReader.FILE, "id: " + drill.id(), whatIsWrong, whatToWrite);
  }

  @Test
  void a_drill_of_one_task_is_not_shown_under_another_and_a_doubt_has_none() {
    assertThat(id("masking/hatch-lid-aperture", "film.low")).isEqualTo("pull-the-film");
    assertThat(id("clear/two-coats", "film.low")).isEqualTo("even-beat");
    assertThat(id("preparing/flat-panel", "film.low")).isEmpty();
    assertThat(id("clear/two-coats", "arcing")).isEqualTo("straight-walk");
    assertThat(id("clear/two-coats", "arcing.doubt")).isEmpty();
    assertThat(id("clear/two-coats", "distance.high")).isEqualTo("distance-blind");
  }

  private String id(String task, String finding) {
    return drills.find(task, finding).map(Drill::id).orElse("");
  }
}
