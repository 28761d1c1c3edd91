package lapline.practice.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import lapline.practice.photographs.PhotographRefusedException.Reason;
import org.junit.jupiter.api.Test;

/** What is kept of a phone's picture is the picture, upright, and nothing else. */
class CleanPictureTest {

  @Test
  void the_test_picture_itself_says_where_it_was_taken_and_to_turn_it() throws Exception {
    var metadata =
        ImageMetadataReader.readMetadata(new ByteArrayInputStream(PhonePicture.lying(400, 300)));
    assertThat(metadata.getFirstDirectoryOfType(GpsDirectory.class).getTagCount()).isEqualTo(2);
    assertThat(
            metadata
                .getFirstDirectoryOfType(ExifIFD0Directory.class)
                .getInt(ExifIFD0Directory.TAG_ORIENTATION))
        .isEqualTo(6);
  }

  @Test
  void place_and_owner_are_gone() throws Exception {
    CleanPicture kept = CleanPicture.of(PhonePicture.lying(400, 300));
    for (byte[] file : new byte[][] {kept.full(), kept.small()}) {
      var metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
      assertThat(metadata.containsDirectoryOfType(GpsDirectory.class)).isFalse();
      assertThat(metadata.containsDirectoryOfType(ExifIFD0Directory.class)).isFalse();
      assertThat(new String(file, StandardCharsets.ISO_8859_1)).doesNotContain(PhonePicture.OWNER);
    }
  }

  @Test
  void a_picture_taken_upright_stands_upright() throws Exception {
    CleanPicture kept = CleanPicture.of(PhonePicture.lying(400, 300));
    assertThat(kept.width()).isEqualTo(300);
    assertThat(kept.height()).isEqualTo(400);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept.full()));
    assertThat(image.getRGB(150, 40) >> 16 & 255).as("red above").isGreaterThan(200);
    assertThat(image.getRGB(150, 360) & 255).as("blue below").isGreaterThan(200);
  }

  @Test
  void a_large_picture_is_made_smaller_and_a_small_one_is_left() throws Exception {
    CleanPicture large = CleanPicture.of(PhonePicture.jpeg(6000, 4000));
    assertThat(large.width()).isEqualTo(2400);
    assertThat(large.height()).isEqualTo(1600);
    assertThat(ImageIO.read(new ByteArrayInputStream(large.small())).getWidth()).isEqualTo(480);
    CleanPicture small = CleanPicture.of(PhonePicture.png(64, 48));
    assertThat(small.width()).isEqualTo(64);
  }

  @Test
  void the_same_picture_comes_out_the_same() throws Exception {
    byte[] file = PhonePicture.lying(400, 300);
    assertThat(CleanPicture.of(file).full()).isEqualTo(CleanPicture.of(file).full());
  }

  @Test
  void what_is_no_picture_is_refused_whatever_its_name() throws Exception {
    byte[] page = "<html><script>alert(1)</script></html>".getBytes(StandardCharsets.UTF_8);
    refused(page, Reason.NO_IMAGE);
    refused(new byte[0], Reason.NO_IMAGE);
    byte[] cut = Arrays.copyOf(PhonePicture.png(640, 480), 60);
    refused(cut, Reason.NO_IMAGE);
  }

  @Test
  void a_picture_that_unpacks_to_too_much_is_refused_before_it_is_unpacked() throws Exception {
    refused(bomb(30_000, 30_000), Reason.TOO_MANY_PIXELS);
  }

  @Test
  void a_file_of_too_many_bytes_is_refused() {
    refused(new byte[CleanPicture.MOST_BYTES + 1], Reason.TOO_MANY_BYTES);
  }

  private static void refused(byte[] file, Reason reason) {
    assertThatThrownBy(() -> CleanPicture.of(file))
        .isInstanceOfSatisfying(
            PhotographRefusedException.class, e -> assertThat(e.reason()).isEqualTo(reason));
  }

  /** A PNG of a few bytes that claims to be huge. */
  private static byte[] bomb(int width, int height) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    byte[] header =
        ByteBuffer.allocate(17)
            .put("IHDR".getBytes(StandardCharsets.US_ASCII))
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 2, 0, 0, 0})
            .array();
    CRC32 check = new CRC32();
    check.update(header);
    out.writeBytes(ByteBuffer.allocate(4).putInt(13).array());
    out.writeBytes(header);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    return out.toByteArray();
  }
}
