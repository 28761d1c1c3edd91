package lapline.lessons;

import lapline.content.Problems;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** What a lesson's prose may not hold, told with its line. */
final class LessonRefusals extends AbstractVisitor {
  private final Problems problems;
  private final int linesBefore;

  LessonRefusals(Problems problems, int linesBefore) {
    this.problems = problems;
    this.linesBefore = linesBefore;
  }

  /** The line of the prose a node stands on, counted from 1. */
  static int lineIn(Node node) {
    return node.getSourceSpans().isEmpty() ? 0 : node.getSourceSpans().get(0).getLineIndex() + 1;
  }

  @Override
  public void visit(HtmlBlock html) {
    refuse(html, "there is raw HTML here", "write it in Markdown; HTML is shown as it is typed");
  }

  @Override
  public void visit(HtmlInline html) {
    refuse(html, "there is raw HTML here", "write it in Markdown; HTML is shown as it is typed");
  }

  @Override
  public void visit(Heading heading) {
    if (heading.getLevel() == 1) {
      refuse(heading, "the page has its title already", "begin headings with ## or ###");
    }
    visitChildren(heading);
  }

  @Override
  public void visit(Image image) {
    boolean alone = image.getPrevious() == null && image.getNext() == null;
    boolean inTopParagraph =
        image.getParent() instanceof Paragraph p && p.getParent() instanceof Document;
    if (!alone || !inTopParagraph) {
      refuse(image, "a drawing stands in the middle of a text", "give it a paragraph of its own");
    }
  }

  @Override
  public void visit(Link link) {
    if (!link.getDestination().startsWith("https://") && !link.getDestination().startsWith("#")) {
      refuse(
          link,
          "the link '" + link.getDestination() + "' leads nowhere safe",
          "begin it with https:// or with # and a heading of this lesson");
    }
    visitChildren(link);
  }

  @Override
  public void visit(FencedCodeBlock fence) {
    if (!(fence.getParent() instanceof Document)) {
      refuse(fence, "a check stands inside a list or a caution", "move it out to the left margin");
    } else if (!"check".equals(fence.getInfo())) {
      refuse(fence, "'" + fence.getInfo() + "' is no kind of block", "write ```check");
    }
  }

  private void refuse(Node node, String whatIsWrong, String whatToWrite) {
    problems.add(lineIn(node) + linesBefore, whatIsWrong, whatToWrite);
  }
}
