package lapline.exams.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.persistence.PersistenceContext;
import jakarta.persistence.PersistenceException;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.content.Json;
import lapline.exams.OpenPaperException;
import lapline.exams.Paper;
import lapline.exams.PaperRecords;
import lapline.exams.PaperResult;
import lapline.exams.Sitting;

/** Keeps papers, what is written on them and their marks in the database. */
@ApplicationScoped
@Transactional
public class StoredPaperRecords implements PaperRecords {
  /** A sitting is listed often and its long texts are not wanted then. */
  private static final String SITTINGS =
      "select p.id, p.workshop, p.person, p.unit, p.drawnAt, p.handedInAt, p.score, p.passed"
          + " from PaperEntity p where ";

  @PersistenceContext private EntityManager rows;

  @Override
  public void add(Sitting sitting, Paper paper) {
    try {
      rows.persist(PaperEntity.of(sitting, paper));
      rows.flush();
    } catch (PersistenceException e) {
      if (String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("paper_open_key")) {
        throw new OpenPaperException();
      }
      throw e;
    }
  }

  @Override
  public Optional<Sitting> sitting(UUID id) {
    return sittings("p.id = :id", Map.of("id", id), 1).stream().findFirst();
  }

  @Override
  public Optional<Sitting> sittingToChange(UUID id) {
    rows.find(PaperEntity.class, id, LockModeType.PESSIMISTIC_WRITE);
    return sitting(id);
  }

  @Override
  public Optional<Sitting> open(UUID person, String unit) {
    return sittings("p.openKey = :key", Map.of("key", PaperEntity.openKey(person, unit)), 1)
        .stream()
        .findFirst();
  }

  @Override
  public Optional<Sitting> lastHandedIn(UUID person, String unit) {
    return handedIn(person, unit, 1).stream().findFirst();
  }

  @Override
  public List<Sitting> handedIn(UUID person, String unit, int size) {
    return sittings(
        "p.person = :person and p.unit = :unit and p.handedInAt is not null"
            + " order by p.handedInAt desc",
        Map.of("person", person, "unit", unit),
        size);
  }

  @Override
  public Map<String, Sitting> passed(UUID person) {
    return sittings(
            "p.person = :person and p.passed = true order by p.handedInAt desc",
            Map.of("person", person),
            Integer.MAX_VALUE)
        .stream()
        .collect(
            Collectors.toMap(
                Sitting::unit, Function.identity(), (newer, older) -> newer, LinkedHashMap::new));
  }

  private List<Sitting> sittings(String where, Map<String, Object> values, int size) {
    TypedQuery<Object[]> query = rows.createQuery(SITTINGS + where, Object[].class);
    values.forEach(query::setParameter);
    return query.setMaxResults(size).getResultStream().map(StoredPaperRecords::sitting).toList();
  }

  private static Sitting sitting(Object[] row) {
    Instant handedIn = (Instant) row[5];
    Sitting.Outcome outcome =
        handedIn == null ? null : new Sitting.Outcome(handedIn, (Double) row[6], (Boolean) row[7]);
    return new Sitting(
        (UUID) row[0], (UUID) row[1], (UUID) row[2], (String) row[3], (Instant) row[4], outcome);
  }

  @Override
  public Optional<Paper> paper(UUID id) {
    return row(id).map(row -> Json.read(row.questions, Paper.class));
  }

  @Override
  public Optional<PaperResult> result(UUID id) {
    return row(id)
        .filter(row -> row.result != null)
        .map(row -> Json.read(row.result, PaperResult.class));
  }

  private Optional<PaperEntity> row(UUID id) {
    return Optional.ofNullable(rows.find(PaperEntity.class, id));
  }

  @Override
  public Map<String, String> answers(UUID id) {
    Map<String, String> answers = new LinkedHashMap<>();
    answerRows(id).forEach((cell, row) -> answers.put(cell, row.typed));
    return answers;
  }

  private Map<String, PaperAnswerEntity> answerRows(UUID id) {
    return rows.createQuery(
            "select a from PaperAnswerEntity a where a.key.paper = :paper", PaperAnswerEntity.class)
        .setParameter("paper", id)
        .getResultStream()
        .collect(Collectors.toMap(a -> a.key.cell(), Function.identity()));
  }

  @Override
  public void keep(UUID id, Map<String, String> typed, Instant at) {
    Map<String, PaperAnswerEntity> before = answerRows(id);
    typed.forEach(
        (cell, text) -> {
          PaperAnswerEntity row = before.get(cell);
          boolean fresh = row == null;
          if (fresh) {
            row = new PaperAnswerEntity();
            row.key = new PaperAnswerEntity.Key(id, cell);
          }
          row.typed = text;
          row.typedAt = at;
          if (fresh) {
            rows.persist(row);
          }
        });
  }

  @Override
  public void keepResult(Sitting handedIn, PaperResult result) {
    rows.find(PaperEntity.class, handedIn.id()).close(handedIn.outcome(), result);
    result
        .marks()
        .forEach(m -> rows.persist(PaperMarkEntity.of(handedIn.id(), handedIn.unit(), m)));
  }
}
