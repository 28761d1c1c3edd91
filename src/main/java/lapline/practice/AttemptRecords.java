package lapline.practice;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** What is kept about attempts: the panel, what was typed, and how it was judged. */
public interface AttemptRecords {

  /**
   * @throws OpenDraftException when this person has a draft of this task open already
   */
  void add(Attempt draft);

  Optional<Attempt> attempt(UUID id);

  /** The attempt, held against other changes until the transaction ends. */
  Optional<Attempt> attemptToChange(UUID id);

  Optional<Attempt> openDraft(UUID person, String task);

  Optional<Attempt> bySheetCode(String code);

  /** The attempt that was scored by this submission of this person. */
  Optional<Attempt> bySubmitKey(UUID person, String submitKey);

  /** One page, newest started first. */
  List<Attempt> page(AttemptQuery query);

  int count(AttemptQuery query);

  /** Writes gun card and the note on what is changed this time. */
  void changeChoices(Attempt attempt);

  /** Lets all drafts that chose one gun card go on under the one that corrects it. */
  void draftsFollow(UUID gunCard, UUID correctedCard);

  List<KeptReading> readings(UUID attempt);

  /** Writes what was typed, cell by cell, as the attempt's next revision. */
  void keep(UUID attempt, long revision, Instant at, Map<String, String> typed);

  /** Writes the outcome with the task as judged, the verdicts and the findings. */
  void keepJudgement(Attempt scored, String submitKey, PracticeTask asJudged, PanelScore score);

  /** Takes the judgement away again, so that more readings can be added. */
  void reopen(UUID attempt, Again again);

  /** Writes what the instructor decided. */
  void changeState(UUID attempt, Attempt.State state);

  /** All criteria that these panels did not surely meet, in one query. */
  List<Shortfall> shortfalls(Collection<UUID> attempts);

  Optional<PracticeTask> taskAsJudged(UUID attempt);

  Optional<PanelScore> score(UUID attempt);
}
