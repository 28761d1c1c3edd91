package lapline.practice;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Everything that was written down about one panel, in SI; what is absent was not measured. */
public record PanelEntry(SortedMap<Cell, Reading> readings) {

  public PanelEntry {
    readings = Collections.unmodifiableSortedMap(new TreeMap<>(readings));
  }

  public static PanelEntry of(List<Reading> readings) {
    SortedMap<Cell, Reading> byCell = new TreeMap<>();
    readings.forEach(r -> byCell.put(r.cell(), r));
    return new PanelEntry(byCell);
  }

  public Optional<Reading> at(Cell cell) {
    return Optional.ofNullable(readings.get(cell));
  }

  /** How many coats anything was written down about; 0 for none. */
  public int coats() {
    return readings.keySet().stream().mapToInt(Cell::coat).max().orElse(0);
  }

  /** All readings of a measurand, in order of coat, pass, place and step. */
  public List<Reading> of(String measurand) {
    // cells are in order of their measurand, so its readings stand together
    Cell first = Cell.panel(measurand);
    Cell beyond = new Cell(measurand, Integer.MAX_VALUE, 0, 0, 0);
    return List.copyOf(readings.subMap(first, beyond).values());
  }

  /** The readings of a measurand by place, for one coat (0 where it is not read by coat). */
  public Map<Integer, Reading> byPlace(String measurand, int coat) {
    Map<Integer, Reading> found = new TreeMap<>();
    for (Reading r : of(measurand)) {
      if (r.cell().coat() == coat && r.cell().place() > 0) {
        found.put(r.cell().place(), r);
      }
    }
    return found;
  }
}
