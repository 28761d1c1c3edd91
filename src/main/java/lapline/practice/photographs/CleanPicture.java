package lapline.practice.photographs;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.jpeg.JpegDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
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

  private static final int FULL = 2400;

  /** JPEG's frame types 0 and 1 are read row by row; what comes after, as a whole. */
  private static final int EXTENDED = 1;

  private static final int SMALL = 480;

  private static final OneAtATime TURN = new OneAtATime(Duration.ofSeconds(30));

  /**
   * Whether files can be taken in one go, before any of them is read.
   *
   * @param bytes length of each file
   * @throws PhotographRefusedException when one of them or all together are too large
   */
  public static void mustFit(Collection<Long> bytes) {
    if (bytes.stream().anyMatch(length -> length > MOST_BYTES)) {
      throw new PhotographRefusedException(Reason.TOO_MANY_BYTES);
    }
    if (bytes.stream().mapToLong(Long::longValue).sum() > MOST_BYTES_TOGETHER) {
      throw new PhotographRefusedException(Reason.TOO_MUCH_TOGETHER);
    }
  }

  /**
   * @throws PhotographRefusedException when it is not a picture that can be taken
   */
  public static CleanPicture of(byte[] file) {
    mustFit(List.of((long) file.length));
    try {
      return TURN.run(() -> drawnAnew(file));
    } catch (IOException e) {
      throw new PhotographRefusedException(Reason.NO_IMAGE);
    }
  }

  /** Made smaller before it is turned, since turning copies it. */
  private static CleanPicture drawnAnew(byte[] file) throws IOException {
    Metadata said = said(file);
    BufferedImage small = within(PictureReader.read(file, isProgressive(said)), FULL);
    BufferedImage full = upright(small, orientation(said));
    return new CleanPicture(
        jpeg(full), jpeg(within(full, SMALL)), full.getWidth(), full.getHeight());
  }

  /** What the phone wrote beside the picture; nothing where that is damaged. */
  private static Metadata said(byte[] file) {
    try {
      return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    } catch (ImageProcessingException | IOException e) {
      // damaged metadata does not spoil the picture
      return new Metadata();
    }
  }

  private static boolean isProgressive(Metadata said) {
    JpegDirectory jpeg = said.getFirstDirectoryOfType(JpegDirectory.class);
    Integer process = jpeg == null ? null : jpeg.getInteger(JpegDirectory.TAG_COMPRESSION_TYPE);
    return process != null && process > EXTENDED;
  }

  /** 1 to 8 as EXIF counts it; 1 where nothing is said. */
  private static int orientation(Metadata said) {
    ExifIFD0Directory directory = said.getFirstDirectoryOfType(ExifIFD0Directory.class);
    Integer found =
        directory == null ? null : directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return found == null ? 1 : found;
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
