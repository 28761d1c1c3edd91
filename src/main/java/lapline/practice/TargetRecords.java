package lapline.practice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What is kept about a workshop's own targets and its gun cards. */
public interface TargetRecords {

  /** The overrides of a task that are in force, at most one for each criterion. */
  List<TargetOverride> inForce(UUID workshop, String task);

  /** All overrides of a task that ever were, newest first. */
  List<TargetOverride> history(UUID workshop, String task);

  void add(TargetOverride override);

  void retire(UUID override, UUID by, Instant at);

  /** The cards in use, by name. */
  List<GunCard> gunCards(UUID workshop);

  Optional<GunCard> gunCard(UUID id);

  void add(GunCard card);

  /** Writes that it was put away, by whom and when; a card's figures never change. */
  void change(GunCard putAway);
}
