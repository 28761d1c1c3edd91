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
import lapline.practice.PracticeTask.Section;
import lapline.practice.Scope;

/** Every box that a task's record has, section by section, by how often the thing is read. */
final class SheetBoxes {
  /** The passes of so many coats stay together on a page. */
  private static final int FEW_COATS = 4;

  private final PracticeTask task;
  private final Function<String, Measurand> measurands;
  private final SheetTargets targets;
  private final PhraseWriter words;

  SheetBoxes(
      PracticeTask task,
      Function<String, Measurand> measurands,
      SheetTargets targets,
      PhraseWriter words) {
    this.task = task;
    this.measurands = measurands;
    this.targets = targets;
    this.words = words;
  }

  /**
   * Heading, targets and boxes of a section; the passes of many coats go on in blocks of their own,
   * so that they can go on on another page.
   */
  List<SheetBlock> blocks(Section section) {
    List<List<Field>> groups = section.alike();
    double least = groups.stream().mapToDouble(this::least).max().orElse(SheetSingles.LEAST);
    List<SheetBlock> blocks = new ArrayList<>();
    blocks.add(
        SheetBlock.from(
            least,
            sheet -> {
              targets.write(section, sheet);
              sheet.gap(1);
              for (List<Field> group : groups) {
                fields(group, sheet);
                sheet.gap(0.8);
              }
            }));
    groups.stream()
        .filter(g -> g.get(0).scope() == Scope.PASS)
        .forEach(g -> blocks.addAll(furtherCoats(g)));
    return blocks;
  }

  private List<SheetBlock> furtherCoats(List<Field> fields) {
    List<SheetBlock> blocks = new ArrayList<>();
    int coats = coatsTogether();
    for (int from = coats; from < task.coats(); from += coats) {
      int first = from;
      int end = Math.min(task.coats(), from + coats);
      blocks.add(SheetBlock.from(least(fields), sheet -> passes(fields, first, end, sheet)));
    }
    return blocks;
  }

  /** How many coats' passes stand in one block: all of them where they are few. */
  private int coatsTogether() {
    return task.coats() <= FEW_COATS
        ? task.coats()
        : Math.max(1, SheetTable.TOGETHER / Math.max(1, task.passesPerCoat()));
  }

  /** The passes of some coats, by their numbers from 0. */
  private void passes(List<Field> fields, int from, int to, SheetColumn sheet) {
    int first = from * task.passesPerCoat();
    int end = to * task.passesPerCoat();
    List<SheetTable.Row> rows =
        passRows(fields).stream()
            .map(r -> new SheetTable.Row(r.label(), r.open().subList(first, end)))
            .toList();
    new SheetTable(sheet).write("", passes().subList(first, end), rows);
  }

  private double least(List<Field> fields) {
    return switch (fields.get(0).scope()) {
      case PANEL -> SheetSingles.LEAST;
      case STEP -> SheetTable.least(heads("", fields.get(0).steps()));
      case COAT -> SheetTable.least(coats());
      case PASS -> SheetTable.least(passes().subList(0, task.passesPerCoat()));
      case PLACE -> SheetTable.least(numbers(places(fields)));
      case COAT_PLACE -> SheetTable.least(coatPlaceHeads(places(fields)));
    };
  }

  private void fields(List<Field> fields, SheetColumn sheet) {
    SheetTable table = new SheetTable(sheet);
    switch (fields.get(0).scope()) {
      case PANEL -> new SheetSingles(sheet).write(fields.stream().map(this::single).toList());
      case STEP -> {
        List<String> steps = fields.get(0).steps();
        table.write("", heads("", steps), rows(fields, 1, steps.size(), Cell::step));
      }
      case COAT -> table.write("", coats(), rows(fields, 1, task.coats(), Cell::coat));
      case PASS -> passes(fields, 0, coatsTogether(), sheet);
      case PLACE -> table.write(place(), numbers(places(fields)), placeRows(fields));
      case COAT_PLACE -> coatPlaces(fields, table);
    }
  }

