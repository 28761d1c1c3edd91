package lapline.lessons;

import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * What a drawing may hold: named shapes and words that take the page's ink; nothing that runs,
 * loads or styles. Since several drawings stand in one page, every id gets the drawing's name in
 * front.
 */
final class DrawingRules {
  private static final Set<String> PARTS =
      Set.of(
          "svg",
          "title",
          "desc",
          "g",
          "defs",
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "text",
          "tspan",
          "pattern",
          "marker",
          "clipPath");

  private final String name;

  DrawingRules(String name) {
    this.name = name;
  }

  static String titleOf(Element svg) {
    return child(svg, "title").map(Node::getTextContent).orElse("").strip();
  }

  /**
   * Makes the drawing ready for the page.
   *
   * @return what it may not hold or lacks; empty when it is fine
   */
  Optional<String> apply(Element svg) {
    Optional<Element> title = child(svg, "title");
    Optional<Element> desc = child(svg, "desc");
    if (!svg.getTagName().equals("svg") || !svg.hasAttribute("viewBox")) {
      return Optional.of("is no SVG with a viewBox");
    }
    if (title.isEmpty() || desc.isEmpty()) {
      return Optional.of("lacks a title or a desc for people who cannot see it");
    }
    title.get().setAttribute("id", "title");
    desc.get().setAttribute("id", "desc");
    Optional<String> refusal = walk(svg);
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-labelledby", name + "-title " + name + "-desc");
    return refusal;
  }

  private Optional<String> walk(Element element) {
    if (!PARTS.contains(element.getTagName())) {
      return Optional.of("holds <" + element.getTagName() + ">");
    }
    Optional<String> refusal = attributes(element);
    for (Node n = element.getFirstChild(); n != null && refusal.isEmpty(); n = n.getNextSibling()) {
      refusal = n instanceof Element child ? walk(child) : Optional.empty();
    }
    return refusal;
  }

  private Optional<String> attributes(Element element) {
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      Attr attribute = (Attr) attributes.item(i);
      String key = attribute.getName();
      if (isForbidden(key, attribute.getValue())) {
        return Optional.of("has the attribute " + key + "=" + attribute.getValue());
      }
      attribute.setValue(own(key, attribute.getValue()));
    }
    return Optional.empty();
  }

  private static boolean isForbidden(String key, String value) {
    boolean loads = value.replace("url(#", "").contains("url(");
    return loads || key.startsWith("on") || key.contains("href") || key.equals("style");
  }

  private String own(String key, String value) {
    return key.equals("id") ? name + "-" + value : value.replace("url(#", "url(#" + name + "-");
  }

  private static Optional<Element> child(Element parent, String tag) {
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element element && element.getTagName().equals(tag)) {
        return Optional.of(element);
      }
    }
    return Optional.empty();
  }
}
