package lapline.practice.photographs;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/**
 * A picture as a phone held upright writes it: lying on its side, with the note to turn it
 * (orientation 6) and the place where it was taken. The metadata is written byte by byte after the
 * EXIF and TIFF layouts.
 */
public final class PhonePicture {
  public static final String OWNER = "Owner of the phone";

  private PhonePicture() {}

  /** Red on the left half as stored; so red on top once it is turned upright. */
  public static byte[] lying(int width, int height) throws IOException {
    byte[] plain = jpeg(width, height);
    byte[] exif = exif();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    out.write(0xff);
    out.write(0xe1);
    out.write((exif.length + 2) >> 8);
    out.write((exif.length + 2) & 0xff);
    out.write(exif);
    out.write(plain, 2, plain.length - 2);
    return out.toByteArray();
  }

  static byte[] jpeg(int width, int height) throws IOException {
    return written(width, height, "jpg");
  }

  static byte[] png(int width, int height) throws IOException {
    return written(width, height, "png");
  }

  private static byte[] written(int width, int height, String format) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.BLUE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.RED);
    g.fillRect(0, 0, width / 2, height);
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  /** Offsets count from the byte order mark. */
  private static byte[] exif() {
    ByteBuffer tiff = ByteBuffer.allocate(200);
    byte[] owner = (OWNER + "\0").getBytes(StandardCharsets.US_ASCII);
    int gps = 8 + 2 + 3 * 12 + 4;
    int ownerAt = gps + 2 + 2 * 12 + 4;
    int latitudeAt = ownerAt + owner.length + owner.length % 2;
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 3);
    entry(tiff, 0x0112, 3, 1).putShort((short) 6).putShort((short) 0);
    entry(tiff, 0x013b, 2, owner.length).putInt(ownerAt);
    entry(tiff, 0x8825, 4, 1).putInt(gps);
    tiff.putInt(0);
    tiff.putShort((short) 2);
    entry(tiff, 1, 2, 2).put((byte) 'N').put(new byte[3]);
    entry(tiff, 2, 5, 3).putInt(latitudeAt);
    tiff.putInt(0);
    tiff.put(owner).position(latitudeAt);
    tiff.putInt(51).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1);
    byte[] head = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    return ByteBuffer.allocate(head.length + tiff.position())
        .put(head)
        .put(tiff.array(), 0, tiff.position())
        .array();
  }

  private static ByteBuffer entry(ByteBuffer tiff, int tag, int type, int count) {
    return tiff.putShort((short) tag).putShort((short) type).putInt(count);
  }
}
