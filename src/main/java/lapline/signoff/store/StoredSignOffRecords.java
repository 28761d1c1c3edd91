package lapline.signoff.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.signoff.SignOff;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Standing;
import lapline.signoff.Step;

/** Keeps standings, sign-offs and their steps in the database. */
@ApplicationScoped
@Transactional
public class StoredSignOffRecords implements SignOffRecords {
  /** The latest of each person and skill. */
  private static final String LATEST =
      " not exists (select 1 from SignOffEntity later where later.person = s.person"
          + " and later.skill = s.skill and later.grantedAt > s.grantedAt)";

  @PersistenceContext private EntityManager rows;

  @Override
  public void keep(Standing standing) {
    rows.merge(StandingEntity.of(standing));
  }

  @Override
  public Optional<Standing> standing(UUID person, String skill) {
    return Optional.ofNullable(
            rows.find(StandingEntity.class, new StandingEntity.Key(person, skill)))
        .map(StandingEntity::asStanding);
  }

  @Override
  public List<Standing> standings(Collection<UUID> people) {
    if (people.isEmpty()) {
      return List.of();
    }
    return rows.createQuery(
            "select s from StandingEntity s where s.key.person in :people", StandingEntity.class)
        .setParameter("people", people)
        .getResultStream()
        .map(StandingEntity::asStanding)
        .toList();
  }

  @Override
  public List<Standing> outdated(Instant now, int most) {
    return rows.createQuery(
            "select s from StandingEntity s where s.holdsUntil <= :now"
                + " order by s.holdsUntil, s.key.person, s.key.skill",
            StandingEntity.class)
        .setParameter("now", now)
        .setMaxResults(most)
        .getResultStream()
        .map(StandingEntity::asStanding)
        .toList();
  }

  @Override
  public List<Standing> ready(UUID workshop, int first, int size) {
    return rows.createQuery(
            "select s from StandingEntity s where s.workshop = :workshop"
                + " and s.readySince is not null order by s.readySince, s.key.person, s.key.skill",
            StandingEntity.class)
        .setParameter("workshop", workshop)
        .setFirstResult(first)
        .setMaxResults(size)
        .getResultStream()
        .map(StandingEntity::asStanding)
        .toList();
  }

  @Override
  public int countReady(UUID workshop) {
    return rows.createQuery(
            "select count(s) from StandingEntity s where s.workshop = :workshop"
                + " and s.readySince is not null",
            Long.class)
        .setParameter("workshop", workshop)
        .getSingleResult()
        .intValue();
  }

  @Override
  public void add(SignOff signOff) {
    rows.persist(SignOffEntity.of(signOff));
    rows.flush();
  }

  @Override
  public void change(SignOff signOff) {
    rows.merge(SignOffEntity.of(signOff));
  }

  @Override
  public Optional<SignOff> signOff(UUID id) {
    return Optional.ofNullable(rows.find(SignOffEntity.class, id)).map(SignOffEntity::asSignOff);
  }

  @Override
  public Optional<SignOff> byCode(String code) {
    return rows.createQuery(
            "select s from SignOffEntity s where s.code = :code", SignOffEntity.class)
        .setParameter("code", code)
        .getResultStream()
        .findFirst()
        .map(SignOffEntity::asSignOff);
  }

  @Override
  public void hold(UUID person, String skill) {
    // what was read before somebody else let go is read anew
    rows.flush();
    rows.clear();
    rows.find(
        StandingEntity.class,
        new StandingEntity.Key(person, skill),
        LockModeType.PESSIMISTIC_WRITE);
  }

  @Override
  public Optional<Instant> withdrawnAt(UUID person, String skill) {
    return Optional.ofNullable(
        rows.createQuery(
                "select max(s.takenAt) from StepEntity s where s.person = :person"
                    + " and s.skill = :skill and s.kind = :withdrawn",
                Instant.class)
            .setParameter("person", person)
            .setParameter("skill", skill)
            .setParameter("withdrawn", Step.Kind.WITHDRAWN)
            .getSingleResult());
  }

  @Override
  public Optional<SignOff> latest(UUID person, String skill) {
    return rows.createQuery(
            "select s from SignOffEntity s where s.person = :person and s.skill = :skill"
                + " order by s.grantedAt desc",
            SignOffEntity.class)
        .setParameter("person", person)
        .setParameter("skill", skill)
        .setMaxResults(1)
        .getResultStream()
        .findFirst()
        .map(SignOffEntity::asSignOff);
  }

  @Override
  public List<SignOff> latest(Collection<UUID> people) {
    if (people.isEmpty()) {
      return List.of();
    }
    return rows.createQuery(
            "select s from SignOffEntity s where s.person in :people and" + LATEST,
            SignOffEntity.class)
        .setParameter("people", people)
        .getResultStream()
        .map(SignOffEntity::asSignOff)
        .toList();
  }

  @Override
  public void add(Step step) {
    rows.persist(StepEntity.of(step));
  }

  @Override
  public List<Step> steps(UUID person, String skill) {
    return rows.createQuery(
            "select s from StepEntity s where s.person = :person and s.skill = :skill"
                + " order by s.takenAt",
            StepEntity.class)
        .setParameter("person", person)
        .setParameter("skill", skill)
        .setMaxResults(200)
        .getResultStream()
        .map(StepEntity::asStep)
        .toList();
  }
}
