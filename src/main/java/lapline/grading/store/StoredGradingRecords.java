package lapline.grading.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.grading.Grading;
import lapline.grading.GradingRecords;
import lapline.grading.UnfinishedGrading;

/** Keeps gradings in the database. */
@ApplicationScoped
@Transactional
public class StoredGradingRecords implements GradingRecords {
  /** More gradings of one panel than this are not shown. */
  private static final int MOST = 20;

  @PersistenceContext private EntityManager rows;

  @Override
  public void add(Grading grading) {
    rows.persist(GradingEntity.of(grading));
  }

  @Override
  public List<Grading> of(UUID attempt) {
    return rows
        .createQuery(
            "select g from GradingEntity g where g.attempt = :attempt order by g.gradedAt desc",
            GradingEntity.class)
        .setParameter("attempt", attempt)
        .setMaxResults(MOST)
        // all rows first, so that their marks are read for all at once
        .getResultList()
        .stream()
        .map(GradingEntity::asGrading)
        .toList();
  }

  @Override
  public Optional<Grading> latest(UUID attempt) {
    return of(attempt).stream().findFirst();
  }

  @Override
  public void keep(UnfinishedGrading unfinished) {
    Optional<UnfinishedGradingEntity> there = row(unfinished.attempt(), unfinished.grader());
    UnfinishedGradingEntity row = there.orElseGet(UnfinishedGradingEntity::new);
    row.take(unfinished);
    if (there.isEmpty()) {
      row.id = UUID.randomUUID();
      rows.persist(row);
    }
  }

  @Override
  public Optional<UnfinishedGrading> unfinished(UUID attempt, UUID grader) {
    return row(attempt, grader).map(UnfinishedGradingEntity::asUnfinished);
  }

  @Override
  public void forgetUnfinished(UUID attempt, UUID grader) {
    row(attempt, grader).ifPresent(rows::remove);
  }

  private Optional<UnfinishedGradingEntity> row(UUID attempt, UUID grader) {
    return rows.createQuery(
            "select u from UnfinishedGradingEntity u"
                + " where u.attempt = :attempt and u.grader = :grader",
            UnfinishedGradingEntity.class)
        .setParameter("attempt", attempt)
        .setParameter("grader", grader)
        .getResultStream()
        .findFirst();
  }

  @Override
  public Map<UUID, List<UUID>> graders(Collection<UUID> attempts) {
    if (attempts.isEmpty()) {
      return Map.of();
    }
    return rows.createQuery(
            "select distinct g.attempt, g.grader from GradingEntity g where g.attempt in :attempts",
            Object[].class)
        .setParameter("attempts", attempts)
        .getResultStream()
        .collect(
            Collectors.groupingBy(
                r -> (UUID) r[0], Collectors.mapping(r -> (UUID) r[1], Collectors.toList())));
  }
}
