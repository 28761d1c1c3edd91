package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import lapline.content.ContentFiles;

/** Reads the drills once, for all who ask. */
@ApplicationScoped
public class ReadDrills {
  @Produces
  @Singleton
  Drills drills(ContentFiles files) {
    return DrillsReader.read(files);
  }
}
