package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentReading;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.content.units.BothUnitsCheck;
import lapline.practice.PracticeTask.Anchor;
import lapline.practice.PracticeTask.DefectKind;
import lapline.practice.PracticeTask.Field;
import lapline.practice.PracticeTask.FindingRule;
import lapline.practice.PracticeTask.MixPart;
import lapline.practice.PracticeTask.RubricItem;
import lapline.practice.PracticeTask.Section;

/**
 * Reads a practice task, from a file of the course or given inline (JSON is YAML); tells all
 * problems at once with their lines.
 */
public final class PracticeTaskReader {
  private static final List<String> SIDES = List.of("low", "high", "any");

  private final Measurands measurands;

  public PracticeTaskReader(Measurands measurands) {
    this.measurands = measurands;
  }

  public ContentReading<PracticeTask> read(ContentFile file) {
    Problems problems = new Problems(file.path());
    Optional<YamlNode> root = YamlFile.read(file, problems);
    BothUnitsCheck.yaml(file.text(), problems);
    return ContentReading.of(root.map(r -> task(r, file)).orElse(null), problems);
  }

  private PracticeTask task(YamlNode root, ContentFile file) {
    String id = file.id().replace("/tasks/", "/");
    PanelOutline panel = new PanelOutlineReader().read(root.map("panel"));
    List<Section> sections = root.list("sections").stream().map(s -> section(s, panel)).toList();
    List<Criterion> criteria = new CriterionReader(measurands).readAll(root.list("criteria"));
    int coats = root.wholeNumber("coats", 0);
    PracticeTask task =
        new PracticeTask(
            id,
            id.contains("/") ? id.substring(0, id.indexOf('/')) : id,
            root.text("title"),
            file.version(),
            root.text("skill"),
            root.text("purpose"),
            panel,
            coats,
            root.wholeNumber("coats-needed", coats),
            root.wholeNumber("passes-per-coat", 0),
            root.texts("prepare"),
            root.texts("cautions"),
            sections,
            criteria,
            root.optionalList("findings").stream().map(f -> finding(f, criteria)).toList(),
            root.optionalList("rubric").stream().map(PracticeTaskReader::rubric).toList(),
            root.optionalList("defects").stream().map(PracticeTaskReader::defect).toList(),
            root.optionalList("mix").stream().map(PracticeTaskReader::mixPart).toList());
    root.refuseOtherKeys();
    TaskChecks.run(task, measurands, root);
    return task;
  }

  private Section section(YamlNode node, PanelOutline panel) {
    Section section =
        new Section(
            node.text("id"),
            node.text("title"),
            node.optionalText("note").orElse(""),
            node.list("fields").stream().map(f -> field(f, panel)).toList());
    node.refuseOtherKeys();
    return section;
  }

  private Field field(YamlNode node, PanelOutline panel) {
    String id = node.text("measurand");
    Optional<Measurand> measurand = measurands.find(id);
    Field field =
        new Field(
            id,
            measurand.map(Measurand::scope).orElse(null),
            measurand.map(Measurand::between).orElse(false),
            node.yesNo("required", false),
            node.optionalTexts("steps"),
            places(node, panel),
            node.wholeNumber("places-needed", 0));
    if (measurand.isEmpty()) {
      node.problem(
          "there is no measurand '" + field.measurand() + "'",
          "take an id from curriculum/measurands.yaml, or add it there");
    } else if (measurand.get().scope() == Scope.STEP && field.steps().isEmpty()) {
      node.problem("this is read step by step", "name the steps under 'steps:'");
    }
    node.refuseOtherKeys();
    return field;
  }

  private static List<Integer> places(YamlNode node, PanelOutline panel) {
    List<Integer> places = new ArrayList<>();
    for (YamlNode item : node.optionalList("places")) {
      int number = (int) item.number();
      if (panel.place(number).isEmpty()) {
        item.problem("the panel has no place " + number, "use a number from the panel's places");
      }
      places.add(number);
    }
    return places;
  }

  private static FindingRule finding(YamlNode node, List<Criterion> criteria) {
    String criterion = node.text("criterion");
    if (criteria.stream().noneMatch(c -> c.id().equals(criterion))) {
      node.problem(
          "this task has no criterion '" + criterion + "'", "use the id of one of its criteria");
    }
    FindingRule rule =
        new FindingRule(
            criterion,
            node.oneOf("side", SIDES),
            beyond(node, criteria, criterion),
            node.text("cause"),
            node.text("change"),
            node.optionalTexts("rivals"));
    node.refuseOtherKeys();
    return rule;
  }

  private static double beyond(YamlNode node, List<Criterion> criteria, String id) {
    return criteria.stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .flatMap(c -> node.at("beyond").map(n -> QuantityText.value(n, c.dimension())))
        .orElse(0.0);
  }

  private static RubricItem rubric(YamlNode node) {
    List<Anchor> anchors = new ArrayList<>();
    for (YamlNode a : node.list("anchors")) {
      anchors.add(new Anchor(a.wholeNumber("mark"), a.text("looks-like")));
      a.refuseOtherKeys();
    }
    RubricItem item =
        new RubricItem(
            node.text("id"),
            node.text("label"),
            node.yesNo("critical", false),
            node.wholeNumber("accepted-from"),
            anchors);
    if (anchors.stream().noneMatch(a -> a.mark() == item.acceptedFrom())) {
      node.problem("no anchor has the mark " + item.acceptedFrom(), "use the mark of an anchor");
    }
    node.refuseOtherKeys();
    return item;
  }

  private static DefectKind defect(YamlNode node) {
    DefectKind kind = new DefectKind(node.text("id"), node.text("label"), node.text("looks-like"));
    node.refuseOtherKeys();
    return kind;
  }

  private static MixPart mixPart(YamlNode node) {
    MixPart part = new MixPart(node.text("name"), node.number("parts"));
    if (!(part.parts() > 0)) {
      node.problem("a part of a mix is more than 0", "write 2 for two parts");
    }
    node.refuseOtherKeys();
    return part;
  }
}
