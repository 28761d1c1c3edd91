package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lapline.pages.drawing.SheetColumn;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.PanelCells;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.Field;
import lapline.practice.Scope;

/** Every box that a task's record has, section by section, by how often the thing is read. */
final class SheetBoxes {
  private final PracticeTask task;
  private final Function<String, Measurand> measurands;
  private final PhraseWriter words;

  SheetBoxes(PracticeTask task, Function<String, Measurand> measurands, PhraseWriter words) {
    this.task = task;
    this.measurands = measurands;
    this.words = words;
  }

  void write(PracticeTask.Section section, SheetColumn sheet) {
    SheetTable table = new SheetTable(sheet);
    sheet.heading(section.title());
    for (List<Field> alike : alike(section.fields())) {
      fields(alike, sheet, table);
      sheet.gap(0.8);
    }
  }

  /** Whether half the sheet's width is enough: for what is read once, and for a few steps. */
  boolean isNarrow(PracticeTask.Section section) {
    return section.fields().stream()
        .allMatch(f -> scope(f) == Scope.PANEL || scope(f) == Scope.STEP && f.steps().size() <= 3);
  }

  /** What is read equally often shares a table, where the first of them stands. */
  private List<List<Field>> alike(List<Field> fields) {
    List<List<Field>> groups = new ArrayList<>();
    for (Field field : fields) {
      groups.stream()
          .filter(g -> sameTable(g.get(0), field))
          .findFirst()
          .ifPresentOrElse(g -> g.add(field), () -> groups.add(new ArrayList<>(List.of(field))));
    }
    return groups;
  }

  private boolean sameTable(Field one, Field other) {
    return scope(one) == scope(other)
        && (scope(one) != Scope.STEP || one.steps().equals(other.steps()));
  }

  private Scope scope(Field field) {
    return measurands.apply(field.measurand()).scope();
  }

  private void fields(List<Field> fields, SheetColumn sheet, SheetTable table) {
    switch (scope(fields.get(0))) {
      case PANEL -> new SheetSingles(sheet).write(fields.stream().map(this::label).toList());
      case STEP -> {
        List<String> steps = fields.get(0).steps();
        table.write("", steps, rows(fields, steps.size(), Cell::step));
      }
      case COAT -> {
        List<String> coats = numbered("drawing.where.coat", task.coats());
        table.write("", coats, rows(fields, coats.size(), Cell::coat));
      }
      case PASS -> passes(fields, table);
      case PLACE ->
          table.write(
              words.say("practice-sheet.place"),
              placeNumbers(),
              fields.stream().map(f -> new SheetTable.Row(label(f), open(f))).toList());
      case COAT_PLACE ->
          table.write(words.say("practice-sheet.place"), placeNumbers(), coatPlaces(fields));
    }
  }

  private void passes(List<Field> fields, SheetTable table) {
    List<String> passes =
        IntStream.rangeClosed(1, task.passesPerCoat()).mapToObj(String::valueOf).toList();
    List<String> coats =
        IntStream.rangeClosed(1, task.coats())
            .mapToObj(coat -> words.say("practice-sheet.coat-passes", coat))
            .toList();
    table.grouped(coats, passes, rows(fields, passes.size(), (id, p) -> Cell.pass(id, 1, p)));
  }

  private List<SheetTable.Row> coatPlaces(List<Field> fields) {
    List<SheetTable.Row> rows = new ArrayList<>();
    for (Field field : fields) {
      for (int coat = 1; coat <= task.coats(); coat++) {
        String label = label(field) + ", " + words.say("drawing.where.coat", coat);
        rows.add(new SheetTable.Row(label, open(field)));
      }
    }
    return rows;
  }

  /** A box for each thing and number that the record has a place for. */
  private List<SheetTable.Row> rows(
      List<Field> fields, int columns, BiFunction<String, Integer, Cell> numbered) {
    return fields.stream()
        .map(f -> row(f, columns, numbered))
        .filter(SheetTable.Row::isAsked)
        .toList();
  }

  private SheetTable.Row row(Field field, int columns, BiFunction<String, Integer, Cell> numbered) {
    List<Cell> room = PanelCells.of(task, field);
    List<Boolean> open =
        IntStream.rangeClosed(1, columns)
            .mapToObj(n -> room.contains(numbered.apply(field.measurand(), n)))
            .toList();
    return new SheetTable.Row(label(field), open);
  }

  private List<String> placeNumbers() {
    return task.panel().places().stream().map(p -> "" + p.number()).toList();
  }

  private List<Boolean> open(Field field) {
    return task.panel().places().stream()
        .map(PanelOutline.Place::number)
        .map(PanelCells.places(task, field)::contains)
        .toList();
  }

  private List<String> numbered(String key, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(n -> words.say(key, n)).toList();
  }

  /**
   * What is read, in which unit, or what may be chosen; a dot marks what the score cannot do
   * without.
   */
  private String label(Field field) {
    Measurand m = measurands.apply(field.measurand());
    String unit = words.unit(m.spoken());
    String inWhat =
        m.options().isEmpty()
            ? unit
            : m.options().stream().map(Measurand.Option::label).collect(Collectors.joining(" / "));
    return (field.required() ? "• " : "")
        + m.label()
        + (inWhat.isEmpty() ? "" : " (" + inWhat + ")");
  }
}
