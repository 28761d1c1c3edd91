package lapline.practice.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.PersistenceException;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.content.Json;
import lapline.practice.Again;
import lapline.practice.Attempt;
import lapline.practice.AttemptQuery;
import lapline.practice.AttemptRecords;
import lapline.practice.KeptReading;
import lapline.practice.OpenDraftException;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.practice.Shortfall;

/** Keeps attempts, their readings and their judgements in the database. */
@ApplicationScoped
@Transactional
public class StoredAttemptRecords implements AttemptRecords {
  private static final List<String> JUDGEMENT_ROWS =
      List.of(
          "delete from VerdictEntity v where v.key.attempt = :attempt",
          "delete from FindingEntity f where f.key.attempt = :attempt",
          "delete from JudgementEntity j where j.attempt = :attempt");

  @PersistenceContext private EntityManager rows;

  @Override
  public void add(Attempt draft) {
    try {
      rows.persist(AttemptEntity.of(draft));
      rows.flush();
    } catch (PersistenceException e) {
      if (String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("attempt_open_key")) {
        throw new OpenDraftException();
      }
      throw e;
    }
  }

  @Override
  public Optional<Attempt> attempt(UUID id) {
    return Optional.ofNullable(rows.find(AttemptEntity.class, id)).map(AttemptEntity::asAttempt);
  }

  @Override
  public Optional<Attempt> attemptToChange(UUID id) {
    AttemptEntity row = rows.find(AttemptEntity.class, id, LockModeType.PESSIMISTIC_WRITE);
    return Optional.ofNullable(row).map(AttemptEntity::asAttempt);
  }

  @Override
  public Optional<Attempt> openDraft(UUID person, String task) {
    return one("a.openKey = :openKey", Map.of("openKey", AttemptEntity.openKey(person, task)));
  }

  @Override
  public Optional<Attempt> bySheetCode(String code) {
    return one("a.sheetCode = :code", Map.of("code", code));
  }

  @Override
  public Optional<Attempt> bySubmitKey(UUID person, String submitKey) {
    return one(
        "a.person = :person and a.submitKey = :key", Map.of("person", person, "key", submitKey));
  }

  private Optional<Attempt> one(String where, Map<String, Object> values) {
    TypedQuery<AttemptEntity> query =
        rows.createQuery("select a from AttemptEntity a where " + where, AttemptEntity.class);
    values.forEach(query::setParameter);
    return query.getResultStream().findFirst().map(AttemptEntity::asAttempt);
  }

  @Override
  public List<Attempt> page(AttemptQuery query) {
    return filtered("select a", " order by a.startedAt desc, a.id", AttemptEntity.class, query)
        .setFirstResult(query.first())
        .setMaxResults(query.size())
        .getResultStream()
        .map(AttemptEntity::asAttempt)
        .toList();
  }

  @Override
  public int count(AttemptQuery query) {
    return filtered("select count(a)", "", Long.class, query).getSingleResult().intValue();
  }

