package lapline.signoff.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import lapline.signoff.ForecastRecord;
import lapline.signoff.ForecastRecords;
import lapline.signoff.SkillForecast;

/** Keeps forecasts in the database, and reads there what they are made from. */
@ApplicationScoped
@Transactional
public class StoredForecastRecords implements ForecastRecords {
  private static final String OPEN =
      "select f from ForecastEntity f where f.person = :person and f.state = OPEN";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<Done> panels(UUID workshop, String skill, Collection<UUID> people) {
    if (people.isEmpty()) {
      return List.of();
    }
    return rows.createQuery(
            "select new lapline.signoff.ForecastRecords$Done(a.id, a.person, a.task,"
                + " case when a.accepted = true and a.state <> RETURNED then true else false end)"
                + " from AttemptEntity a where a.workshop = :workshop and a.person in :people"
                + " and a.skill = :skill and a.scoredAt is not null"
                // as evidence has them, the other way round
                + " order by a.person, a.startedAt, a.id desc",
            Done.class)
        .setParameter("workshop", workshop)
        .setParameter("people", people)
        .setParameter("skill", skill)
        .getResultList();
  }

  @Override
  public List<UUID> learners(UUID workshop, String skill, int most) {
    return rows.createQuery(
            "select s.key.person from StandingEntity s where s.workshop = :workshop"
                + " and s.key.skill = :skill order by s.changedAt desc, s.key.person",
            UUID.class)
        .setParameter("workshop", workshop)
        .setParameter("skill", skill)
        .setMaxResults(most)
        .getResultList();
  }

  @Override
  public List<SkillForecast> open(UUID person, String skill) {
    return rows.createQuery(OPEN + " and f.skill = :skill order by f.tried", ForecastEntity.class)
        .setParameter("person", person)
        .setParameter("skill", skill)
        .getResultStream()
        .map(ForecastEntity::asForecast)
        .toList();
  }

  @Override
  public List<SkillForecast> inForce(UUID person) {
    return rows.createQuery(
            OPEN
                + " and not exists (select 1 from ForecastEntity later where later.person = f.person"
                + " and later.skill = f.skill and later.state = OPEN and later.tried > f.tried)",
            ForecastEntity.class)
        .setParameter("person", person)
        .getResultStream()
        .map(ForecastEntity::asForecast)
        .toList();
  }

  @Override
  public void keep(SkillForecast forecast) {
    rows.merge(ForecastEntity.of(forecast));
  }

  @Override
  public void remove(SkillForecast forecast) {
    ForecastEntity row = rows.find(ForecastEntity.class, forecast.attempt());
    if (row != null) {
      rows.remove(row);
    }
  }

  @Override
  public ForecastRecord record(UUID workshop) {
    return rows.createQuery(
            "select new lapline.signoff.ForecastRecord("
                + " coalesce(sum(case when f.state <> OPEN then 1L else 0L end), 0L),"
                + " coalesce(sum(case when f.state = HELD then 1L else 0L end), 0L),"
                + " coalesce(sum(case when f.state = OPEN then 1L else 0L end), 0L),"
                + " count(distinct case when f.state <> OPEN then f.person end),"
                + " coalesce(sum(case when f.state <> OPEN then f.held else 0.0 end), 0.0))"
                + " from ForecastEntity f where f.workshop = :workshop and f.most is not null",
            ForecastRecord.class)
        .setParameter("workshop", workshop)
        .getSingleResult();
  }
}
