package lapline.practice.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
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
    refused(HugePicture.claimed(30_000, 30_000), Reason.TOO_MANY_PIXELS);
  }

  @Test
  void a_panorama_no_camera_writes_is_refused_since_one_row_fills_the_memory() throws Exception {
    refused(HugePicture.claimed(1_000_000, 100), Reason.TOO_MANY_PIXELS);
  }

  /**
   * Unpacked whole it would take 182 MB, and the copies as much again, which broke a server of 512
   * MB. Read coarser it takes 20 MB; what every try allocates is counted, since a heap's high water
   * mark would depend on when it was last tidied.
   */
  @Test
  void a_picture_of_60_million_pixels_takes_no_more_memory_than_a_phones() throws Exception {
    byte[] file = HugePicture.whole(9000, 6750);
    long before = allocated();
    CleanPicture kept = CleanPicture.of(file);
    assertThat(allocated() - before).isLessThan(200_000_000);
    assertThat(kept.width()).isEqualTo(2400);
    assertThat(kept.height()).isEqualTo(1800);
  }

  @Test
  void no_picture_is_unpacked_to_more_than_the_bound_and_a_phones_is_read_whole() {
    assertThat(PictureReader.step(4000, 3000)).isEqualTo(1);
    assertThat(PictureReader.step(9000, 6750)).isEqualTo(3);
    assertThat(PictureReader.step(12_000, 9000)).isEqualTo(3);
  }

  private static long allocated() {
    return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
        .getCurrentThreadAllocatedBytes();
  }

  @Test
  void files_are_too_large_one_by_one_or_together() {
    long each = CleanPicture.MOST_BYTES;
    CleanPicture.mustFit(List.of(each, each, each));
    assertThatThrownBy(() -> CleanPicture.mustFit(List.of(each, each, each, 1L)))
        .extracting("reason")
        .isEqualTo(Reason.TOO_MUCH_TOGETHER);
    assertThatThrownBy(() -> CleanPicture.mustFit(List.of(1L, each + 1)))
        .extracting("reason")
        .isEqualTo(Reason.TOO_MANY_BYTES);
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
}