  private <T> TypedQuery<T> filtered(
      String select, String order, Class<T> type, AttemptQuery wanted) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("workshop", wanted.workshop());
    StringBuilder where = new StringBuilder(" from AttemptEntity a where a.workshop = :workshop");
    narrow(where, values, "person", wanted.person());
    narrow(where, values, "task", wanted.task());
    narrow(where, values, "skill", wanted.skill());
    if (!wanted.states().isEmpty()) {
      where.append(" and a.state in :states");
      values.put("states", wanted.states());
    }
    if (wanted.until() != null) {
      where.append(" and a.startedAt <= :until");
      values.put("until", wanted.until());
    }
    TypedQuery<T> query = rows.createQuery(select + where + order, type);
    values.forEach(query::setParameter);
    return query;
  }

  private static void narrow(
      StringBuilder where, Map<String, Object> values, String field, Object wanted) {
    if (wanted != null) {
      where.append(" and a.").append(field).append(" = :").append(field);
      values.put(field, wanted);
    }
  }

  @Override
  public void changeChoices(Attempt attempt) {
    AttemptEntity row = rows.find(AttemptEntity.class, attempt.id());
    row.gunCard = attempt.gunCard();
    row.changedWhat = attempt.changedWhat();
  }

  @Override
  public void draftsFollow(UUID gunCard, UUID correctedCard) {
    rows.createQuery(
            "update AttemptEntity a set a.gunCard = :corrected"
                + " where a.gunCard = :former and a.state = :draft")
        .setParameter("corrected", correctedCard)
        .setParameter("former", gunCard)
        .setParameter("draft", Attempt.State.DRAFT)
        .executeUpdate();
  }

  @Override
  public List<KeptReading> readings(UUID attempt) {
    return readingRows(attempt).values().stream().map(ReadingEntity::asReading).toList();
  }

  private Map<String, ReadingEntity> readingRows(UUID attempt) {
    return rows.createQuery(
            "select r from ReadingEntity r where r.key.attempt = :attempt order by r.key.cell",
            ReadingEntity.class)
        .setParameter("attempt", attempt)
        .getResultStream()
        .collect(
            Collectors.toMap(
                r -> r.key.cell(), Function.identity(), (a, b) -> a, LinkedHashMap::new));
  }

  @Override
  public void keep(UUID attempt, long revision, Instant at, Map<String, String> typed) {
    Map<String, ReadingEntity> before = readingRows(attempt);
    typed.forEach(
        (cell, text) -> {
          ReadingEntity row = before.get(cell);
          boolean fresh = row == null;
          row = fresh ? ReadingEntity.at(attempt, cell) : row;
          row.take(text, at, revision);
          if (fresh) {
            rows.persist(row);
          }
        });
    rows.find(AttemptEntity.class, attempt).revision = revision;
  }

  @Override
  public void keepJudgement(
      Attempt scored, String submitKey, PracticeTask asJudged, PanelScore score) {
    rows.find(AttemptEntity.class, scored.id()).becomeScored(scored, submitKey);
    JudgementEntity judgement = new JudgementEntity();
    judgement.attempt = scored.id();
    judgement.task = Json.write(asJudged);
    judgement.score = Json.write(score);
    rows.persist(judgement);
    score.results().forEach(r -> rows.persist(VerdictEntity.of(scored.id(), r)));
    Set<String> counted = new HashSet<>();
    for (PanelScore.Finding finding : score.findings()) {
      // a cause that two rules name counts once, where it stands first
      if (counted.add(finding.id())) {
        rows.persist(FindingEntity.of(scored, finding, counted.size()));
      }
    }
  }

  @Override
  public void reopen(UUID attempt, Again again) {
    for (String delete : JUDGEMENT_ROWS) {
      rows.createQuery(delete).setParameter("attempt", attempt).executeUpdate();
    }
    AttemptEntity row = rows.find(AttemptEntity.class, attempt);
    row.becomeDraft();
    row.again = Json.write(again);
  }

  @Override
  public void changeState(UUID attempt, Attempt.State state) {
    rows.find(AttemptEntity.class, attempt).state = state;
  }

  @Override
  public List<Shortfall> shortfalls(Collection<UUID> attempts) {
    if (attempts.isEmpty()) {
      return List.of();
    }
    return rows.createQuery(
            "select new lapline.practice.Shortfall(a.id, a.task, v.key.criterion, v.verdict)"
                + " from VerdictEntity v join AttemptEntity a on a.id = v.key.attempt"
                + " where v.key.attempt in :attempts and (v.verdict is null or v.verdict <> MET)"
                + " order by a.id, v.key.criterion",
            Shortfall.class)
        .setParameter("attempts", attempts)
        .getResultList();
  }

  @Override
  public Optional<PracticeTask> taskAsJudged(UUID attempt) {
    return judgement(attempt).map(j -> Json.read(j.task, PracticeTask.class));
  }

  @Override
  public Optional<PanelScore> score(UUID attempt) {
    return judgement(attempt).map(j -> Json.read(j.score, PanelScore.class));
  }

  private Optional<JudgementEntity> judgement(UUID attempt) {
    return Optional.ofNullable(rows.find(JudgementEntity.class, attempt));
  }
}
