package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Every place on the record of a panel that a task has room for, in the order in which they are
 * written down; the boxes of the task sheet and the fields of the entry page.
 */
public final class PanelCells {
  private PanelCells() {}

  /** All cells of a task; a field whose measurand is not known has none. */
  public static List<Cell> of(PracticeTask task, Measurands measurands) {
    List<Cell> all = new ArrayList<>();
    for (PracticeTask.Section section : task.sections()) {
      for (PracticeTask.Field field : section.fields()) {
        if (measurands.find(field.measurand()).isPresent()) {
          all.addAll(of(task, field));
        }
      }
    }
    return all;
  }

  /** The cells of one field. */
  public static List<Cell> of(PracticeTask task, PracticeTask.Field field) {
    String id = field.measurand();
    return switch (field.scope()) {
      case PANEL -> List.of(Cell.panel(id));
      case PLACE -> places(task, field).stream().map(n -> Cell.place(id, n)).toList();
      case COAT -> asked(field, task.coats()).mapToObj(c -> Cell.coat(id, c)).toList();
      case COAT_PLACE ->
          upTo(task.coats())
              .boxed()
              .flatMap(c -> places(task, field).stream().map(n -> Cell.coatPlace(id, c, n)))
              .toList();
      case PASS ->
          upTo(task.coats())
              .boxed()
              .flatMap(c -> asked(field, task.passesPerCoat()).mapToObj(p -> Cell.pass(id, c, p)))
              .toList();
      case STEP -> upTo(field.steps().size()).mapToObj(s -> Cell.step(id, s)).toList();
    };
  }

  /** The numbers of the places a field is read at. */
  public static List<Integer> places(PracticeTask task, PracticeTask.Field field) {
    return field.places().isEmpty()
        ? task.panel().places().stream().map(PanelOutline.Place::number).toList()
        : field.places();
  }

  /** Nothing lies between the first and what was before it. */
  private static IntStream asked(PracticeTask.Field field, int last) {
    return IntStream.rangeClosed(field.between() ? 2 : 1, last);
  }

  private static IntStream upTo(int last) {
    return IntStream.rangeClosed(1, last);
  }
}
