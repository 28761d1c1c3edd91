package lapline.exams;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** What is kept about papers: as drawn, as written on, and how they were marked. */
public interface PaperRecords {

  /**
   * @throws OpenPaperException when this person has a paper of this unit open already
   */
  void add(Sitting sitting, Paper paper);

  Optional<Sitting> sitting(UUID id);

  /** The sitting, held against other changes until the transaction ends. */
  Optional<Sitting> sittingToChange(UUID id);

  /** The paper of this unit that the person is sitting. */
  Optional<Sitting> open(UUID person, String unit);

  /** The paper of this unit that the person handed in last. */
  Optional<Sitting> lastHandedIn(UUID person, String unit);

  /** The last paper that the person passed, by unit. */
  Map<String, Sitting> passed(UUID person);

  /** All that the person handed in for a unit, the newest first, at most {@code size}. */
  List<Sitting> handedIn(UUID person, String unit, int size);

  Optional<Paper> paper(UUID id);

  /** What is written on a paper, by place. */
  Map<String, String> answers(UUID id);

  /** Writes what was typed, place by place; other places stay as they are. */
  void keep(UUID id, Map<String, String> typed, Instant at);

  /** Writes the result and closes the paper. */
  void keepResult(Sitting handedIn, PaperResult result);

  /** As it was marked when it was handed in. */
  Optional<PaperResult> result(UUID id);

  /** Ids of the items that no longer count on a paper. */
  Set<String> without(UUID id);

  /** How a paper was marked anew, the newest first. */
  List<MarkedAnew> markedAnew(UUID id);

  /** Papers handed in on which this wording of an item counts. */
  List<PaperHandedIn> counting(UUID workshop, String unit, String item, String version);

  /** Papers handed in on which an item no longer counts, whatever its wording was. */
  List<PaperHandedIn> leavingOut(UUID workshop, String unit, String item);

  /** Keeps that a paper was marked anew, and lets it count so from now on. */
  void keep(MarkedAnew anew);
}
