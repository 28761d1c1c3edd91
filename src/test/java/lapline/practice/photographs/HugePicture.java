package lapline.practice.photographs;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** PNG files of many pixels, written row by row so that a test needs no memory for them. */
public final class HugePicture {
  private HugePicture() {}

  /** A few bytes that claim to be huge. */
  static byte[] claimed(int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    // 8 bits of each colour
    byte[] size =
        ByteBuffer.allocate(13)
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 2, 0, 0, 0})
            .array();
    chunk(out, "IHDR", size);
    return out.toByteArray();
  }

  /** All grey. */
  public static byte[] whole(int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(claimed(width, height));
    chunk(out, "IDAT", packed(width, height));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static byte[] packed(int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] row = new byte[1 + 3 * width];
    Arrays.fill(row, 1, row.length, (byte) 0x80);
    byte[] some = new byte[8192];
    Deflater deflater = new Deflater(Deflater.BEST_SPEED);
    for (int y = 0; y < height; y++) {
      deflater.setInput(row);
      while (!deflater.needsInput()) {
        out.write(some, 0, deflater.deflate(some));
      }
    }
    deflater.finish();
    while (!deflater.finished()) {
      out.write(some, 0, deflater.deflate(some));
    }
    deflater.end();
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String name, byte[] data) {
    byte[] named =
        ByteBuffer.allocate(4 + data.length)
            .put(name.getBytes(StandardCharsets.US_ASCII))
            .put(data)
            .array();
    CRC32 check = new CRC32();
    check.update(named);
    out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
    out.writeBytes(named);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
  }
}
