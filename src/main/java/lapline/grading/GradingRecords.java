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

  /** Keeps it in the place of what the same instructor had put down about the panel before. */
  void keep(UnfinishedGrading unfinished);

  Optional<UnfinishedGrading> unfinished(UUID attempt, UUID grader);

  void forgetUnfinished(UUID attempt, UUID grader);

  /** Who graded any of these panels, by panel, in one query. */
  Map<UUID, List<UUID>> graders(Collection<UUID> attempts);
}
