package lapline.lessons;

import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Lessons read and answered, kept in memory, for tests of the rules. */
public final class RememberedLessons implements LessonRecords {
  private final Map<UUID, Map<String, LessonProgress>> all = new LinkedHashMap<>();

  @Override
  public void read(UUID person, String unit, String version, Instant at) {
    keep(person, unit, new LessonProgress(at, of(person, unit).right()));
  }

  @Override
  public void answered(
      UUID person, String unit, String check, Set<Integer> chosen, boolean right, Instant at) {
    Set<String> known = new HashSet<>(of(person, unit).right());
    if (right) {
      known.add(check);
    }
    keep(person, unit, new LessonProgress(of(person, unit).read(), known));
  }

  @Override
  public Map<String, LessonProgress> progress(UUID person) {
    return Map.copyOf(all.getOrDefault(person, Map.of()));
  }

  private LessonProgress of(UUID person, String unit) {
    return progress(person).getOrDefault(unit, LessonProgress.NONE);
  }

  private void keep(UUID person, String unit, LessonProgress progress) {
    all.computeIfAbsent(person, p -> new LinkedHashMap<>()).put(unit, progress);
  }
}
