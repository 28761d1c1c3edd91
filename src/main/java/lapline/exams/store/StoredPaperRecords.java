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
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.content.Json;
import lapline.exams.MarkedAnew;
import lapline.exams.OpenPaperException;
import lapline.exams.Paper;
import lapline.exams.PaperHandedIn;
import lapline.exams.PaperRecords;
import lapline.exams.PaperResult;
import lapline.exams.Sitting;

/** Keeps papers, what is written on them and their marks in the database. */
@ApplicationScoped
@Transactional
public class StoredPaperRecords implements PaperRecords {
  /** A sitting is listed often and its long texts are not wanted then. */
  private static final String SITTING =
      "select p.id, p.workshop, p.person, p.unit, p.drawnAt, p.handedInAt, p.score, p.passed";

  private static final String SITTINGS = SITTING + " from PaperEntity p where ";

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

  @Override
  public Set<String> without(UUID id) {
    return Set.copyOf(
        rows.createQuery(
                "select m.key.item from PaperMarkEntity m"
                    + " where m.key.paper = :paper and m.leftOut = true",
                String.class)
            .setParameter("paper", id)
            .getResultList());
  }

  @Override
  public List<MarkedAnew> markedAnew(UUID id) {
    return rows.createQuery(
            "select a from PaperMarkedAnewEntity a where a.paper = :paper order by a.at desc, a.id",
            PaperMarkedAnewEntity.class)
        .setParameter("paper", id)
        .setMaxResults(50)
        .getResultStream()
        .map(PaperMarkedAnewEntity::read)
        .toList();
  }

  @Override
  public List<PaperHandedIn> counting(UUID workshop, String unit, String item, String version) {
    return handedIn(
        workshop,
        unit,
        "m.leftOut = false and m.key.item = :item and m.itemVersion = :version",
        Map.of("item", item, "version", version));
  }

  @Override
  public List<PaperHandedIn> leavingOut(UUID workshop, String unit, String item) {
    return handedIn(
        workshop, unit, "m.leftOut = true and m.key.item = :item", Map.of("item", item));
  }

  private List<PaperHandedIn> handedIn(
      UUID workshop, String unit, String which, Map<String, Object> values) {
    TypedQuery<Object[]> query =
        rows.createQuery(
                SITTING
                    + ", p.result from PaperEntity p where p.workshop = :workshop"
                    + " and p.unit = :unit and p.handedInAt is not null and exists (select 1"
                    + " from PaperMarkEntity m where m.key.paper = p.id and m.unit = :unit and "
                    + which
                    + ") order by p.handedInAt, p.id",
                Object[].class)
            .setParameter("workshop", workshop)
            .setParameter("unit", unit);
    values.forEach(query::setParameter);
    List<Object[]> found = query.getResultList();
    Map<UUID, Set<String>> without = found.isEmpty() ? Map.of() : leftOut(workshop, unit);
    return found.stream()
        .map(
            row ->
                new PaperHandedIn(
                    sitting(row),
                    Json.read((String) row[8], PaperResult.class),
                    without.getOrDefault((UUID) row[0], Set.of())))
        .toList();
  }

  /** What does not count, by paper. */
  private Map<UUID, Set<String>> leftOut(UUID workshop, String unit) {
    return rows.createQuery(
            "select m.key.paper, m.key.item from PaperMarkEntity m join PaperEntity p"
                + " on p.id = m.key.paper where p.workshop = :workshop and p.unit = :unit"
                + " and m.unit = :unit and m.leftOut = true",
            Object[].class)
        .setParameter("workshop", workshop)
        .setParameter("unit", unit)
        .getResultStream()
        .collect(
            Collectors.groupingBy(
                r -> (UUID) r[0], Collectors.mapping(r -> (String) r[1], Collectors.toSet())));
  }

  @Override
  public void keep(MarkedAnew anew) {
    rows.persist(PaperMarkedAnewEntity.of(anew));
    PaperMarkEntity.Key key = new PaperMarkEntity.Key(anew.paper(), anew.item());
    rows.find(PaperMarkEntity.class, key).leftOut = anew.leftOut();
    rows.createQuery(
            "update PaperEntity p set p.score = :score, p.passed = :passed where p.id = :id")
        .setParameter("score", anew.after().score())
        .setParameter("passed", anew.after().passed())
        .setParameter("id", anew.paper())
        .executeUpdate();
  }
}
