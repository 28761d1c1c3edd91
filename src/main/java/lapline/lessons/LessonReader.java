package lapline.lessons;

import java.util.List;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.MarkdownFile;
import lapline.content.Problems;
import lapline.content.YamlNode;

/** Reads {@code lesson.md} of a unit. */
public final class LessonReader {
  private final ContentFiles files;

  public LessonReader(ContentFiles files) {
    this.files = files;
  }

  public ContentReading<Lesson> read(Unit unit) {
    String path = unit.folder() + "/lesson.md";
    Problems problems = new Problems(path);
    Optional<ContentFile> file = files.read(path, problems);
    Optional<MarkdownFile> page = file.flatMap(f -> MarkdownFile.read(f, problems));
    if (page.isEmpty()) {
      return ContentReading.broken(problems);
    }
    return ContentReading.of(lesson(unit, file.get().version(), page.get(), problems), problems);
  }

  private Lesson lesson(Unit unit, String version, MarkdownFile page, Problems problems) {
    YamlNode facts = page.facts();
    String title = facts.text("title");
    int minutes = facts.wholeNumber("minutes");
    List<Lesson.Source> sources = facts.list("sources").stream().map(LessonReader::source).toList();
    facts.refuseOtherKeys();
    LessonLayout laidOut = new LessonLayout(new DrawingReader(files, unit.folder()), problems);
    List<Segment> segments = laidOut.layOut(page.body(), page.bodyLine());
    return new Lesson(unit.id(), title, version, minutes, sources, laidOut.sections(), segments);
  }

  private static Lesson.Source source(YamlNode node) {
    return new Lesson.Source(node.text("about"), node.text("from"));
  }
}
