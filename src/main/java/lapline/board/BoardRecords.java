package lapline.board;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import lapline.practice.Attempt;

/** What is asked across people: each answer is one query, and long ones come by the page. */
public interface BoardRecords {

  /** What stood first among the findings since then, most frequent first. */
  List<FindingCount> findings(UUID workshop, Instant since, int most);

  /** Panels on which a cause stood first since then, latest first. */
  List<FoundPanel> found(UUID workshop, Cause cause, Instant since, int first, int size);

  int countFound(UUID workshop, Cause cause, Instant since);

  /** A cause as it is counted: for all tasks of a unit together. */
  record Cause(String unit, String finding) {}

  /**
   * For each skill that somebody has begun and was never signed off for, how many they are without
   * those who wait for the examiner; most first.
   */
  List<SkillCount> onTheWay(UUID workshop);

  /** Who learns or holds a sign-off, by name. */
  List<Named> people(UUID workshop, int first, int size);

  /** The same with those first whose sign-off of a skill is good at this moment. */
  List<Named> goodFirst(UUID workshop, String skill, Instant now, int first, int size);

  /** The same with those first who wait for the examiner, and after them those on the way. */
  List<Named> waitingFirst(UUID workshop, String skill, int first, int size);

  int countPeople(UUID workshop);

  /** For each skill that somebody has a good sign-off of at this moment, how many they are. */
  List<SkillCount> good(UUID workshop, Instant now);

  /** Sign-offs that end from one moment to before another and are the latest of their skill. */
  List<Ending> ending(UUID workshop, Instant from, Instant before, int first, int size);

  int countEnding(UUID workshop, Instant from, Instant before);

  List<PanelCount> panels(UUID person);

  /** Every cause and doubt found on these panels, with its size. */
  List<FoundSize> sizes(Collection<UUID> attempts);

  /**
   * Whether a cause was found on each of a person's panels of a task, from this one back to those
   * scored after a moment; latest first.
   */
  List<Boolean> foundOn(Attempt upTo, String finding, Instant since, int most);

  /** Every step about a person, latest first, at most {@code most}. */
  List<TakenStep> steps(UUID person, int most);
}
