package lapline.pages.drawing;

import java.util.List;
import java.util.Locale;

/** Writes a drawing as SVG that stands in the page itself, with its title and description. */
public final class SvgWriter {
  private final StringBuilder out = new StringBuilder(4096);
  private final String id;
  private int clips;

  private SvgWriter(String id) {
    this.id = id;
  }

  public static String write(Drawing drawing) {
    SvgWriter writer = new SvgWriter(escaped(drawing.id()));
    writer.open(drawing);
    drawing.shapes().forEach(writer::shape);
    return writer.out.append("</svg>").toString();
  }

  private void open(Drawing d) {
    out.append(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" viewBox=\"0 0 ")
        .append(number(d.width()))
        .append(' ')
        .append(number(d.height()))
        .append("\" aria-labelledby=\"")
        .append(id + "-title " + id + "-desc")
        .append("\"><title id=\"" + id + "-title\">")
        .append(escaped(d.title()))
        .append("</title><desc id=\"" + id + "-desc\">")
        .append(escaped(d.description()))
        .append("</desc>");
    patterns();
  }

  private void patterns() {
    out.append("<defs>");
    pattern(
        Fill.Kind.DOTTED, "<circle cx=\"1\" cy=\"1\" r=\".38\" fill=\"" + Tone.INK.hex() + "\"/>");
    pattern(
        Fill.Kind.RULED,
        "<path d=\"M0 2L2 0\" stroke=\"" + Tone.INK.hex() + "\" stroke-width=\".28\"/>");
    out.append("</defs>");
  }

  private void pattern(Fill.Kind kind, String content) {
    out.append("<pattern id=\"" + patternId(kind))
        .append("\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\">")
        .append(content)
        .append("</pattern>");
  }

  private String patternId(Fill.Kind kind) {
    return id + "-" + kind.name().toLowerCase(Locale.ROOT);
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Line line) {
      path(ring(line.points(), ""), Fill.NONE, line.pen());
    } else if (shape instanceof Shape.Surface surface) {
      StringBuilder rings = new StringBuilder();
      surface.rings().forEach(r -> rings.append(ring(r, "Z")));
      path(rings.toString(), surface.fill(), surface.pen());
    } else if (shape instanceof Shape.Circle c) {
      circle(c);
    } else if (shape instanceof Shape.Words words) {
      words(words);
    } else if (shape instanceof Shape.Clipped clipped) {
      clipped(clipped);
    } else if (shape instanceof Shape.Named named) {
      out.append("<g data-name=\"").append(escaped(named.name())).append("\">");
      named.shapes().forEach(this::shape);
      out.append("</g>");
    }
  }

  private void path(String d, Fill fill, Pen pen) {
    out.append("<path d=\"").append(d).append('"');
    style(fill, pen);
    out.append("/>");
  }

  private void circle(Shape.Circle c) {
    out.append("<circle cx=\"" + number(c.x()) + "\" cy=\"" + number(c.y()))
        .append("\" r=\"" + number(c.radius()) + "\"");
    style(c.fill(), c.pen());
    out.append("/>");
  }

  private void style(Fill fill, Pen pen) {
    out.append(" fill=\"").append(paint(fill)).append('"');
    if (pen.width() > 0) {
      out.append(
              " stroke=\"" + pen.tone().hex() + "\" stroke-width=\"" + number(pen.width()) + "\"")
          .append(pen.dashed() ? " stroke-dasharray=\"1.6 1.2\"" : "");
    }
  }

  private String paint(Fill fill) {
    return switch (fill.kind()) {
      case NONE -> "none";
      case FLAT -> fill.tone().hex();
      case DOTTED, RULED -> "url(#" + patternId(fill.kind()) + ")";
    };
  }

  private void words(Shape.Words w) {
    String anchor = w.align().name().toLowerCase(Locale.ROOT);
    out.append("<text x=\"" + number(w.x()) + "\" y=\"" + number(w.y()))
        .append("\" font-size=\"" + number(w.size()) + "\" text-anchor=\"" + anchor)
        .append("\" fill=\"" + w.tone().hex() + "\"")
        .append(w.bold() ? " font-weight=\"650\"" : "")
        .append(w.halo() ? halo(w.size()) : "")
        .append('>')
        .append(escaped(w.text()))
        .append("</text>");
  }

  private static String halo(double size) {
    return " paint-order=\"stroke\" stroke-linejoin=\"round\" stroke=\""
        + Tone.SHEET.hex()
        + "\" stroke-width=\""
        + number(size * 0.3)
        + "\"";
  }

  private void clipped(Shape.Clipped c) {
    String clip = id + "-clip" + ++clips;
    out.append("<clipPath id=\"" + clip + "\"><path d=\"" + ring(c.ring(), "Z"))
        .append("\"/></clipPath><g clip-path=\"url(#" + clip + ")\">");
    c.shapes().forEach(this::shape);
    out.append("</g>");
  }

  private static String ring(List<Point> points, String end) {
    StringBuilder d = new StringBuilder(14 * points.size());
    for (Point p : points) {
      d.append(d.isEmpty() ? 'M' : 'L');
      number(d, p.x());
      number(d.append(' '), p.y());
    }
    return d.append(end).toString();
  }

  static String number(double value) {
    StringBuilder text = new StringBuilder(8);
    number(text, value);
    return text.toString();
  }

  /**
   * Two decimals of a millimetre are finer than any print. Written digit by digit, since a panel
   * map has ten thousand numbers and a general formatter took a third of its page's time.
   */
  private static void number(StringBuilder out, double value) {
    long hundredths = Math.round(value * 100);
    long size = Math.abs(hundredths);
    out.append(hundredths < 0 ? "-" : "").append(size / 100);
    if (size % 100 != 0) {
      out.append('.').append(size / 10 % 10);
    }
    if (size % 10 != 0) {
      out.append(size % 10);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
