package lapline.practice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A workshop's targets and gun cards kept in memory, for tests of the rules. */
final class RememberedTargets implements TargetRecords {
  private final List<TargetOverride> overrides = new ArrayList<>();
  private final List<GunCard> cards = new ArrayList<>();

  @Override
  public List<TargetOverride> inForce(UUID workshop, String task) {
    return history(workshop, task).stream().filter(TargetOverride::inForce).toList();
  }

  @Override
  public List<TargetOverride> history(UUID workshop, String task) {
    return overrides.stream()
        .filter(o -> o.workshop().equals(workshop) && o.task().equals(task))
        .toList();
  }

  @Override
  public void add(TargetOverride override) {
    overrides.add(override);
  }

  @Override
  public void retire(UUID override, UUID by, Instant at) {
    overrides.replaceAll(
        o ->
            o.id().equals(override)
                ? new TargetOverride(
                    o.id(),
                    o.workshop(),
                    o.task(),
                    o.criterion(),
                    o.target(),
                    o.sheet(),
                    o.reason(),
                    o.madeBy(),
                    o.made(),
                    by,
                    at)
                : o);
  }

  @Override
  public List<GunCard> gunCards(UUID workshop) {
    return cards.stream().filter(c -> c.workshop().equals(workshop) && c.inUse()).toList();
  }

  @Override
  public Optional<GunCard> gunCard(UUID id) {
    return cards.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  @Override
  public void add(GunCard card) {
    cards.add(card);
  }

  @Override
  public void change(GunCard putAway) {
    cards.replaceAll(c -> c.id().equals(putAway.id()) ? putAway : c);
  }
}
