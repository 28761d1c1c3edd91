package lapline.lessons;

import java.util.List;
import java.util.Optional;

/**
 * What a lesson says to people who think in one system of units.
 *
 * @param sections the headings to jump to, in order
 */
public record LessonText(List<Source> sources, List<Section> sections, List<Segment> segments) {

  public LessonText {
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
