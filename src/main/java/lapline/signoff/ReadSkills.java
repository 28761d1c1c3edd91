package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.stream.Collectors;
import lapline.content.ContentFiles;
import lapline.lessons.Curriculum;
import lapline.lessons.Unit;

/** Reads the skills once, for all who ask. */
@ApplicationScoped
public class ReadSkills {
  @Produces
  @Singleton
  Skills skills(ContentFiles files, Curriculum curriculum) {
    return new SkillsReader(
            curriculum.units().stream().map(Unit::id).collect(Collectors.toUnmodifiableSet()))
        .read(files);
  }
}
