package lapline.practice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import lapline.practice.Criterion.Judged;
import lapline.practice.PracticeTask.Field;
import lapline.practice.quantity.Measured;

/**
 * What stands open on a panel's record though part of it was read: one dull place out of fourteen
 * says nothing of the other thirteen, and one coat nothing of the next. What was not read at all is
 * for the quantity itself to say. For one thread.
 */
final class RecordGaps {
  /** More than any place's number, so that coat and place make one number. */
  private static final int PLACES = 1000;

  private final PracticeTask task;
  private final PanelEntry entry;

  /** Coats that were sprayed: those that anything was written down about, and as many as needed. */
  private final int coats;

  /** Criteria share their fields; a task has each of them once. */
  private final Map<Field, List<Cell>> byField = new IdentityHashMap<>();

  RecordGaps(PracticeTask task, PanelEntry entry) {
    this.task = task;
    this.entry = entry;
    this.coats = Math.max(task.coatsNeeded(), entry.coats());
  }

  /**
   * What keeps a criterion from being judged: gaps in what the task requires for it, and places and
   * coats for which nothing came out.
   */
  List<Cell> of(Criterion criterion, Measured measured) {
    List<Field> sources = TargetSources.of(task, criterion);
    List<Cell> required = new ArrayList<>();
    for (Field source : sources) {
      required.addAll(source.required() ? of(source) : List.of());
    }
    boolean settled = !required.isEmpty() || sources.isEmpty() || sources.get(0).required();
    return !settled && measured instanceof Measured.Values values
        ? open(sources.get(0), Found.of(values), wanted(criterion))
        : required;
  }

  /** The open places of a field; empty where it was not read at all. */
  List<Cell> of(Field field) {
    return byField.computeIfAbsent(
        field, f -> open(f, Found.of(entry.of(f.measurand())), coat -> coat <= coats));
  }

  private IntPredicate wanted(Criterion criterion) {
    return criterion.judged() == Judged.LAST ? coat -> coat == coats : coat -> coat <= coats;
  }

  private List<Cell> open(Field field, Found found, IntPredicate coatWanted) {
    if (field.scope() == null || found.onlyOfThePanel) {
      return List.of();
    }
    List<Integer> places = found.byPlace ? PanelCells.spots(task, field) : PanelCells.NONE;
    List<Cell> open = new ArrayList<>();
    int read = 0;
    for (int coat : PanelCells.coats(task, field)) {
      if (coat == 0 || coatWanted.test(coat)) {
        for (int place : places) {
          if (found.at(coat, place)) {
            read++;
          } else {
            open.add(Cell.coatPlace(field.measurand(), coat, place));
          }
        }
      }
    }
    return enough(field, read) ? List.of() : open;
  }

  private static boolean enough(Field field, int read) {
    return field.scope() == Scope.PLACE && field.placesNeeded() > 0 && read >= field.placesNeeded();
  }

  /**
   * Where something was read. One pass stands for its coat, one number of a coat for its places.
   */
  private static final class Found {
    private final BitSet spots = new BitSet();
    private boolean byPlace;

    /** Neither of a coat nor of a place; a step of the work counts as of the whole panel. */
    private boolean onlyOfThePanel = true;

    static Found of(List<Reading> readings) {
      Found found = new Found();
      readings.forEach(r -> found.add(r.cell()));
      return found;
    }

    static Found of(Measured.Values values) {
      Found found = new Found();
      values.values().forEach(v -> found.add(v.where()));
      return found;
    }

    private void add(Cell cell) {
      spots.set(spot(cell.coat(), cell.place()));
      byPlace |= cell.place() > 0;
      onlyOfThePanel &= cell.coat() == 0 && cell.place() == 0;
    }

    boolean at(int coat, int place) {
      return spots.get(spot(coat, place));
    }

    private static int spot(int coat, int place) {
      return coat * PLACES + place;
    }
  }
}
