package lapline.lessons;

import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** What is kept of lessons: who read which, and the answers to their checks. */
public interface LessonRecords {

  void read(UUID person, String unit, String version, Instant at);

  /** Keeps the latest answer; an answer that was right once stays right. */
  void answered(
      UUID person, String unit, String check, Set<Integer> chosen, boolean right, Instant at);

  /** Progress by unit, for all units this person has begun. */
  Map<String, LessonProgress> progress(UUID person);
}
