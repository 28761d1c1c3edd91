package lapline.pages.drawing;

/**
 * The line a shape is drawn with.
 *
 * @param width in millimetres; 0 draws no line
 */
public record Pen(Tone tone, double width, boolean dashed) {
  public static final Pen NONE = new Pen(Tone.INK, 0, false);
  public static final Pen FINE = new Pen(Tone.INK, 0.25, false);
  public static final Pen FIRM = new Pen(Tone.INK, 0.5, false);

  public static Pen of(Tone tone, double width) {
    return new Pen(tone, width, false);
  }

  public Pen dash() {
    return new Pen(tone, width, true);
  }
}
