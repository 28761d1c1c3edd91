package lapline.lessons;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lapline.content.Problems;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/**
 * Lays a lesson's prose out as the page shows it: stretches of HTML with the checks and the
 * drawings between them.
 */
final class LessonLayout {
  private static final String CHECK = "check";

  private final DrawingReader drawings;
  private final Problems problems;
  private final LessonHtml html = new LessonHtml();
  private final List<Segment> segments = new ArrayList<>();
  private final List<LessonText.Section> sections = new ArrayList<>();
  private final Set<String> checkIds = new HashSet<>();
  private final StringBuilder prose = new StringBuilder();
  private int linesBefore;

  LessonLayout(DrawingReader drawings, Problems problems) {
    this.drawings = drawings;
    this.problems = problems;
  }

  /** The headings met while laying out. */
  List<LessonText.Section> sections() {
    return sections;
  }

  /**
   * @param bodyLine the line of the file on which {@code markdown} begins
   */
  List<Segment> layOut(String markdown, int bodyLine) {
    linesBefore = bodyLine - 1;
    Node document = html.parse(markdown);
    document.accept(new LessonRefusals(problems, linesBefore));
    for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
      place(block);
    }
    endProse();
    return segments;
  }

  private void place(Node block) {
    if (block instanceof FencedCodeBlock fence && CHECK.equals(fence.getInfo())) {
      endProse();
      readCheck(fence).ifPresent(check -> segments.add(new Segment.Stop(check)));
    } else if (drawingIn(block) instanceof Image image) {
      String caption = html.renderInside(image);
      drawings
          .read(image.getDestination(), line(block), problems)
          .ifPresent(d -> prose.append(d.figure(caption)));
    } else {
      noteSection(block);
      prose.append(html.render(block));
    }
  }

  /** A paragraph that is a drawing and nothing else. */
  private static Node drawingIn(Node block) {
    Node only = block instanceof Paragraph ? block.getFirstChild() : null;
    return only != null && only.getNext() == null ? only : null;
  }

  private Optional<Check> readCheck(FencedCodeBlock fence) {
    return CheckReader.read(fence.getLiteral(), line(fence) + 1, checkIds, problems);
  }

  private void noteSection(Node block) {
    if (block instanceof Heading heading && heading.getLevel() == 2) {
      sections.add(new LessonText.Section(LessonHtml.anchor(heading), LessonHtml.words(heading)));
    }
  }

  private void endProse() {
    if (prose.length() > 0) {
      segments.add(new Segment.Prose(prose.toString()));
      prose.setLength(0);
    }
  }

  private int line(Node node) {
    return LessonRefusals.lineIn(node) + linesBefore;
  }
}
