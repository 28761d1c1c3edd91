package lapline.lessons;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import lapline.content.units.NumberAndUnit;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Markdown as safe HTML: raw HTML comes out as the letters typed, links only to the web, headings
 * can be jumped to, and a quotation that begins with <strong>Caution</strong> is marked as one.
 */
final class LessonHtml {
  static final String CAUTION = "Caution";

  private final Parser parser;
  private final HtmlRenderer renderer;

  LessonHtml() {
    List<Extension> extensions = List.of(TablesExtension.create());
    parser =
        Parser.builder()
            .extensions(extensions)
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .build();
    renderer =
        HtmlRenderer.builder()
            .extensions(extensions)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .attributeProviderFactory(context -> LessonHtml::mark)
            .build();
  }

  Node parse(String markdown) {
    Node page = parser.parse(markdown);
    page.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            text.setLiteral(NumberAndUnit.together(text.getLiteral()));
          }
        });
    return page;
  }

  String render(Node node) {
    return renderer.render(node);
  }

  /** The HTML of what a node holds, without the node itself. */
  String renderInside(Node node) {
    StringBuilder inside = new StringBuilder();
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      inside.append(renderer.render(child));
    }
    return inside.toString();
  }

  /** The words of a node, without marks. */
  static String words(Node node) {
    StringBuilder words = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }
        });
    return words.toString();
  }

  static String anchor(Heading heading) {
    return words(heading).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  static boolean isCaution(Node node) {
    Node first = node instanceof BlockQuote ? node.getFirstChild() : null;
    return first instanceof Paragraph
        && first.getFirstChild() instanceof StrongEmphasis strong
        && words(strong).startsWith(CAUTION);
  }

  private static void mark(Node node, String tag, Map<String, String> attributes) {
    if (isCaution(node)) {
      attributes.put("class", "caution");
      attributes.put("role", "note");
    }
    if (node instanceof Heading heading) {
      attributes.put("id", anchor(heading));
    }
    if (node instanceof TableBlock) {
      attributes.put("class", "facts");
      // it scrolls sideways on a telephone, and then by the keyboard too
      attributes.put("tabindex", "0");
    }
  }
}
