package lapline.lessons;

import java.util.List;
import java.util.Optional;

/**
 * How one step of the trade is done and where it goes wrong, with checks inside; read from {@code
 * lesson.md} in the unit's folder.
 *
 * @param unit id of its unit
 * @param version short hash of the file's text
 * @param minutes how long it takes to read and answer
 * @param sections the headings to jump to, in order
 */
public record Lesson(
    String unit,
    String title,
    String version,
    int minutes,
    List<Source> sources,
    List<Section> sections,
    List<Segment> segments) {

  public Lesson {
    sources = List.copyOf(sources);
    sections = List.copyOf(sections);
    segments = List.copyOf(segments);
  }

  /** What stands behind a fact of the lesson. */
  public record Source(String about, String from) {}

  /** A heading: {@code anchor} is its id in the HTML. */
  public record Section(String anchor, String title) {}

  public List<Check> checks() {
    return segments.stream().map(Segment::check).filter(c -> c != null).toList();
  }

  public Optional<Check> check(String id) {
    return checks().stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
