package lapline.practice.photographs;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import lapline.practice.photographs.PhotographRefusedException.Reason;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * A photograph as it is kept: drawn anew, so that nothing but the picture is left of what the phone
 * wrote (place, time, owner), upright, and no larger than the eye needs; with its thumbnail.
 *
 * @param full JPEG, longer side at most {@value #FULL} pixels
 * @param small JPEG, longer side at most {@value #SMALL} pixels
 */
public record CleanPicture(byte[] full, byte[] small, int width, int height) {
  /** Larger than any phone's picture at full quality. */
  public static final int MOST_BYTES = 20 * 1024 * 1024;

  /** What a server takes of one form, so that one person's pictures do not fill it. */
  public static final long MOST_BYTES_TOGETHER = 60L * 1024 * 1024;

  /** Larger than any phone's picture; a small file may unpack to far more. */
  public static final long MOST_PIXELS = 80_000_000;

  private static final int FULL = 2400;
  private static final int SMALL = 480;
  private static final Set<String> FORMATS = Set.of("jpeg", "png");

  /**
   * @throws PhotographRefusedException when it is not a picture that can be taken
   */
  public static CleanPicture of(byte[] file) {
    if (file.length > MOST_BYTES) {
      throw new PhotographRefusedException(Reason.TOO_MANY_BYTES);
    }
    try {
      BufferedImage upright = upright(decoded(file), orientation(file));
      BufferedImage full = within(upright, FULL);
      return new CleanPicture(
          jpeg(full), jpeg(within(full, SMALL)), full.getWidth(), full.getHeight());
    } catch (IOException e) {
      throw new PhotographRefusedException(Reason.NO_IMAGE);
    }
  }

  /** Size is asked before anything is unpacked; a large picture is read coarser. */
  private static BufferedImage decoded(byte[] file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      ImageReader reader = reader(in);
      try {
        reader.setInput(in, true, true);
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > MOST_PIXELS) {
          throw new PhotographRefusedException(Reason.TOO_MANY_PIXELS);
        }
        ImageReadParam param = reader.getDefaultReadParam();
        int step = (int) Math.max(1, Math.max(width, height) / (2 * FULL));
        param.setSourceSubsampling(step, step, 0, 0);
        return onPaper(reader.read(0, param));
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

  /** JPEG has no see-through; white stands behind what had. */
  private static BufferedImage onPaper(BufferedImage image) {
    BufferedImage plain =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = plain.createGraphics();
    g.drawImage(image, 0, 0, Color.WHITE, null);
    g.dispose();
    return plain;
  }

  /** 1 to 8 as EXIF counts it; 1 where nothing is said. */
  private static int orientation(byte[] file) {
    try {
      var directory =
          ImageMetadataReader.readMetadata(new ByteArrayInputStream(file))
              .getFirstDirectoryOfType(ExifIFD0Directory.class);
      return directory != null && directory.containsTag(ExifIFD0Directory.TAG_ORIENTATION)
          ? directory.getInt(ExifIFD0Directory.TAG_ORIENTATION)
          : 1;
    } catch (ImageProcessingException | MetadataException | IOException e) {
      // damaged metadata does not spoil the picture
      return 1;
    }
  }

  private static BufferedImage upright(BufferedImage image, int orientation) {
    return orientation > 1 && orientation <= 8
        ? ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(orientation)).apply(image)
        : image;
  }

  private static BufferedImage within(BufferedImage image, int most) {
    if (Math.max(image.getWidth(), image.getHeight()) <= most) {
      return image;
    }
    try {
      return Thumbnails.of(image)
          .size(most, most)
          .imageType(BufferedImage.TYPE_INT_RGB)
          .asBufferedImage();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Thumbnails.of(image)
        .scale(1)
        .imageType(BufferedImage.TYPE_INT_RGB)
        .outputFormat("jpg")
        .outputQuality(0.86)
        .toOutputStream(out);
    return out.toByteArray();
  }
}
