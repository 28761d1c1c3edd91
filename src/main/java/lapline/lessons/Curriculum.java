package lapline.lessons;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.content.Problem;

/**
 * The course as it could be read: its units in order, the lessons that are whole, and what is wrong
 * with the others.
 */
public record Curriculum(List<Unit> units, Map<String, Lesson> lessons, List<Problem> problems) {

  public Curriculum {
    units = List.copyOf(units);
    lessons = Collections.unmodifiableMap(new LinkedHashMap<>(lessons));
    problems = List.copyOf(problems);
  }

  public Optional<Unit> unit(String id) {
    return units.stream().filter(u -> u.id().equals(id)).findFirst();
  }

  /** Empty when there is no such unit, or its lesson is being mended. */
  public Optional<Lesson> lesson(String unit) {
    return Optional.ofNullable(lessons.get(unit));
  }
}
