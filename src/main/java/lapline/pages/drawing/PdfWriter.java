package lapline.pages.drawing;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;

/** Draws a drawing, true to its millimetres, on a page of a PDF document. */
public final class PdfWriter {
  private static final float POINTS_PER_MM = 72f / 25.4f;
  private static final double PATTERN_STEP = 2;

  private final PdfContentByte canvas;
  private final Drawing drawing;

  private PdfWriter(PdfContentByte canvas, Drawing drawing) {
    this.canvas = canvas;
    this.drawing = drawing;
  }

  /**
   * @param left of the drawing from the page's left edge, in points
   * @param bottom of the drawing from the page's lower edge, in points
   */
  public static void draw(Drawing drawing, PdfContentByte canvas, float left, float bottom) {
    canvas.saveState();
    canvas.concatCTM(POINTS_PER_MM, 0, 0, POINTS_PER_MM, left, bottom);
    PdfWriter writer = new PdfWriter(canvas, drawing);
    drawing.shapes().forEach(writer::shape);
    canvas.restoreState();
  }

  private void shape(Shape shape) {
    if (shape instanceof Shape.Line line) {
      ring(line.points());
      pen(line.pen());
      canvas.stroke();
    } else if (shape instanceof Shape.Surface surface) {
      surface(surface.fill(), surface.pen(), () -> rings(surface.rings()));
    } else if (shape instanceof Shape.Circle c) {
      surface(c.fill(), c.pen(), () -> canvas.circle(f(c.x()), up(c.y()), f(c.radius())));
    } else if (shape instanceof Shape.Words words) {
      words(words);
    } else if (shape instanceof Shape.Clipped clipped) {
      clip(() -> rings(List.of(clipped.ring())), () -> clipped.shapes().forEach(this::shape));
    } else if (shape instanceof Shape.Named named) {
      named.shapes().forEach(this::shape);
    }
  }

  private void surface(Fill fill, Pen pen, Runnable path) {
    switch (fill.kind()) {
      case FLAT -> {
        path.run();
        fillTone(fill.tone());
        canvas.eoFill();
      }
      case DOTTED -> clip(path, this::dots);
      case RULED -> clip(path, this::rules);
      case NONE -> {
        // only its edge shows
      }
    }
    if (pen.width() > 0) {
      path.run();
      pen(pen);
      canvas.stroke();
    }
  }

  private void clip(Runnable path, Runnable inside) {
    canvas.saveState();
    path.run();
    canvas.clip();
    canvas.newPath();
    inside.run();
    canvas.restoreState();
  }

  private void dots() {
    fillTone(Tone.INK);
    for (double x = 1; x < drawing.width(); x += PATTERN_STEP) {
      for (double y = 1; y < drawing.height(); y += PATTERN_STEP) {
        canvas.circle(f(x), up(y), 0.38f);
      }
    }
    canvas.fill();
  }

  private void rules() {
    pen(Pen.of(Tone.INK, 0.2));
    double reach = drawing.height();
    for (double x = -reach; x < drawing.width(); x += PATTERN_STEP) {
      canvas.moveTo(f(x), up(reach));
      canvas.lineTo(f(x + reach), up(0));
    }
    canvas.stroke();
  }

  private void words(Shape.Words w) {
    if (w.halo()) {
      text(w, Tone.SHEET, w.size() * 0.3, PdfContentByte.TEXT_RENDER_MODE_STROKE);
    }
    boolean bold = w.bold();
    text(
        w,
        w.tone(),
        bold ? w.size() * 0.035 : 0,
        bold ? PdfContentByte.TEXT_RENDER_MODE_FILL_STROKE : PdfContentByte.TEXT_RENDER_MODE_FILL);
  }

  private void text(Shape.Words w, Tone tone, double penWidth, int mode) {
    canvas.beginText();
    fillTone(tone);
    pen(Pen.of(tone, penWidth));
    canvas.setTextRenderingMode(mode);
    canvas.setFontAndSize(TypeFace.font(), f(w.size()));
    canvas.showTextAligned(
        switch (w.align()) {
          case START -> PdfContentByte.ALIGN_LEFT;
          case MIDDLE -> PdfContentByte.ALIGN_CENTER;
          case END -> PdfContentByte.ALIGN_RIGHT;
        },
        w.text(),
        f(w.x()),
        up(w.y()),
        0);
    canvas.setTextRenderingMode(PdfContentByte.TEXT_RENDER_MODE_FILL);
    canvas.endText();
  }

  private void rings(List<List<Point>> rings) {
    for (List<Point> ring : rings) {
      ring(ring);
      canvas.closePath();
    }
  }

  private void ring(List<Point> points) {
    Point first = points.get(0);
    canvas.moveTo(f(first.x()), up(first.y()));
    points.stream().skip(1).forEach(p -> canvas.lineTo(f(p.x()), up(p.y())));
  }

  private void pen(Pen pen) {
    canvas.setRGBColorStroke(pen.tone().red(), pen.tone().green(), pen.tone().blue());
    canvas.setLineWidth(f(pen.width()));
    canvas.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
    if (pen.dashed()) {
      canvas.setLineDash(1.6f, 1.2f, 0);
    } else {
      canvas.setLineDash(0);
    }
  }

  private void fillTone(Tone tone) {
    canvas.setRGBColorFill(tone.red(), tone.green(), tone.blue());
  }

  /** Paper counts upwards, drawings downwards. */
  private float up(double y) {
    return f(drawing.height() - y);
  }

  private static float f(double value) {
    return (float) value;
  }
}
