package lapline.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.content.units.BothUnitsCheck;

/** Reads {@code curriculum/drills.yaml}. */
public final class DrillsReader {
  static final String FILE = "curriculum/drills.yaml";

  /** Which drill is for what, and under which id it stands, so that none is named twice. */
  private final Map<String, String> seen = new HashMap<>();

  private DrillsReader() {}

  /** Never fails: with a problem in the file there is no drill, and the problems say why. */
  public static Drills read(ContentFiles files) {
    Problems problems = new Problems(FILE);
    Optional<ContentFile> text = files.read(FILE, problems);
    List<Drill> all =
        text.flatMap(f -> YamlFile.read(f, problems))
            .map(root -> new DrillsReader().drills(root))
            .orElse(List.of());
    text.ifPresent(f -> BothUnitsCheck.yaml(f.text(), problems));
    ContentReading<List<Drill>> reading = ContentReading.of(all, problems);
    return new Drills(reading.usable().orElse(List.of()), reading.problems());
  }

  private List<Drill> drills(YamlNode root) {
    List<Drill> all = new ArrayList<>();
    root.list("drills").forEach(n -> all.add(drill(n)));
    root.refuseOtherKeys();
    return all;
  }

  private Drill drill(YamlNode node) {
    String id = node.text("id");
    once(node, "id " + id, id);
    node.list("for").forEach(f -> once(f, f.text(), id));
    int minutes = node.wholeNumber("minutes");
    if (minutes < 1 || minutes > Drill.LONGEST) {
      node.problem(
          "a drill of " + minutes + " minutes is none before a panel",
          "write 1 to " + Drill.LONGEST);
    }
    Drill drill =
        new Drill(
            id,
            node.text("title"),
            minutes,
            node.texts("for"),
            node.optionalText("caution").orElse(""),
            node.texts("steps"),
            node.text("right"),
            node.text("source"));
    node.refuseOtherKeys();
    return drill;
  }

  private void once(YamlNode node, String what, String id) {
    String before = seen.put(what, id);
    if (before != null) {
      node.problem(
          "'" + what + "' stands at '" + before + "' already", "name it once, since one is shown");
    }
  }
}
