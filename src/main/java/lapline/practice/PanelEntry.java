package lapline.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that was written down about one panel, in SI; what is absent was not measured. Sorted
 * once, since every criterion asks for its readings.
 */
public final class PanelEntry {
  private final Map<Cell, Reading> byCell = new LinkedHashMap<>();
  private final Map<String, List<Reading>> byMeasurand = new LinkedHashMap<>();

  private PanelEntry() {}

  /** Of two readings of one cell the later one counts. */
  public static PanelEntry of(List<Reading> readings) {
    PanelEntry entry = new PanelEntry();
    readings.stream()
        .sorted(Comparator.comparing(Reading::cell))
        .forEach(r -> entry.byCell.put(r.cell(), r));
    for (Reading r : entry.byCell.values()) {
      entry.byMeasurand.computeIfAbsent(r.cell().measurand(), m -> new ArrayList<>()).add(r);
    }
    return entry;
  }

  /** All readings by their cells, in order of measurand, coat, pass, place and step. */
  public Map<Cell, Reading> readings() {
    return Collections.unmodifiableMap(byCell);
  }

  public Optional<Reading> at(Cell cell) {
    return Optional.ofNullable(byCell.get(cell));
  }

  /** How many coats anything was written down about; 0 for none. */
  public int coats() {
    int most = 0;
    for (Cell cell : byCell.keySet()) {
      most = Math.max(most, cell.coat());
    }
    return most;
  }

  /** All readings of a measurand, in order of coat, pass, place and step. */
  public List<Reading> of(String measurand) {
    return Collections.unmodifiableList(byMeasurand.getOrDefault(measurand, List.of()));
  }

  /** The readings of a measurand by place, for one coat (0 where it is not read by coat). */
  public Map<Integer, Reading> byPlace(String measurand, int coat) {
    Map<Integer, Reading> found = new LinkedHashMap<>();
    for (Reading r : of(measurand)) {
      if (r.cell().coat() == coat && r.cell().place() > 0) {
        found.put(r.cell().place(), r);
      }
    }
    return found;
  }
}
