package lapline.pages.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import lapline.pages.drawing.Shape.Align;
import lapline.pages.drawing.Shape.Words;

/** A column of a printed sheet that is written from the top down. */
public final class SheetColumn {
  /** 8 pt in millimetres, the least: read in a mask, at arm's length. */
  public static final double EIGHT_POINTS = 8 * 25.4 / 72;

  /** Size of type where the sheet has its usual scale. */
  public static final double TEXT = 2.9;

  private static final double LEADING = 1.2;

  private final double left;
  private final double width;
  private final double scale;

  /** Null for a trial. */
  private final List<Shape> shapes;

  private double y;

  /**
   * @param scale of rows and type, which is never smaller than 8 pt
   */
  public SheetColumn(List<Shape> shapes, double left, double top, double width, double scale) {
    this.shapes = shapes;
    this.left = left;
    this.y = top;
    this.width = width;
    this.scale = scale;
  }

  /** A column of which nothing is kept, to find out how much height something takes. */
  public static SheetColumn trial(double width, double scale) {
    return new SheetColumn(null, 0, 0, width, scale);
  }

  public double y() {
    return y;
  }

  public double left() {
    return left;
  }

  public double width() {
    return width;
  }

  /** A column beside it that writes on the same sheet. */
  public SheetColumn beside(double left, double top, double width) {
    return new SheetColumn(shapes, left, top, width, scale);
  }

  public double text() {
    return Math.max(EIGHT_POINTS, TEXT * scale);
  }

  /** A height that grows and shrinks with the sheet's type. */
  public double high(double millimetres) {
    return millimetres * scale;
  }

  public void gap(double millimetres) {
    y += high(millimetres);
  }

  public void add(Shape shape) {
    if (shapes != null) {
      shapes.add(shape);
    }
  }

  /** Shapes that take long to find, which are asked for only where they are kept. */
  public void add(Supplier<List<Shape>> found) {
    if (shapes != null) {
      shapes.addAll(found.get());
    }
  }

  public void heading(String text) {
    y += high(4.4);
    add(Words.of(left, y, high(3.3), Align.START, text).strong());
    add(Shape.Line.of(left, y + high(1), left + width, y + high(1), Pen.of(Tone.LINE, 0.3)));
    y += high(1.6);
  }

  /** A heading under its line instead, so that words may go on beside it; returns where. */
  public double topic(String text) {
    double size = high(3.3);
    y += high(1.6);
    add(Shape.Line.of(left, y, left + width, y, Pen.of(Tone.LINE, 0.3)));
    y += high(3.8);
    add(Words.of(left, y, size, Align.START, text).strong());
    return left + TypeFace.width(text, size) * TypeFace.BOLD + size;
  }

  public void paragraph(String text) {
    lines(text, left, width, Tone.INK);
  }

  public void quiet(String text) {
    lines(text, left, width, Tone.FAINT);
  }

  /** Lines to be ticked off. */
  public void ticks(List<String> items) {
    double box = high(2.4);
    for (String item : items) {
      double top = y + high(0.9);
      add(Shape.Surface.box(left, top, box, box, Fill.NONE, Pen.FINE));
      lines(item, left + box * 1.6, width - box * 1.6, Tone.INK);
    }
  }

  /** Lines set off by a heavy bar: what may hurt. */
  public void cautions(List<String> items) {
    double top = y + high(0.6);
    for (String item : items) {
      lines(item, left + 3, width - 3, Tone.INK);
      gap(0.5);
    }
    add(Shape.Surface.box(left, top, 1.1, y - top + high(0.6), Fill.flat(Tone.WARM), Pen.NONE));
  }

  private void lines(String text, double x, double room, Tone tone) {
    double size = text();
    List<String> lines = text.isBlank() ? new ArrayList<>() : TypeFace.wrap(text, size, room);
    for (String line : lines) {
      y += size * LEADING;
      add(Words.of(x, y, size, Align.START, line).in(tone));
    }
  }

  public void moveTo(double otherY) {
    y = otherY;
  }
}
