package lapline.exams.bank;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a paper of a bank is made of.
 *
 * @param draw how many items of each kind
 * @param pass least share of all marks to pass, 0 to 1
 * @param rest how long after handing in one paper the next may be drawn
 */
public record Blueprint(Map<ItemKind, Integer> draw, double pass, Duration rest) {

  public Blueprint {
    Map<ItemKind, Integer> all = new EnumMap<>(ItemKind.class);
    for (ItemKind kind : ItemKind.values()) {
      all.put(kind, draw.getOrDefault(kind, 0));
    }
    draw = Collections.unmodifiableMap(all);
  }

  /** How many items a paper has. */
  public int size() {
    return draw.values().stream().mapToInt(Integer::intValue).sum();
  }
}
