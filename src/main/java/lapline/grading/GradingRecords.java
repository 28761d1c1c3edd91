package lapline.grading;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What is kept of gradings. */
public interface GradingRecords {

  void add(Grading grading);

  /** All gradings of a panel, latest first. */
  List<Grading> of(UUID attempt);

  Optional<Grading> latest(UUID attempt);

  /** Who graded any of these panels, by panel, in one query. */
  Map<UUID, List<UUID>> graders(Collection<UUID> attempts);
}