  private SheetSingles.Single single(Field field) {
    return new SheetSingles.Single(label(field), targets.beside(field));
  }

  private List<SheetTable.Head> coats() {
    return heads("", numbered("drawing.where.coat", task.coats()));
  }

  private List<SheetTable.Head> passes() {
    List<String> passes =
        IntStream.rangeClosed(1, task.passesPerCoat()).mapToObj(String::valueOf).toList();
    return numbered("practice-sheet.coat-passes", task.coats()).stream()
        .flatMap(coat -> heads(coat, passes).stream())
        .toList();
  }

  private List<SheetTable.Row> passRows(List<Field> fields) {
    int passes = task.passesPerCoat();
    return rows(
        fields,
        0,
        task.coats() * passes - 1,
        (id, i) -> Cell.pass(id, i / passes + 1, i % passes + 1));
  }

  private List<SheetTable.Row> placeRows(List<Field> fields) {
    return fields.stream().map(f -> new SheetTable.Row(label(f), open(places(fields), f))).toList();
  }

  /** The longer of both runs across: a row for each coat, or one for each place. */
  private void coatPlaces(List<Field> fields, SheetTable table) {
    List<Integer> places = places(fields);
    boolean coatsAcross = task.coats() > places.size();
    table.write(
        coatsAcross ? "" : place(),
        coatPlaceHeads(places),
        coatsAcross ? eachPlace(fields, places) : eachCoat(fields, places));
  }

  private List<SheetTable.Head> coatPlaceHeads(List<Integer> places) {
    return task.coats() > places.size() ? coats() : numbers(places);
  }

  private List<SheetTable.Row> eachPlace(List<Field> fields, List<Integer> places) {
    return places.stream()
        .flatMap(
            place -> {
              String where = words.say("drawing.where.place", place);
              BiFunction<String, Integer, Cell> cells = (id, c) -> Cell.coatPlace(id, c, place);
              return rows(fields, 1, task.coats(), cells).stream().map(r -> r.at(where));
            })
        .toList();
  }

  private List<SheetTable.Row> eachCoat(List<Field> fields, List<Integer> places) {
    return numbered("drawing.where.coat", task.coats()).stream()
        .flatMap(
            coat ->
                fields.stream().map(f -> new SheetTable.Row(label(f), open(places, f)).at(coat)))
        .toList();
  }

  /** A box for each thing and number that the record has a place for. */
  private List<SheetTable.Row> rows(
      List<Field> fields, int first, int last, BiFunction<String, Integer, Cell> numbered) {
    return fields.stream()
        .map(f -> row(f, first, last, numbered))
        .filter(SheetTable.Row::isAsked)
        .toList();
  }

  private SheetTable.Row row(
      Field field, int first, int last, BiFunction<String, Integer, Cell> numbered) {
    List<Cell> room = PanelCells.of(task, field);
    List<Boolean> open =
        IntStream.rangeClosed(first, last)
            .mapToObj(n -> room.contains(numbered.apply(field.measurand(), n)))
            .toList();
    return new SheetTable.Row(label(field), open);
  }

  private String place() {
    return words.say("practice-sheet.place");
  }

  /** The places at which any of these is read. */
  private List<Integer> places(List<Field> fields) {
    return fields.stream()
        .flatMap(f -> PanelCells.allPlaces(task, f).stream())
        .distinct()
        .sorted()
        .toList();
  }

  private List<Boolean> open(List<Integer> places, Field field) {
    return places.stream().map(PanelCells.allPlaces(task, field)::contains).toList();
  }

  private static List<SheetTable.Head> numbers(List<Integer> numbers) {
    return heads("", numbers.stream().map(PanelOutline::nameOf).toList());
  }

  private static List<SheetTable.Head> heads(String group, List<String> texts) {
    return texts.stream().map(text -> new SheetTable.Head(group, text)).toList();
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
