package lapline.practice;

import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What a gun's maker says about it, as ranges the way they were typed; empty where the maker says
 * nothing, and then the task's own target holds.
 *
 * @param follows the card that this one corrects; null for a new card
 * @param retiredBy null while it is in use, and where that was not yet written down
 */
public record GunCard(
    UUID id,
    UUID workshop,
    String name,
    Ranges ranges,
    UUID follows,
    UUID madeBy,
    Instant made,
    UUID retiredBy,
    Instant retired) {

  /** The five things a card can say, such as {@code 3 to 5 in}. */
  public record Ranges(String distance, String pressure, String overlap, String speed, String fan) {

    /** Of figures by {@link GunFigure#id()}; one that is not there says nothing. */
    public static Ranges of(Map<String, String> figures) {
      return new Ranges(
          figures.getOrDefault("distance", ""),
          figures.getOrDefault("pressure", ""),
          figures.getOrDefault("overlap", ""),
          figures.getOrDefault("speed", ""),
          figures.getOrDefault("fan", ""));
    }

    /** The ranges by {@link GunFigure#id()}; those left empty are not there. */
    public Map<String, String> byName() {
      Map<String, String> all =
          new TreeMap<>(
              Map.of(
                  "distance", distance,
                  "pressure", pressure,
                  "overlap", overlap,
                  "speed", speed,
                  "fan", fan));
      all.values().removeIf(String::isBlank);
      return all;
    }
  }

  /** The ranges by the name that a criterion calls them; those left empty are not there. */
  public Map<String, String> byName() {
    return ranges.byName();
  }

  public boolean inUse() {
    return retired == null;
  }

  GunCard putAway(UUID by, Instant at) {
    return new GunCard(id, workshop, name, ranges, follows, madeBy, made, by, at);
  }
}
