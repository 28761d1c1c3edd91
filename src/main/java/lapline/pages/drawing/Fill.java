package lapline.pages.drawing;

/** How a surface of a drawing is filled; dots and rules tell areas apart without colour. */
public record Fill(Kind kind, Tone tone) {
  /** Plain, dotted, ruled, or left open. */
  public enum Kind {
    NONE,
    FLAT,
    DOTTED,
    RULED
  }

  public static final Fill NONE = new Fill(Kind.NONE, Tone.INK);

  public static Fill flat(Tone tone) {
    return new Fill(Kind.FLAT, tone);
  }

  public static Fill dotted(Tone tone) {
    return new Fill(Kind.DOTTED, tone);
  }

  public static Fill ruled(Tone tone) {
    return new Fill(Kind.RULED, tone);
  }
}
