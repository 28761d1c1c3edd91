package lapline.practice.photographs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What is kept about the photographs of panels. */
public interface PhotographRecords {

  void add(Photograph photograph);

  /** In the order they were added. */
  List<Photograph> of(UUID attempt);

  Optional<Photograph> photograph(UUID id);

  void remove(UUID id);

  /** How many photographs, of any panel, are this picture. */
  int count(String hash);
}
