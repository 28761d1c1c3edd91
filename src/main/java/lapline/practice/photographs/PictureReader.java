package lapline.practice.photographs;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import lapline.practice.photographs.PhotographRefusedException.Reason;

/**
 * Unpacks a picture file. Its size is asked first, and a large one is read coarser while it is
 * unpacked, so that what it takes of the server's memory does not depend on the file.
 */
final class PictureReader {
  /** Larger than any phone's picture; a small file may unpack to far more. */
  static final long MOST_PIXELS = 110_000_000;

  /** The decoder holds a whole row, and no camera writes a longer one. */
  static final int LONGEST_SIDE = 32_000;

  /** Of a progressive JPEG the decoder holds every pixel at 6 bytes until its last: 150 MB. */
  static final long MOST_PROGRESSIVE = 25_000_000;

  /**
   * What is unpacked at most: a phone's usual 12 million pixels whole. At 3 to 8 bytes a pixel, and
   * 4 more for a copy on white paper, that is 150 MB at the very most and 40 MB for a JPEG, which a
   * server of 512 MB has to spare for one picture at a time.
   */
  static final long MOST_UNPACKED = 12_500_000;

  private static final Set<String> FORMATS = Set.of("jpeg", "png");

  private PictureReader() {}

  /**
   * The picture without see-through places, of at most {@link #MOST_UNPACKED} pixels.
   *
   * @throws PhotographRefusedException when it is none that we read, or has too many pixels
   * @throws IOException when it is damaged
   */
  static BufferedImage read(byte[] file, boolean progressive) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      ImageReader reader = reader(in);
      try {
        reader.setInput(in, true, true);
        return onPaper(unpacked(reader, progressive));
      } catch (IllegalArgumentException
          | IndexOutOfBoundsException
          | NegativeArraySizeException e) {
        // what the decoders throw at a damaged file
        throw new IOException(e);
      } finally {
        reader.dispose();
      }
    }
  }

  private static ImageReader reader(ImageInputStream in) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
    while (readers.hasNext()) {
      ImageReader reader = readers.next();
      if (FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
        return reader;
      }
    }
    throw new PhotographRefusedException(Reason.NO_IMAGE);
  }

  private static BufferedImage unpacked(ImageReader reader, boolean progressive)
      throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if (Math.max(width, height) > LONGEST_SIDE
        || (long) width * height > (progressive ? MOST_PROGRESSIVE : MOST_PIXELS)) {
      throw new PhotographRefusedException(Reason.TOO_MANY_PIXELS);
    }
    int step = step(width, height);
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(step, step, 0, 0);
    return reader.read(0, param);
  }

  /** Every how manieth pixel is kept of a row, and every how manieth row. */
  static int step(int width, int height) {
    int step = 1;
    while (kept(width, step) * kept(height, step) > MOST_UNPACKED) {
      step++;
    }
    return step;
  }

  private static long kept(int side, int step) {
    return (side + step - 1) / step;
  }

  /** JPEG has no see-through; white stands behind what had. */
  private static BufferedImage onPaper(BufferedImage image) {
    if (image.getType() == BufferedImage.TYPE_3BYTE_BGR) {
      return image;
    }
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = plain.createGraphics();
    g.drawImage(image, 0, 0, Color.WHITE, null);
    g.dispose();
    return plain;
  }
}
