package lapline.practice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.practice.PracticeTask.Field;
import lapline.practice.PracticeTask.MixPart;
import lapline.practice.quantity.PanelQuantities;

/**
 * What has to fit together in a task file though each part is right by itself: every criterion can
 * be judged from what is asked for, and something keeps a bad panel from being accepted.
 */
final class TaskChecks {
  /** Quantities that refer to the target of the film build. */
  private static final Set<String> OF_THE_BUILD =
      Set.of(PanelQuantities.FILM_SHARE, "film-plan", "film-spots");

  private final PracticeTask task;
  private final Measurands measurands;
  private final YamlNode root;

  private TaskChecks(PracticeTask task, Measurands measurands, YamlNode root) {
    this.task = task;
    this.measurands = measurands;
    this.root = root;
  }

  static void run(PracticeTask task, Measurands measurands, YamlNode root) {
    TaskChecks checks = new TaskChecks(task, measurands, root);
    checks.somethingIsCritical();
    checks.nothingIsAskedTwice();
    checks.stepsArePartsOfTheMix();
    List<YamlNode> nodes = root.optionalList("criteria");
    for (int i = 0; i < task.criteria().size() && i < nodes.size(); i++) {
      checks.canBeJudged(task.criteria().get(i), nodes.get(i));
    }
  }

  private void somethingIsCritical() {
    if (task.criteria().stream().noneMatch(Criterion::critical)) {
      root.at("criteria")
          .orElse(root)
          .problem(
              "no criterion is critical, so every panel would be accepted",
              "write 'critical: yes' where a panel must not fail");
    }
  }

  private void nothingIsAskedTwice() {
    Set<String> seen = new HashSet<>();
    for (YamlNode section : root.optionalList("sections")) {
      for (YamlNode field : section.optionalList("fields")) {
        String id = field.optionalText("measurand").orElse("");
        if (!seen.add(id)) {
          field.problem("'" + id + "' is asked for twice", "leave it in one section");
        }
      }
    }
  }

  private void stepsArePartsOfTheMix() {
    List<String> parts = task.mix().stream().map(MixPart::name).toList();
    boolean differ =
        task.field("mix-amount").map(Field::steps).filter(s -> !s.equals(parts)).isPresent();
    if (differ && !parts.isEmpty()) {
      root.at("mix")
          .orElse(root)
          .problem(
              "the parts of the mix are not the steps of 'mix-amount'",
              "name the same parts in the same order in both");
    }
  }

  private void canBeJudged(Criterion criterion, YamlNode node) {
    String quantity = criterion.quantity();
    boolean known =
        measurands.find(quantity).isPresent() || PanelQuantities.find(quantity).isPresent();
    if (known) {
      isAskedFor(criterion.sources(), quantity, node);
    }
    if (OF_THE_BUILD.contains(quantity) && hasNoBuild()) {
      node.problem(
          "'" + quantity + "' needs the range of the film", "add a criterion on 'film-build'");
    }
    if (quantity.equals("mix-ratio") && task.mix().isEmpty()) {
      node.problem("the task names no mix", "add the parts of the sheet under 'mix:'");
    }
    if (quantity.equals("blend-room") && hasNoSpot()) {
      node.problem("the panel has no primer spot", "draw it as a feature of 'kind: spot'");
    }
  }

  private void isAskedFor(List<String> measurands, String quantity, YamlNode node) {
    if (measurands.stream().noneMatch(m -> task.field(m).isPresent())) {
      node.problem(
          "nothing that '" + quantity + "' is taken from is asked for",
          "add to a section: " + String.join(", ", measurands));
    }
  }

  private boolean hasNoBuild() {
    return task.criteria().stream().noneMatch(c -> c.quantity().equals(PanelQuantities.FILM));
  }

  private boolean hasNoSpot() {
    return task.panel().features().stream().noneMatch(f -> f.kind().equals("spot"));
  }
}
