package lapline.practice;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;

/**
 * What a gun's maker says about it, as ranges the way they were typed; empty where the maker says
 * nothing, and then the task's own target holds.
 */
public record GunCard(
    UUID id,
    UUID workshop,
    String name,
    Ranges ranges,
    UUID madeBy,
    Instant made,
    Instant retired) {

  /** The five things a card can say, such as {@code 3 to 5 in}. */
  public record Ranges(
      String distance, String pressure, String overlap, String speed, String fan) {}

  public boolean inUse() {
    return retired == null;
  }

  /** The ranges by the name that a criterion calls them; those left empty are not there. */
  public Map<String, String> byName() {
    Map<String, String> all =
        new java.util.TreeMap<>(
            Map.of(
                "distance", ranges.distance(),
                "pressure", ranges.pressure(),
                "overlap", ranges.overlap(),
                "speed", ranges.speed(),
                "fan", ranges.fan()));
    all.values().removeIf(String::isBlank);
    return all;
  }
}
