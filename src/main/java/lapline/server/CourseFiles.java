package lapline.server;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import jakarta.interceptor.Interceptor;
import jakarta.servlet.ServletContext;
import java.nio.file.Path;
import lapline.content.ContentFiles;

/** Finds the course's files where the server has unpacked the application. */
@ApplicationScoped
public class CourseFiles {
  private static final String CLASSES = "/WEB-INF/classes";

  private ContentFiles files;

  /** Before anything else that happens at the start, since the rest of it may read the course. */
  void find(
      @Observes
          @Initialized(ApplicationScoped.class)
          @Priority(Interceptor.Priority.PLATFORM_BEFORE)
          ServletContext context) {
    String folder = context.getRealPath(CLASSES);
    if (folder == null) {
      throw new IllegalStateException("the server has not unpacked " + CLASSES);
    }
    files = new ContentFiles(Path.of(folder));
  }

  @Produces
  @Singleton
  ContentFiles files() {
    return files;
  }
}
