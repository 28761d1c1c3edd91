package lapline.lessons;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentId;
import lapline.content.ContentReading;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;

/** Reads the course: every folder of {@code curriculum/} with a {@code unit.yaml} is a unit. */
public final class CurriculumReader {
  private static final String UNIT_FILE = "/unit.yaml";

  private final ContentFiles files;
  private final LessonReader lessonReader;

  public CurriculumReader(ContentFiles files) {
    this.files = files;
    this.lessonReader = new LessonReader(files);
  }

  /** Never fails: a broken unit or lesson is left out and told among the problems. */
  public Curriculum read() {
    List<Unit> units = new ArrayList<>();
    Map<String, Lesson> lessons = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (String path : files.list("curriculum", UNIT_FILE)) {
      ContentReading<Unit> reading = readUnit(path);
      problems.addAll(reading.problems());
      reading.usable().ifPresent(unit -> addUnit(unit, units, lessons, problems));
    }
    return new Curriculum(units, lessons, problems);
  }

  private void addUnit(
      Unit unit, List<Unit> units, Map<String, Lesson> lessons, List<Problem> problems) {
    if (units.stream().anyMatch(u -> u.id().equals(unit.id()))) {
      problems.add(
          new Problem(
              unit.folder() + UNIT_FILE,
              0,
              "there is another unit '" + unit.id() + "'",
              "name the folder otherwise; the number in front does not tell them apart"));
      return;
    }
    units.add(unit);
    ContentReading<Lesson> reading = lessonReader.read(unit);
    problems.addAll(reading.problems());
    reading.usable().ifPresent(lesson -> lessons.put(unit.id(), lesson));
  }

  private ContentReading<Unit> readUnit(String path) {
    Problems problems = new Problems(path);
    Optional<ContentFile> file = files.read(path, problems);
    Optional<YamlNode> facts = file.flatMap(f -> YamlFile.read(f, problems));
    return ContentReading.of(facts.map(f -> unit(path, f)).orElse(null), problems);
  }

  private static Unit unit(String path, YamlNode facts) {
    String folder = path.substring(0, path.length() - UNIT_FILE.length());
    Unit unit =
        new Unit(
            ContentId.of(path),
            folder,
            facts.text("title"),
            facts.text("what"),
            facts.text("skill"));
    facts.refuseOtherKeys();
    return unit;
  }
}
