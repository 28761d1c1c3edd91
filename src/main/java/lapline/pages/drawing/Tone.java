package lapline.pages.drawing;

/** An ink of the house; the same on screen and on paper. */
public record Tone(int rgb) {
  public static final Tone INK = new Tone(0x1d1b18);
  public static final Tone FAINT = new Tone(0x57524a);
  public static final Tone LINE = new Tone(0xc9c1b2);
  public static final Tone SHEET = new Tone(0xfffdf8);
  public static final Tone ACCENT = new Tone(0x1f4d46);
  public static final Tone PALE = new Tone(0xd5e3dd);
  public static final Tone WARM = new Tone(0x8a3d0c);

  public String hex() {
    return String.format("#%06x", rgb);
  }

  int red() {
    return rgb >> 16 & 255;
  }

  int green() {
    return rgb >> 8 & 255;
  }

  int blue() {
    return rgb & 255;
  }
}
