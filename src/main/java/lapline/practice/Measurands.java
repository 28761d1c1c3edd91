package lapline.practice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All measurands of the course, by id. */
public final class Measurands {
  private final Map<String, Measurand> byId;

  public Measurands(List<Measurand> all) {
    Map<String, Measurand> map = new LinkedHashMap<>();
    all.forEach(m -> map.put(m.id(), m));
    this.byId = Collections.unmodifiableMap(map);
  }

  public Optional<Measurand> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * @throws IllegalArgumentException when there is none; task files are checked for it when read
   */
  public Measurand require(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("no measurand " + id));
  }

  public List<Measurand> all() {
    return List.copyOf(byId.values());
  }
}
