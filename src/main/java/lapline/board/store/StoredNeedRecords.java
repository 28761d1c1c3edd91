package lapline.board.store;

import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.board.LastPanel;
import lapline.board.NeedRecords;
import lapline.board.ReturnedPanel;
import lapline.board.StuckLearner;
import lapline.board.WaitingLearner;
import lapline.board.WaitingPanel;
import lapline.people.LearnerAdvanced;

/** Keeps who needs an instructor in the database: a row for each who does. */
@ApplicationScoped
@Transactional
public class StoredNeedRecords implements NeedRecords {
  /** Rows without a time stand outside every range, so the index leads past them. */
  private static final String WAITING =
      " from StandingEntity s join PersonEntity p on p.id = s.key.person"
          + " where s.workshop = :workshop and s.waitingSince >= :ever"
          + " and p.active = true and s.key.person <> :instructor";

  private static final String STUCK =
      " from StuckEntity s join PersonEntity p on p.id = s.key.person"
          + " where s.workshop = :workshop and s.last >= :since and p.active = true";

  private static final String RETURNED =
      " from ReturnedEntity r join PersonEntity p on p.id = r.person"
          + " where r.workshop = :workshop and p.active = true"
          + " and not exists (select 1 from AttemptEntity b where b.person = r.person"
          + " and b.task = r.task and b.startedAt > r.startedAt)";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<LastPanel> lastPanels(UUID person, String unit, int most) {
    return page(
        ask(
            "select new lapline.board.LastPanel(a.id, a.task, a.startedAt, a.scoredAt, a.accepted,"
                + " f.key.finding, case when a.state = RETURNED then true else false end)"
                + " from AttemptEntity a"
                + " left join FindingEntity f on f.key.attempt = a.id and f.standing = 1"
                + " where a.person = :person and a.unit = :unit and a.scoredAt is not null"
                + " order by a.scoredAt desc, a.id",
            LastPanel.class,
            Map.of("person", person, "unit", unit)),
        0,
        most);
  }

  @Override
  public void keep(LearnerAdvanced who, List<Stuck> stuck, List<Returned> returned) {
    Map<String, Object> whose = Map.of("person", who.person(), "unit", who.unit());
    Set<String> tasks = stuck.stream().map(Stuck::task).collect(toSet());
    ask(
            "select s from StuckEntity s where s.key.person = :person and s.unit = :unit",
            StuckEntity.class,
            whose)
        .getResultStream()
        .filter(s -> !tasks.contains(s.key.task()))
        .forEach(rows::remove);
    stuck.forEach(s -> rows.merge(StuckEntity.of(who, s)));
    Set<UUID> panels = returned.stream().map(Returned::attempt).collect(toSet());
    ask(
            "select r from ReturnedEntity r where r.person = :person and r.unit = :unit",
            ReturnedEntity.class,
            whose)
        .getResultStream()
        .filter(r -> !panels.contains(r.attempt))
        .forEach(rows::remove);
    returned.forEach(r -> rows.merge(ReturnedEntity.of(who, r)));
  }

  @Override
  public List<WaitingLearner> waiting(UUID workshop, UUID instructor, int first, int size) {
    return page(
        ask(
            "select new lapline.board.WaitingLearner(s.key.person, p.name, s.key.skill,"
                + " s.gradedCounting, s.gradedNeeded, s.waitingSince)"
                + WAITING
                + " order by s.waitingSince, s.key.person, s.key.skill",
            WaitingLearner.class,
            waiting(workshop, instructor)),
        first,
        size);
  }

  @Override
  public WaitingCount countWaiting(UUID workshop, UUID instructor) {
    return ask(
            "select new lapline.board.NeedRecords$WaitingCount(count(s),"
                + " coalesce(sum(s.panelsWaiting), 0L))"
                + WAITING,
            WaitingCount.class,
            waiting(workshop, instructor))
        .getSingleResult();
  }

  private static Map<String, Object> waiting(UUID workshop, UUID instructor) {
    return Map.of("workshop", workshop, "instructor", instructor, "ever", Instant.EPOCH);
  }

  @Override
  public List<WaitingPanel> waitingPanels(Collection<UUID> people) {
    if (people.isEmpty()) {
      return List.of();
    }
    return ask(
            "select new lapline.board.WaitingPanel(a.id, a.person, a.skill, a.task,"
                + " (select count(b) from AttemptEntity b where b.person = a.person"
                + " and b.task = a.task and b.startedAt <= a.startedAt),"
                + " a.scoredAt, a.practiceScore)"
                + " from AttemptEntity a join StandingEntity s"
                + " on s.key.person = a.person and s.key.skill = a.skill"
                + " where a.person in :people and a.state = SCORED and a.accepted = true"
                + " and a.scoredAt >= s.waitingSince order by a.scoredAt, a.id",
            WaitingPanel.class,
            Map.of("people", people))
        .getResultList();
  }

  @Override
  public List<StuckLearner> stuck(UUID workshop, Instant since, int first, int size) {
    return page(
        ask(
            "select new lapline.board.StuckLearner("
                + "s.key.person, p.name, s.key.task, s.finding, s.panels, s.last)"
                + STUCK
                + " order by s.last, s.key.person, s.key.task",
            StuckLearner.class,
            Map.of("workshop", workshop, "since", since)),
        first,
        size);
  }

  @Override
  public int countStuck(UUID workshop, Instant since) {
    return count("select count(s)" + STUCK, Map.of("workshop", workshop, "since", since));
  }

  @Override
  public List<ReturnedPanel> returned(UUID workshop, int first, int size) {
    return page(
        ask(
            "select new lapline.board.ReturnedPanel("
                + "r.attempt, r.person, p.name, r.task, r.returnedAt, r.remark)"
                + RETURNED
                + " order by r.returnedAt, r.attempt",
            ReturnedPanel.class,
            Map.of("workshop", workshop)),
        first,
        size);
  }

  @Override
  public int countReturned(UUID workshop) {
    return count("select count(r)" + RETURNED, Map.of("workshop", workshop));
  }

  private int count(String query, Map<String, Object> values) {
    return ask(query, Long.class, values).getSingleResult().intValue();
  }

  private <T> TypedQuery<T> ask(String query, Class<T> type, Map<String, Object> values) {
    TypedQuery<T> asked = rows.createQuery(query, type);
    values.forEach(asked::setParameter);
    return asked;
  }

  private static <T> List<T> page(TypedQuery<T> query, int first, int size) {
    return query.setFirstResult(first).setMaxResults(size).getResultList();
  }
}
