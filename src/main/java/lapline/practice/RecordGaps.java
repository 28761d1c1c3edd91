package lapline.practice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import lapline.practice.Criterion.Judged;
import lapline.practice.PracticeTask.Field;
import lapline.practice.quantity.Measured;

/**
 * What stands open on a panel's record though part of it was read: one dull place out of fourteen
 * says nothing of the other thirteen, and one coat nothing of the next. What was not read at all is
 * for the quantity itself to say. For one thread.
 */
final class RecordGaps {
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
    List<Cell> required =
        sources.stream().filter(Field::required).flatMap(f -> of(f).stream()).toList();
    boolean settled = !required.isEmpty() || sources.isEmpty() || sources.get(0).required();
    return !settled && measured instanceof Measured.Values values
        ? open(sources.get(0), found(values), wanted(criterion))
        : required;
  }

  private static List<Cell> found(Measured.Values values) {
    return values.values().stream().map(Measured.Value::where).toList();
  }

  /** The open places of a field; empty where it was not read at all. */
  List<Cell> of(Field field) {
    return byField.computeIfAbsent(field, this::found);
  }

  private List<Cell> found(Field field) {
    List<Cell> read = entry.of(field.measurand()).stream().map(Reading::cell).toList();
    return open(field, read, coat -> coat <= coats);
  }

  private Predicate<Integer> wanted(Criterion criterion) {
    return criterion.judged() == Judged.LAST ? coat -> coat == coats : coat -> coat <= coats;
  }

  private List<Cell> open(Field field, Collection<Cell> read, Predicate<Integer> coatWanted) {
    if (field.scope() == null || read.stream().allMatch(RecordGaps::ofThePanel)) {
      return List.of();
    }
    boolean byPlace = read.stream().anyMatch(c -> c.place() > 0);
    Set<Cell> wanted = new LinkedHashSet<>();
    PanelCells.of(task, field).stream()
        .filter(c -> c.coat() == 0 || coatWanted.test(c.coat()))
        .forEach(c -> wanted.add(spot(field, c, byPlace)));
    Set<Cell> open = new LinkedHashSet<>(wanted);
    read.forEach(c -> open.remove(spot(field, c, byPlace)));
    return enough(field, wanted.size() - open.size()) ? List.of() : new ArrayList<>(open);
  }

  /** Neither of a coat nor of a place; a step of the work counts as of the whole panel. */
  private static boolean ofThePanel(Cell cell) {
    return cell.coat() == 0 && cell.place() == 0;
  }

  /** One pass stands for its coat, as one number of a coat stands for its places. */
  private static Cell spot(Field field, Cell cell, boolean byPlace) {
    return new Cell(field.measurand(), cell.coat(), 0, byPlace ? cell.place() : 0, 0);
  }

  private static boolean enough(Field field, int read) {
    return field.scope() == Scope.PLACE && field.placesNeeded() > 0 && read >= field.placesNeeded();
  }
}
