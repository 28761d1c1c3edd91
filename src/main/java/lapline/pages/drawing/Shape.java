package lapline.pages.drawing;

import java.util.List;

/** What a drawing is made of; all measures in millimetres. */
public sealed interface Shape {

  /** An open line through points. */
  record Line(List<Point> points, Pen pen) implements Shape {
    public static Line of(double x1, double y1, double x2, double y2, Pen pen) {
      return new Line(List.of(new Point(x1, y1), new Point(x2, y2)), pen);
    }
  }

  /** One surface of one or more closed rings that do not overlap. */
  record Surface(List<List<Point>> rings, Fill fill, Pen pen) implements Shape {
    public static Surface of(List<Point> ring, Fill fill, Pen pen) {
      return new Surface(List.of(ring), fill, pen);
    }

    public static Surface box(double x, double y, double width, double height, Fill fill, Pen pen) {
      return of(
          List.of(
              new Point(x, y),
              new Point(x + width, y),
              new Point(x + width, y + height),
              new Point(x, y + height)),
          fill,
          pen);
    }
  }

  /** A circle. */
  record Circle(double x, double y, double radius, Fill fill, Pen pen) implements Shape {}

  /**
   * Words on one line.
   *
   * @param y of the base line
   * @param size height of the type
   * @param halo whether a rim of paper keeps them readable over a dark ground
   */
  record Words(
      double x,
      double y,
      double size,
      Align align,
      boolean bold,
      boolean halo,
      Tone tone,
      String text)
      implements Shape {
    public static Words of(double x, double y, double size, Align align, String text) {
      return new Words(x, y, size, align, false, false, Tone.INK, text);
    }

    public Words strong() {
      return new Words(x, y, size, align, true, halo, tone, text);
    }

    public Words in(Tone other) {
      return new Words(x, y, size, align, bold, halo, other, text);
    }

    public Words withHalo() {
      return new Words(x, y, size, align, bold, true, tone, text);
    }
  }

  /** Where words lie from their point. */
  enum Align {
    START,
    MIDDLE,
    END
  }

  /** Shapes of which only the part inside a ring shows. */
  record Clipped(List<Point> ring, List<Shape> shapes) implements Shape {}

  /**
   * Shapes that belong together under a name a page's script or style can find, such as {@code
   * place-3}.
   */
  record Named(String name, List<Shape> shapes) implements Shape {}
}
