package lapline.practice.photographs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What is kept about the photographs of panels. */
public interface PhotographRecords {

  void add(Photograph photograph);

  /** In the order they were added. */
  List<Photograph> of(UUID attempt);

  Optional<Photograph> photograph(UUID id);

  void remove(UUID id);

  /** The pictures on any panel whose names begin with these letters. */
  Set<String> shown(String beginning);
}
