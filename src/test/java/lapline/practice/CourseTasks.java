package lapline.practice;

import java.nio.file.Path;
import lapline.content.ContentFiles;

/** The practice tasks of the course as they lie in the files, read once. */
final class CourseTasks {
  static final PracticeTasks ALL = PracticeTasks.read(new ContentFiles(Path.of(".")));

  private CourseTasks() {}

  static PracticeTask task(String id) {
    return ALL.find(id).orElseThrow();
  }
}
