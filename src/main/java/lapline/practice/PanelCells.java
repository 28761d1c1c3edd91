package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.practice.fit.BuildByPlace;

/**
 * Every place on the record of a panel that a task has room for, in the order in which they are
 * written down; the boxes of the task sheet and the fields of the entry page.
 */
public final class PanelCells {
  /** Stands for the whole of a panel, or of a coat. */
  static final List<Integer> NONE = List.of(0);

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
    return coats(task, field).stream().flatMap(coat -> ofCoat(task, field, coat)).toList();
  }

  private static Stream<Cell> ofCoat(PracticeTask task, PracticeTask.Field field, int coat) {
    String id = field.measurand();
    return switch (field.scope()) {
      case PANEL, COAT, PLACE, COAT_PLACE ->
          Stream.concat(spots(task, field).stream(), further(task, field).stream())
              .map(n -> Cell.coatPlace(id, coat, n));
      case PASS -> asked(field, task.passesPerCoat()).mapToObj(p -> Cell.pass(id, coat, p));
      case STEP -> IntStream.rangeClosed(1, field.steps().size()).mapToObj(s -> Cell.step(id, s));
    };
  }

  /** The numbers of the coats a field is read in; 0 alone where it is not read by coat. */
  static List<Integer> coats(PracticeTask task, PracticeTask.Field field) {
    return switch (field.scope()) {
      case PANEL, PLACE, STEP -> NONE;
      case COAT -> asked(field, task.coats()).boxed().toList();
      case COAT_PLACE, PASS -> IntStream.rangeClosed(1, task.coats()).boxed().toList();
    };
  }

  /** The numbers of the places a field is read at; 0 alone where it is not read by place. */
  static List<Integer> spots(PracticeTask task, PracticeTask.Field field) {
    boolean byPlace = field.scope() == Scope.PLACE || field.scope() == Scope.COAT_PLACE;
    return byPlace ? places(task, field) : NONE;
  }

  /** The numbers of the places a field is asked for at. */
  public static List<Integer> places(PracticeTask task, PracticeTask.Field field) {
    return field.places().isEmpty()
        ? task.panel().ownPlaces().stream().map(PanelOutline.Place::number).toList()
        : field.places();
  }

  /**
   * The numbers of the further places it may be read at. Of what is read at places only the cured
   * film can still be read where nobody thought of reading before.
   */
  public static List<Integer> further(PracticeTask task, PracticeTask.Field field) {
    return field.measurand().equals(BuildByPlace.AFTER)
        ? task.panel().furtherPlaces().stream().map(PanelOutline.Place::number).toList()
        : List.of();
  }

  /** The numbers of all places it may be read at, the further ones last. */
  public static List<Integer> allPlaces(PracticeTask task, PracticeTask.Field field) {
    return Stream.concat(places(task, field).stream(), further(task, field).stream()).toList();
  }

  /** Nothing lies between the first and what was before it. */
  private static IntStream asked(PracticeTask.Field field, int last) {
    return IntStream.rangeClosed(field.between() ? 2 : 1, last);
  }
}
