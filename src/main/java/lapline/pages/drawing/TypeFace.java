package lapline.pages.drawing;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The face that words of a drawing are set in: a free sans serif of the common office widths, so
 * that what is measured here holds on screen and in the file that is printed.
 */
public final class TypeFace {
  private static final String FILE = "LiberationSans-Regular.ttf";
  private static final BaseFont FONT = load();

  /**
   * Size of letters on a drawing 100 wide so that they are 14 px high on a phone 390 px wide, where
   * the drawing has 358 px.
   */
  public static final double ON_PHONES = 4;

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
    return FONT.getWidthPoint(text, (float) size);
  }

  /** The words on as many lines as it takes; a word wider than the line stands alone. */
  public static List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      if (!line.isEmpty() && width(line + " " + word, size) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
