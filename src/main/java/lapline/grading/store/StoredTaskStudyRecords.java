package lapline.grading.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.Query;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import lapline.grading.TaskStudyRecords;

/** Adds up in the database how practice tasks went. */
@ApplicationScoped
@Transactional
public class StoredTaskStudyRecords implements TaskStudyRecords {
  private static final String TRIES =
      "select t.task_id, count(*), count(distinct t.person_id),"
          + " sum(case when t.nth = 1 then 1 else 0 end),"
          + " sum(case when t.nth = 1 and t.accepted then 1 else 0 end),"
          + " sum(case when t.nth > 1 then 1 else 0 end),"
          + " sum(case when t.nth > 1 and t.accepted then 1 else 0 end)"
          + " from (select a.task_id, a.person_id, a.accepted, row_number() over"
          + " (partition by a.task_id, a.person_id order by a.scored_at, a.id) as nth"
          + " from attempt a where a.workshop_id = :workshop and a.scored_at is not null) t"
          + " group by t.task_id";

  /** Since the target was last set, or the course's was gone back to. */
  private static final String SINCE =
      " left join (select o.criterion_id, max(coalesce(o.retired_at, o.made_at)) as changed"
          + " from target_override o where o.workshop_id = :workshop and o.task_id = :task"
          + " group by o.criterion_id) s on s.criterion_id = v.criterion_id";

  private static final String VERDICTS =
      "select v.criterion_id, sum(case when v.verdict = 'MET' then 1 else 0 end),"
          + " sum(case when v.verdict = 'DOUBTFUL' then 1 else 0 end),"
          + " sum(case when v.verdict = 'MISSED' then 1 else 0 end),"
          + " sum(case when v.judged then 0 else 1 end),"
          + " avg(v.uncertainty_share), count(v.uncertainty_share)"
          + " from attempt a join attempt_verdict v on v.attempt_id = a.id"
          + SINCE
          + " where a.workshop_id = :workshop and a.task_id = :task"
          + " and a.task_version = :version and a.scored_at is not null"
          + " and (s.changed is null or a.scored_at >= s.changed) group by v.criterion_id";

  private static final String AGREED =
      "select a.accepted, a.state, count(*) from attempt a where a.workshop_id = :workshop"
          + " and a.task_id = :task and a.scored_at is not null"
          + " and a.state in ('ACCEPTED', 'RETURNED') group by a.accepted, a.state";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<Tries> tries(UUID workshop) {
    return list(rows.createNativeQuery(TRIES, Object[].class).setParameter("workshop", workshop))
        .stream()
        .map(
            r ->
                new Tries(
                    (String) r[0],
                    count(r[1]),
                    count(r[2]),
                    count(r[3]),
                    count(r[4]),
                    count(r[5]),
                    count(r[6])))
        .toList();
  }

  @Override
  public List<Verdicts> verdicts(UUID workshop, String task, String version) {
    Query query =
        rows.createNativeQuery(VERDICTS, Object[].class)
            .setParameter("workshop", workshop)
            .setParameter("task", task)
            .setParameter("version", version);
    return list(query).stream()
        .map(
            r ->
                new Verdicts(
                    (String) r[0],
                    count(r[1]),
                    count(r[2]),
                    count(r[3]),
                    count(r[4]),
                    r[5] == null ? null : ((Number) r[5]).doubleValue(),
                    count(r[6])))
        .toList();
  }

  @Override
  public Agreed agreed(UUID workshop, String task) {
    Query query =
        rows.createNativeQuery(AGREED, Object[].class)
            .setParameter("workshop", workshop)
            .setParameter("task", task);
    List<Object[]> found = list(query);
    return new Agreed(
        panels(found, true, "ACCEPTED"),
        panels(found, true, "RETURNED"),
        panels(found, false, "ACCEPTED"),
        panels(found, false, "RETURNED"));
  }

  private static long panels(List<Object[]> found, boolean byNumbers, String byEye) {
    return found.stream()
        .filter(r -> r[0].equals(byNumbers) && r[1].equals(byEye))
        .mapToLong(r -> count(r[2]))
        .sum();
  }

  @SuppressWarnings("unchecked")
  private static List<Object[]> list(Query query) {
    return query.getResultList();
  }

  private static long count(Object value) {
    return ((Number) value).longValue();
  }
}
