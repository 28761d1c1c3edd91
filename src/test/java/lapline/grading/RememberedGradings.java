package lapline.grading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Gradings kept in memory, for tests of the rules. */
public final class RememberedGradings implements GradingRecords {
  private final List<Grading> all = new ArrayList<>();
  private final List<UnfinishedGrading> unfinished = new ArrayList<>();

  @Override
  public void add(Grading grading) {
    all.add(0, grading);
  }

  @Override
  public List<Grading> of(UUID attempt) {
    return all.stream().filter(g -> g.attempt().equals(attempt)).toList();
  }

  @Override
  public Optional<Grading> latest(UUID attempt) {
    return of(attempt).stream().findFirst();
  }

  @Override
  public void keep(UnfinishedGrading kept) {
    forgetUnfinished(kept.attempt(), kept.grader());
    unfinished.add(kept);
  }

  @Override
  public Optional<UnfinishedGrading> unfinished(UUID attempt, UUID grader) {
    return unfinished.stream()
        .filter(u -> u.attempt().equals(attempt) && u.grader().equals(grader))
        .findFirst();
  }

  @Override
  public void forgetUnfinished(UUID attempt, UUID grader) {
    unfinished.removeIf(u -> u.attempt().equals(attempt) && u.grader().equals(grader));
  }

  @Override
  public Map<UUID, List<UUID>> graders(Collection<UUID> attempts) {
    return all.stream()
        .filter(g -> attempts.contains(g.attempt()))
        .collect(
            Collectors.groupingBy(
                Grading::attempt, Collectors.mapping(Grading::grader, Collectors.toList())));
  }
}
