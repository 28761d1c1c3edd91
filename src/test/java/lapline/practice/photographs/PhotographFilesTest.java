package lapline.practice.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures lie in files named by what they hold. */
class PhotographFilesTest {
  @TempDir Path folder;

  @Test
  void the_same_picture_twice_is_one_file_with_its_thumbnail() throws Exception {
    PhotographFiles files = new PhotographFiles(folder);
    CleanPicture picture = CleanPicture.of(PhonePicture.lying(400, 300));
    String hash = files.keep(picture);
    assertThat(files.keep(picture)).isEqualTo(hash);
    assertThat(count()).isEqualTo(2);
    assertThat(files.read(hash, false)).isEqualTo(picture.full());
    assertThat(files.read(hash, true)).isEqualTo(picture.small());
  }

  @Test
  void a_removed_picture_is_gone() throws Exception {
    PhotographFiles files = new PhotographFiles(folder);
    files.remove(files.keep(CleanPicture.of(PhonePicture.png(40, 30))));
    assertThat(count()).isZero();
  }

  @Test
  void a_name_that_is_no_hash_reaches_no_file() {
    PhotographFiles files = new PhotographFiles(folder);
    assertThatThrownBy(() -> files.read("../../db/lapline.mv.db", false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private long count() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).count();
    }
  }
}
