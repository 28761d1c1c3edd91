package lapline.practice.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.stream.Stream;
import lapline.server.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures lie in files named by what they hold. */
class PhotographFilesTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  @TempDir Path folder;

  private PhotographFiles files(Instant now) {
    return new PhotographFiles(
        new Settings(folder, false, false, ""), Clock.fixed(now, ZoneOffset.UTC));
  }

  @Test
  void the_same_picture_twice_is_one_file_with_its_thumbnail() throws Exception {
    PhotographFiles files = files(NOW);
    CleanPicture picture = CleanPicture.of(PhonePicture.lying(400, 300));
    String hash = files.keep(picture);
    assertThat(files.keep(picture)).isEqualTo(hash);
    assertThat(count()).isEqualTo(2);
    assertThat(files.read(hash, false)).isEqualTo(picture.full());
    assertThat(files.read(hash, true)).isEqualTo(picture.small());
  }

  @Test
  void what_no_panel_shows_goes_and_what_one_shows_stays() throws Exception {
    PhotographFiles files = files(NOW);
    String shown = files.keep(CleanPicture.of(PhonePicture.png(40, 30)));
    String dropped = files.keep(CleanPicture.of(PhonePicture.png(30, 40)));
    files.sweep(NOW.plusSeconds(1), beginning -> Set.of(shown));
    assertThat(files.read(shown, false)).isNotEmpty();
    assertThatThrownBy(() -> files.read(dropped, false)).isInstanceOf(RuntimeException.class);
    assertThat(count()).as("thumbnails go with their pictures").isEqualTo(2);
  }

  @Test
  void a_picture_taken_up_while_the_old_ones_are_swept_away_stays() throws Exception {
    CleanPicture picture = CleanPicture.of(PhonePicture.png(40, 30));
    PhotographFiles files = files(NOW);
    String hash = files.keep(picture);
    Instant anHourLater = NOW.plusSeconds(3600);
    files.sweep(
        NOW.plusSeconds(1),
        beginning -> {
          // another panel takes it up just after the list of shown pictures was read
          files(anHourLater).keep(picture);
          return Set.of();
        });
    assertThat(files.read(hash, false)).isEqualTo(picture.full());
  }

  @Test
  void a_name_that_is_no_hash_reaches_no_file() {
    PhotographFiles files = files(NOW);
    assertThatThrownBy(() -> files.read("../../db/lapline.mv.db", false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private long count() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).count();
    }
  }
}
