package lapline.board.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.board.BoardRecords;
import lapline.board.Ending;
import lapline.board.FindingCount;
import lapline.board.Named;
import lapline.board.OnTheWay;
import lapline.board.PanelCount;
import lapline.board.TakenStep;
import lapline.people.Role;

/** Asks the database across people, features joined by their ids. */
@ApplicationScoped
@Transactional
public class StoredBoardRecords implements BoardRecords {
  private static final String LATEST =
      " not exists (select 1 from SignOffEntity l where l.person = s.person"
          + " and l.skill = s.skill and l.grantedAt > s.grantedAt)";

  private static final String ENDING =
      " from SignOffEntity s join PersonEntity p on p.id = s.person"
          + " left join StandingEntity t on t.key.person = s.person and t.key.skill = s.skill"
          + " where s.workshop = :workshop and s.state = GRANTED and p.active = true"
          + " and s.expiresAt >= :from and s.expiresAt < :before and"
          + LATEST;

  private static final String PEOPLE =
      " from PersonEntity p where p.workshop.id = :workshop and p.active = true"
          + " and (:apprentice member of p.roles"
          + " or exists (select 1 from SignOffEntity s where s.person = p.id))";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<FindingCount> findings(UUID workshop, Instant since, int most) {
    return page(
        ask(
            "select new lapline.board.FindingCount(f.unit, min(f.task), f.key.finding, count(*),"
                + " count(distinct f.person)) from FindingEntity f"
                + " where f.workshop = :workshop and f.standing = 1 and f.scoredAt >= :since"
                + " group by f.unit, f.key.finding"
                + " order by count(*) desc, f.unit, f.key.finding",
            FindingCount.class,
            Map.of("workshop", workshop, "since", since)),
        0,
        most);
  }

  @Override
  public List<OnTheWay> onTheWay(UUID workshop) {
    return ask(
            "select new lapline.board.OnTheWay(s.key.skill, count(s)) from StandingEntity s"
                + " join PersonEntity p on p.id = s.key.person"
                + " where s.workshop = :workshop and s.onTheWay = true and p.active = true"
                + " group by s.key.skill order by count(s) desc, s.key.skill",
            OnTheWay.class,
            Map.of("workshop", workshop))
        .getResultList();
  }

  @Override
  public List<Named> people(UUID workshop, int first, int size) {
    return page(
        ask(
            "select new lapline.board.Named(p.id, p.name)" + PEOPLE + " order by p.name, p.id",
            Named.class,
            Map.of("workshop", workshop, "apprentice", Role.APPRENTICE)),
        first,
        size);
  }

  @Override
  public int countPeople(UUID workshop) {
    return count(
        "select count(p)" + PEOPLE, Map.of("workshop", workshop, "apprentice", Role.APPRENTICE));
  }

  @Override
  public int countGood(UUID workshop, String skill, Instant now) {
    return count(
        "select count(distinct s.person) from SignOffEntity s"
            + " join PersonEntity p on p.id = s.person"
            + " where s.workshop = :workshop and p.active = true and s.state = GRANTED"
            + " and s.expiresAt > :now and s.skill like :skill and"
            + LATEST,
        Map.of("workshop", workshop, "now", now, "skill", skill == null ? "%" : skill));
  }

  @Override
  public List<Ending> ending(UUID workshop, Instant from, Instant before, int first, int size) {
    return page(
        ask(
            "select new lapline.board.Ending(s.person, p.name, s.skill, s.expiresAt,"
                + " t.panelsCounting, t.panelsNeeded, t.gradedCounting, t.gradedNeeded)"
                + ENDING
                + " order by s.expiresAt, s.id",
            Ending.class,
            ending(workshop, from, before)),
        first,
        size);
  }

  @Override
  public int countEnding(UUID workshop, Instant from, Instant before) {
    return count("select count(s)" + ENDING, ending(workshop, from, before));
  }

  private static Map<String, Object> ending(UUID workshop, Instant from, Instant before) {
    return Map.of("workshop", workshop, "from", from, "before", before);
  }

  @Override
  public List<PanelCount> panels(UUID person) {
    return ask(
            "select new lapline.board.PanelCount(a.skill, count(a),"
                + " sum(case when a.accepted = true then 1L else 0L end))"
                + " from AttemptEntity a where a.person = :person and a.scoredAt is not null"
                + " group by a.skill",
            PanelCount.class,
            Map.of("person", person))
        .getResultList();
  }

  @Override
  public List<TakenStep> steps(UUID person, int most) {
    return page(
        ask(
            "select new lapline.board.TakenStep("
                + "s.skill, s.kind, s.takenAt, p.name, s.reason, s.evidence)"
                + " from StepEntity s join PersonEntity p on p.id = s.takenBy"
                + " where s.person = :person order by s.takenAt desc, s.id",
            TakenStep.class,
            Map.of("person", person)),
        0,
        most);
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
