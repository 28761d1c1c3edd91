package lapline.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Open places of one measurand that are told together: 'places 2, 4–14', or of a coat its places.
 *
 * @param cells in the order of the record; one or more
 */
public record Gap(List<Cell> cells) {

  public Gap {
    cells = List.copyOf(cells);
  }

  /** Open cells, told together where they are of one measurand and one coat's places. */
  public static List<Gap> among(List<Cell> cells) {
    Map<Cell, List<Cell>> together = new LinkedHashMap<>();
    for (Cell cell : cells) {
      Cell head = Cell.coat(cell.measurand(), cell.place() > 0 ? cell.coat() : 0);
      together.computeIfAbsent(head, h -> new ArrayList<>()).add(cell);
    }
    return together.values().stream().map(Gap::new).toList();
  }

  public Cell first() {
    return cells.get(0);
  }

  public String measurand() {
    return first().measurand();
  }

  /** Last word of the message that tells it: what is open, in the plural where it is several. */
  public String kind() {
    boolean place = first().place() > 0;
    boolean coat = first().coat() > 0;
    String what = place ? coat ? "coat-place" : "place" : coat ? "coat" : "whole";
    return cells.size() > 1 ? what + "s" : what;
  }

  /** What goes into the message: what was to be read, the open numbers, and of which coat. */
  public String[] args(String label) {
    return new String[] {label, numbers(), String.valueOf(first().coat())};
  }

  /** Further places are told by their letters. */
  private String numbers() {
    String runs =
        NumberRuns.of(
            cells.stream().map(Gap::number).filter(n -> !PanelOutline.isFurther(n)).toList());
    Stream<String> letters =
        cells.stream().map(Gap::number).filter(PanelOutline::isFurther).map(PanelOutline::nameOf);
    return Stream.concat(Stream.of(runs).filter(r -> !r.isEmpty()), letters)
        .collect(Collectors.joining(", "));
  }

  private static int number(Cell cell) {
    return cell.place() > 0 ? cell.place() : cell.coat();
  }
}
