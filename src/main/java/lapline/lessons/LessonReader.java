package lapline.lessons;

import java.util.List;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.MarkdownFile;
import lapline.content.Problems;
import lapline.content.YamlNode;
import lapline.content.units.BothUnits;
import lapline.content.units.BothUnitsCheck;
import lapline.content.units.PerSystem;
import lapline.trade.measure.UnitSystem;

/**
 * Reads {@code lesson.md} of a unit, once for each system of units. The quantities are filled in
 * before anything else, so that a bar between two of them ends no cell of a table.
 */
public final class LessonReader {
  private final ContentFiles files;

  public LessonReader(ContentFiles files) {
    this.files = files;
  }

  public ContentReading<Lesson> read(Unit unit) {
    String path = unit.folder() + "/lesson.md";
    Problems problems = new Problems(path);
    Optional<ContentFile> file = files.read(path, problems);
    file.ifPresent(f -> BothUnitsCheck.check(f.text(), problems));
    Optional<Lesson> metric = file.flatMap(f -> lesson(unit, f, UnitSystem.METRIC, problems));
    if (metric.isEmpty() || !problems.none()) {
      return ContentReading.broken(problems);
    }
    return file.flatMap(f -> lesson(unit, f, UnitSystem.US, problems))
        .map(us -> ContentReading.of(both(metric.get(), us), problems))
        .orElseGet(() -> ContentReading.broken(problems));
  }

  private static Lesson both(Lesson metric, Lesson us) {
    PerSystem<LessonText> texts = new PerSystem<>(metric.texts().metric(), us.texts().us());
    return new Lesson(metric.unit(), metric.title(), metric.version(), metric.minutes(), texts);
  }

  private Optional<Lesson> lesson(
      Unit unit, ContentFile file, UnitSystem system, Problems problems) {
    ContentFile filled = new ContentFile(file.path(), BothUnits.in(file.text(), system));
    return MarkdownFile.read(filled, problems)
        .map(page -> lesson(unit, file.version(), page, system, problems));
  }

  private Lesson lesson(
      Unit unit, String version, MarkdownFile page, UnitSystem system, Problems problems) {
    YamlNode facts = page.facts();
    String title = facts.text("title");
    int minutes = facts.wholeNumber("minutes");
    var sources = facts.list("sources").stream().map(LessonReader::source).toList();
    facts.refuseOtherKeys();
    DrawingReader drawings = new DrawingReader(files, unit.folder(), system);
    LessonLayout laidOut = new LessonLayout(drawings, problems);
    List<Segment> segments = laidOut.layOut(page.body(), page.bodyLine());
    LessonText text = new LessonText(sources, laidOut.sections(), segments);
    return new Lesson(unit.id(), title, version, minutes, new PerSystem<>(text, text));
  }

  private static LessonText.Source source(YamlNode node) {
    return new LessonText.Source(node.text("about"), node.text("from"));
  }
}
