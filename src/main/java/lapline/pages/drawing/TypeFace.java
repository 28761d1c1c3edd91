package lapline.pages.drawing;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The face that words of a drawing are set in: a free sans serif of the common office widths, so
 * that what is measured here holds on screen and in the file that is printed.
 */
public final class TypeFace {
  private static final String FILE = "LiberationSans-Regular.ttf";
  private static final BaseFont FONT = load();

  /** Of each letter in thousandths of the size; not a number until it was asked for. */
  private static final float[] ADVANCES = unknown();

  /**
   * Size of letters on a drawing 100 wide so that they are 14 px high on a phone 390 px wide, where
   * the drawing has 358 px.
   */
  public static final double ON_PHONES = 4;

  /** How much wider strong words run. */
  public static final double BOLD = 1.08;

  private TypeFace() {}

  /** Embedded, and only the letters that are used, so that every reader shows every letter. */
  private static BaseFont load() {
    try (InputStream in = BaseFont.class.getResourceAsStream("/font-fallback/" + FILE)) {
      return BaseFont.createFont(
          FILE, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, in.readAllBytes(), null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DocumentException e) {
      throw new IllegalStateException("the face of the drawings cannot be read", e);
    }
  }

  static BaseFont font() {
    return FONT;
  }

  /** How wide the words run, in the unit of {@code size}. */
  public static double width(String text, double size) {
    double thousandths = 0;
    for (int i = 0; i < text.length(); i++) {
      thousandths += advance(text.charAt(i));
    }
    return thousandths * size / 1000;
  }

  /** Of a letter, kept since a sheet is laid out in many ways before the best is known. */
  private static double advance(char letter) {
    if (Float.isNaN(ADVANCES[letter])) {
      ADVANCES[letter] = FONT.getWidth(letter);
    }
    return ADVANCES[letter];
  }

  private static float[] unknown() {
    float[] advances = new float[Character.MAX_VALUE + 1];
    Arrays.fill(advances, Float.NaN);
    return advances;
  }

  /** The words on as many lines as it takes; a word wider than the line stands alone. */
  public static List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    double space = width(" ", size);
    double used = 0;
    for (String word : text.strip().split("\\s+")) {
      double wide = width(word, size);
      if (!line.isEmpty() && used + space + wide > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      used += line.isEmpty() ? wide : space + wide;
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
