package lapline.exchange.readings;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.PanelCells;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Unit;

/**
 * The values of a file, each at its place on a panel's record.
 *
 * @param typed by cell key, what stands in the file, with the unit that the column's name gives
 * @param cells the cell each value went to, by row and column; empty where it went nowhere
 * @param astray rows and columns of values that the task has no place for
 */
public record PlacedReadings(Map<String, String> typed, Map<At, String> cells, List<At> astray) {

  /** One value of the file; both counted from 0. */
  public record At(int row, int column) {}

  /** Where in the file the values of these cells stand, row by row. */
  public List<At> with(Set<String> keys) {
    return cells.entrySet().stream()
        .filter(e -> keys.contains(e.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Puts every value of a file where its row and the uses of the columns say. */
  public static PlacedReadings of(
      PracticeTask task, Measurands measurands, ReadingsTable table, List<ColumnUse> uses) {
    return new Placing(task, measurands, table, uses).run();
  }

  /** The work of placing, row by row. */
  private static final class Placing {
    private static final Pattern UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]+?)\\s*[)\\]]");
    private static final Pattern BARE = Pattern.compile("[-+−]?\\d[\\d.,]*");

    private final Map<String, Measurand> asked;
    private final Map<String, List<Cell>> room;
    private final ReadingsTable table;
    private final List<ColumnUse> uses;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final Map<At, String> cells = new LinkedHashMap<>();
    private final List<At> astray = new java.util.ArrayList<>();

    /** How many rows were seen for each measurand and coat, for files that number nothing. */
    private final Map<String, Integer> seen = new HashMap<>();

    Placing(PracticeTask task, Measurands measurands, ReadingsTable table, List<ColumnUse> uses) {
      this.asked =
          task.sections().stream()
              .flatMap(s -> s.fields().stream())
              .flatMap(f -> measurands.find(f.measurand()).stream())
              .collect(Collectors.toMap(Measurand::id, m -> m));
      this.room =
          PanelCells.of(task, measurands).stream().collect(Collectors.groupingBy(Cell::measurand));
      this.table = table;
      this.uses = uses;
    }

    PlacedReadings run() {
      for (int r = 0; r < table.rows().size(); r++) {
        for (int c = 0; c < uses.size(); c++) {
          if (uses.get(c).kind() == ColumnUse.Kind.READING) {
            place(r, c);
          }
        }
      }
      return new PlacedReadings(
          Collections.unmodifiableMap(typed),
          Collections.unmodifiableMap(cells),
          List.copyOf(astray));
    }

    private void place(int row, int column) {
      ColumnUse use = uses.get(column);
      String value = table.rows().get(row).get(column);
      Measurand measurand = asked.get(use.measurand());
      Optional<Cell> cell =
          measurand == null ? Optional.empty() : cell(row, use, measurand, value.isBlank());
      if (value.isBlank()) {
        return;
      }
      if (cell.isEmpty()) {
        astray.add(new At(row, column));
        return;
      }
      String key = cell.get().key();
      cells.put(new At(row, column), key);
      typed.put(key, withUnit(value, table.header().get(column), measurand));
    }

    private Optional<Cell> cell(int row, ColumnUse use, Measurand m, boolean blank) {
      int coat = use.coat() > 0 ? use.coat() : number(row, ColumnUse.Kind.COAT).orElse(0);
      Optional<Integer> numbered =
          number(
              row,
              switch (m.scope()) {
                case PLACE, COAT_PLACE -> ColumnUse.Kind.PLACE;
                case PASS -> ColumnUse.Kind.PASS;
                case STEP -> ColumnUse.Kind.STEP;
                case COAT, PANEL -> ColumnUse.Kind.COAT;
              });
      List<Cell> places = ofCoat(m, coat);
      if (numbered.isPresent() && m.scope() != lapline.practice.Scope.PANEL) {
        return places.stream().filter(c -> last(c) == numbered.get()).findFirst();
      }
      return inTurn(m, m.id() + "." + coat, places, blank);
    }

    /** Some leave a row free for the first pass, which has no step before it; some do not. */
    private Optional<Cell> inTurn(Measurand m, String column, List<Cell> places, boolean blank) {
      if (m.between() && blank && !seen.containsKey(column)) {
        return Optional.empty();
      }
      int next = seen.merge(column, 1, Integer::sum) - 1;
      return next < places.size() ? Optional.of(places.get(next)) : Optional.empty();
    }

    /** The measurand's places, of one coat where it is read by coat; coat 1 when none is said. */
    private List<Cell> ofCoat(Measurand m, int coat) {
      List<Cell> all = room.getOrDefault(m.id(), List.of());
      boolean byCoat =
          m.scope() == lapline.practice.Scope.COAT_PLACE
              || m.scope() == lapline.practice.Scope.PASS;
      int wanted = Math.max(1, coat);
      return byCoat ? all.stream().filter(c -> c.coat() == wanted).toList() : all;
    }

    /** The number that tells a cell from its neighbours. */
    private static int last(Cell c) {
      return c.step() > 0
          ? c.step()
          : c.place() > 0 ? c.place() : c.pass() > 0 ? c.pass() : c.coat();
    }

    private Optional<Integer> number(int row, ColumnUse.Kind kind) {
      for (int c = 0; c < uses.size(); c++) {
        if (uses.get(c).kind() == kind) {
          Optional<Integer> lettered = lettered(kind, table.rows().get(row).get(c));
          if (lettered.isPresent()) {
            return lettered;
          }
          Matcher digits = Pattern.compile("\\d{1,3}").matcher(table.rows().get(row).get(c));
          return digits.find() ? Optional.of(Integer.valueOf(digits.group())) : Optional.of(0);
        }
      }
      return Optional.empty();
    }

    /** A further place goes by its letter. */
    private static Optional<Integer> lettered(ColumnUse.Kind kind, String text) {
      String letter = text.strip().toUpperCase(java.util.Locale.ROOT);
      return kind == ColumnUse.Kind.PLACE && letter.matches("[A-Z]")
          ? Optional.of(PanelOutline.FURTHER + 1 + letter.charAt(0) - 'A')
          : Optional.empty();
    }

    /** '2.4' under 'Film (mil)' is '2.4 mil'. */
    private static String withUnit(String value, String header, Measurand m) {
      Matcher named = UNIT.matcher(header);
      return BARE.matcher(value).matches()
              && named.find()
              && Unit.spelt(named.group(1), m.dimension()).isPresent()
          ? value + " " + named.group(1)
          : choice(value, m);
    }

    /** A choice may stand in the file by its label. */
    private static String choice(String value, Measurand m) {
      return m.options().stream()
          .filter(o -> o.label().equalsIgnoreCase(value) || o.id().equalsIgnoreCase(value))
          .map(Measurand.Option::id)
          .findFirst()
          .orElse(value);
    }
  }
}
