package lapline.lessons.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.lessons.LessonProgress;
import lapline.lessons.LessonRecords;

/** Keeps the progress through lessons in the database. */
@ApplicationScoped
@Transactional
public class StoredLessonRecords implements LessonRecords {
  @PersistenceContext private EntityManager rows;

  @Override
  public void read(UUID person, String unit, String version, Instant at) {
    LessonReadingEntity.Key key = new LessonReadingEntity.Key(person, unit);
    LessonReadingEntity row = rows.find(LessonReadingEntity.class, key);
    if (row == null) {
      row = new LessonReadingEntity();
      row.key = key;
      row.version = version;
      row.readAt = at;
      rows.persist(row);
    }
  }

  @Override
  public void answered(
      UUID person, String unit, String check, Set<Integer> chosen, boolean right, Instant at) {
    CheckAnswerEntity.Key key = new CheckAnswerEntity.Key(person, unit, check);
    CheckAnswerEntity row = rows.find(CheckAnswerEntity.class, key);
    boolean fresh = row == null;
    if (fresh) {
      row = new CheckAnswerEntity();
      row.key = key;
    }
    if (fresh || !row.right) {
      row.chosen =
          new TreeSet<>(chosen).stream().map(String::valueOf).collect(Collectors.joining(","));
      row.right = right;
      row.answeredAt = at;
    }
    if (fresh) {
      rows.persist(row);
    }
  }

  @Override
  public Map<String, LessonProgress> progress(UUID person) {
    Map<String, Instant> read = new HashMap<>();
    for (LessonReadingEntity r : readings(person)) {
      read.put(r.key.unit(), r.readAt);
    }
    Map<String, Set<String>> right = new HashMap<>();
    for (CheckAnswerEntity a : rightAnswers(person)) {
      right.computeIfAbsent(a.key.unit(), u -> new HashSet<>()).add(a.key.check());
    }
    Set<String> units = new HashSet<>(read.keySet());
    units.addAll(right.keySet());
    return units.stream()
        .collect(
            Collectors.toMap(
                u -> u, u -> new LessonProgress(read.get(u), right.getOrDefault(u, Set.of()))));
  }

  private List<LessonReadingEntity> readings(UUID person) {
    return rows.createQuery(
            "select r from LessonReadingEntity r where r.key.person = :person",
            LessonReadingEntity.class)
        .setParameter("person", person)
        .getResultList();
  }

  private List<CheckAnswerEntity> rightAnswers(UUID person) {
    return rows.createQuery(
            "select a from CheckAnswerEntity a where a.key.person = :person and a.right = true",
            CheckAnswerEntity.class)
        .setParameter("person", person)
        .getResultList();
  }
}
