package lapline.board;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** What is asked across people: each answer is one query, and long ones come by the page. */
public interface BoardRecords {

  /** What stood first among the findings since then, most frequent first. */
  List<FindingCount> findings(UUID workshop, Instant since, int most);

  /**
   * For each skill that somebody has begun and was never signed off for, how many they are without
   * those who wait for the examiner; most first.
   */
  List<OnTheWay> onTheWay(UUID workshop);

  /** Who learns or holds a sign-off, by name. */
  List<Named> people(UUID workshop, int first, int size);

  int countPeople(UUID workshop);

  /**
   * How many people have a sign-off that is good at this moment.
   *
   * @param skill null for any
   */
  int countGood(UUID workshop, String skill, Instant now);

  /** Sign-offs that end from one moment to before another and are the latest of their skill. */
  List<Ending> ending(UUID workshop, Instant from, Instant before, int first, int size);

  int countEnding(UUID workshop, Instant from, Instant before);

  List<PanelCount> panels(UUID person);

  /** Every step about a person, latest first, at most {@code most}. */
  List<TakenStep> steps(UUID person, int most);
}
