package lapline.board.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.board.BoardRecords;
import lapline.board.Ending;
import lapline.board.FindingCount;
import lapline.board.FoundPanel;
import lapline.board.FoundSize;
import lapline.board.Named;
import lapline.board.PanelCount;
import lapline.board.SkillCount;
import lapline.board.TakenStep;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.PanelScore;

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

  private static final String FOUND =
      " where f.workshop = :workshop and f.unit = :unit and f.key.finding = :finding"
          + " and f.standing = 1 and f.scoredAt >= :since";

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
                + " and f.key.finding not like :doubt and f.key.finding not like :blind"
                + " group by f.unit, f.key.finding"
                + " order by count(*) desc, f.unit, f.key.finding",
            FindingCount.class,
            Map.of(
                "workshop",
                workshop,
                "since",
                since,
                "doubt",
                "%" + PanelScore.Finding.DOUBT,
                "blind",
                "%" + PanelScore.Finding.BLIND)),
        0,
        most);
  }

  @Override
  public List<FoundPanel> found(UUID workshop, Cause cause, Instant since, int first, int size) {
    return page(
        ask(
            "select new lapline.board.FoundPanel("
                + "a.id, a.person, p.name, a.task, a.scoredAt, a.practiceScore)"
                + " from FindingEntity f join AttemptEntity a on a.id = f.key.attempt"
                + " join PersonEntity p on p.id = f.person"
                + FOUND
                + " order by f.scoredAt desc, f.key.attempt",
            FoundPanel.class,
            found(workshop, cause, since)),
        first,
        size);
  }

  @Override
  public int countFound(UUID workshop, Cause cause, Instant since) {
    return count("select count(*) from FindingEntity f" + FOUND, found(workshop, cause, since));
  }

  private static Map<String, Object> found(UUID workshop, Cause cause, Instant since) {
    return Map.of(
        "workshop", workshop, "unit", cause.unit(), "finding", cause.finding(), "since", since);
  }

  @Override
  public List<SkillCount> onTheWay(UUID workshop) {
    return ask(
            "select new lapline.board.SkillCount(s.key.skill, count(s)) from StandingEntity s"
                + " join PersonEntity p on p.id = s.key.person"
                + " where s.workshop = :workshop and s.onTheWay = true and p.active = true"
                + " group by s.key.skill order by count(s) desc, s.key.skill",
            SkillCount.class,
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
  public List<Named> goodFirst(UUID workshop, String skill, Instant now, int first, int size) {
    return page(
        ask(
            "select new lapline.board.Named(p.id, p.name)"
                + PEOPLE
                + " order by case when exists (select 1 from SignOffEntity s"
                + " where s.person = p.id and s.skill = :skill and s.state = GRANTED"
                + " and s.expiresAt > :now and"
                + LATEST
                + ") then 0 else 1 end, p.name, p.id",
            Named.class,
            Map.of(
                "workshop", workshop, "apprentice", Role.APPRENTICE, "skill", skill, "now", now)),
        first,
        size);
  }

  @Override
  public List<Named> waitingFirst(UUID workshop, String skill, int first, int size) {
    return page(
        ask(
            "select new lapline.board.Named(p.id, p.name)"
                + PEOPLE
                + " order by case when exists (select 1 from StandingEntity t"
                + " where t.key.person = p.id and t.key.skill = :skill"
                + " and t.readySince is not null) then 0"
                + " when exists (select 1 from StandingEntity t where t.key.person = p.id"
                + " and t.key.skill = :skill and t.onTheWay = true) then 1"
                + " else 2 end, p.name, p.id",
            Named.class,
            Map.of("workshop", workshop, "apprentice", Role.APPRENTICE, "skill", skill)),
        first,
        size);
  }

  @Override
  public int countPeople(UUID workshop) {
    return count(
        "select count(p)" + PEOPLE, Map.of("workshop", workshop, "apprentice", Role.APPRENTICE));
  }

  @Override
  public List<SkillCount> good(UUID workshop, Instant now) {
    return ask(
            "select new lapline.board.SkillCount(s.skill, count(distinct s.person))"
                + " from SignOffEntity s join PersonEntity p on p.id = s.person"
                + " where s.workshop = :workshop and p.active = true and s.state = GRANTED"
                + " and s.expiresAt > :now and"
                + LATEST
                + " group by s.skill",
            SkillCount.class,
            Map.of("workshop", workshop, "now", now))
        .getResultList();
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
  public List<FoundSize> sizes(Collection<UUID> attempts) {
    return attempts.isEmpty()
        ? List.of()
        : ask(
                "select new lapline.board.FoundSize(f.key.attempt, f.key.finding, f.off,"
                    + " f.offUncertainty, f.offFreedom, f.offDimension) from FindingEntity f"
                    + " where f.key.attempt in :attempts order by f.key.attempt, f.standing",
                FoundSize.class,
                Map.of("attempts", attempts))
            .getResultList();
  }

  @Override
  public List<Boolean> foundOn(Attempt upTo, String finding, Instant since, int most) {
    return page(
        ask(
            "select case when exists (select 1 from FindingEntity f where f.key.attempt = a.id"
                + " and f.key.finding = :finding) then true else false end"
                + " from AttemptEntity a where a.person = :person and a.task = :task"
                + " and a.scoredAt > :since and a.scoredAt <= :upTo"
                + " order by a.scoredAt desc, a.id",
            Boolean.class,
            Map.of(
                "finding",
                finding,
                "person",
                upTo.person(),
                "task",
                upTo.task(),
                "since",
                since,
                "upTo",
                upTo.outcome().scored())),
        0,
        most);
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
