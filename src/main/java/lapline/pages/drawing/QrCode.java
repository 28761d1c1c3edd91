package lapline.pages.drawing;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A code that a phone's camera opens, as squares; a quarter of it may be smudged (level Q). */
public final class QrCode {
  private QrCode() {}

  /**
   * @param size of the code itself; the caller leaves four squares of blank paper around it
   */
  public static Shape at(String text, double x, double y, double size) {
    ByteMatrix squares = squares(text);
    double side = size / squares.getWidth();
    List<List<Point>> rings = new ArrayList<>();
    for (int row = 0; row < squares.getHeight(); row++) {
      int column = 0;
      while (column < squares.getWidth()) {
        int end = column;
        while (end < squares.getWidth() && squares.get(end, row) == 1) {
          end++;
        }
        if (end > column) {
          rings.add(box(x + column * side, y + row * side, (end - column) * side, side));
        }
        column = end + 1;
      }
    }
    return new Shape.Surface(rings, Fill.flat(new Tone(0)), Pen.NONE);
  }

  private static List<Point> box(double x, double y, double width, double height) {
    return List.of(
        new Point(x, y),
        new Point(x + width, y),
        new Point(x + width, y + height),
        new Point(x, y + height));
  }

  private static ByteMatrix squares(String text) {
    try {
      return Encoder.encode(
              text,
              ErrorCorrectionLevel.Q,
              Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name()))
          .getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a code: " + text.length() + " letters", e);
    }
  }
}
