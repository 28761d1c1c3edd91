package lapline.pages.drawing;

import java.util.Locale;
import lapline.trade.measure.UnitSystem;

/** The sheets people print on; millimetres. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  public double width() {
    return width;
  }

  public double height() {
    return height;
  }

  /** The sheet usual where people measure in these units. */
  public static Paper usualIn(UnitSystem units) {
    return switch (units) {
      case METRIC -> A4;
      case US -> LETTER;
    };
  }

  /** The sheet of this name; A4 where the name is none of ours. */
  public static Paper of(String name) {
    return name != null && name.toUpperCase(Locale.ROOT).equals(LETTER.name()) ? LETTER : A4;
  }
}
