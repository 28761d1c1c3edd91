package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lapline.content.ContentFiles;
import org.junit.jupiter.api.Test;

/** The practice tasks and measurands of the course as they lie in the files. */
class PracticeTaskContentTest {
  private static final PracticeTasks COURSE = PracticeTasks.read(new ContentFiles(Path.of(".")));

  @Test
  void every_task_and_every_measurand_reads_without_a_problem() {
    assertThat(COURSE.problems()).isEmpty();
    assertThat(COURSE.all()).isNotEmpty();
  }
}
