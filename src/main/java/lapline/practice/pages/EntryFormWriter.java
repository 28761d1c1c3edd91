package lapline.practice.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.pages.Messages;
import lapline.practice.Cell;
import lapline.practice.Measurands;
import lapline.practice.PanelCells;
import lapline.practice.PracticeTask;
import lapline.practice.Scope;
import lapline.practice.pages.EntryFields.Asked;
import lapline.trade.measure.UnitSystem;

/**
 * Lays out the fields of a task: what is read once stands singly, what is read at places, passes or
 * steps stands in tables that can be filled down a column.
 */
final class EntryFormWriter {
  private final PracticeTask task;
  private final Measurands measurands;
  private final UnitSystem units;
  private final Messages words;
  private final EntryFields fields;

  EntryFormWriter(
      PracticeTask task,
      Measurands measurands,
      UnitSystem units,
      EntryValues values,
      Messages words) {
    this.task = task;
    this.measurands = measurands;
    this.units = units;
    this.words = words;
    this.fields =
        new EntryFields(task, units, values, words, Set.copyOf(PanelCells.of(task, measurands)));
  }

  EntryForm form() {
    List<EntryForm.Section> sections =
        task.sections().stream().map(this::section).filter(s -> !s.parts().isEmpty()).toList();
    return new EntryForm(sections);
  }

  private EntryForm.Section section(PracticeTask.Section section) {
    List<Asked> asked =
        section.alike().stream()
            .flatMap(List::stream)
            .flatMap(f -> measurands.find(f.measurand()).map(m -> new Asked(f, m)).stream())
            .toList();
    List<EntryForm.Block> blocks = new ArrayList<>();
    for (List<Asked> run : runs(asked)) {
      blocks.addAll(blocks(section.id() + "-" + blocks.size(), run));
    }
    blocks.removeIf(b -> b.rows().isEmpty());
    return new EntryForm.Section(section.id(), section.title(), note(section), parts(blocks));
  }

  /** Where the further places lie is said where they are asked for. */
  private String note(PracticeTask.Section section) {
    boolean further =
        section.fields().stream().anyMatch(f -> !PanelCells.further(task, f).isEmpty());
    PhraseWriter writer = new PhraseWriter(words, units);
    String spots =
        task.panel().furtherPlaces().stream()
            .map(p -> NextPlaceWords.said(p, writer))
            .collect(Collectors.joining("; "));
    String note = section.note() == null ? "" : section.note() + " ";
    return further ? note + words.say("entry.further", spots) : section.note();
  }

  /** What is read at places stands beside the drawing, what is not does not. */
  private static List<EntryForm.Part> parts(List<EntryForm.Block> blocks) {
    List<EntryForm.Part> parts = new ArrayList<>();
    for (EntryForm.Block block : blocks) {
      boolean drawn = block.rows().stream().anyMatch(r -> r.place() > 0);
      if (parts.isEmpty() || parts.get(parts.size() - 1).drawn() != drawn) {
        parts.add(new EntryForm.Part(drawn, new ArrayList<>()));
      }
      parts.get(parts.size() - 1).blocks().add(block);
    }
    return parts;
  }

  /** Neighbours that can share a table: read as often, at the same places or steps. */
  private List<List<Asked>> runs(List<Asked> asked) {
    List<List<Asked>> runs = new ArrayList<>();
    Asked former = null;
    for (Asked a : asked) {
      if (former == null || !together(former, a)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(a);
      former = a;
    }
    return runs;
  }

  private boolean together(Asked a, Asked b) {
    return a.scope() == b.scope()
        && a.scope() != Scope.COAT_PLACE
        && a.field().steps().equals(b.field().steps())
        && (a.scope() != Scope.PLACE
            || PanelCells.places(task, a.field()).equals(PanelCells.places(task, b.field())));
  }

  private List<EntryForm.Block> blocks(String id, List<Asked> run) {
    return switch (run.get(0).scope()) {
      case PANEL -> List.of(singly(id, "", run, 0));
      case COAT -> coats().map(c -> singly(id + "-c" + c, fields.coat(c), run, c)).toList();
      case PASS -> coats().map(c -> passes(id + "-c" + c, run, c)).toList();
      case PLACE -> List.of(places(id, run));
      case COAT_PLACE -> List.of(placesByCoat(id, run.get(0)));
      case STEP -> List.of(steps(id, run));
    };
  }

  private Stream<Integer> coats() {
    return Stream.iterate(1, c -> c + 1).limit(task.coats());
  }

  private EntryForm.Block singly(String id, String title, List<Asked> run, int coat) {
    String where = coat == 0 ? "" : title;
    List<EntryForm.Row> rows =
        run.stream()
            .map(
                a ->
                    new EntryForm.Row(
                        a.measurand().label(),
                        0,
                        List.of(fields.field(a, Cell.coat(a.measurand().id(), coat), where))))
            .filter(EntryForm.Row::isAsked)
            .toList();
    return new EntryForm.Block(id, title, false, "", List.of(), rows);
  }

  private EntryForm.Block passes(String id, List<Asked> run, int coat) {
    List<EntryForm.Row> rows = new ArrayList<>();
    for (int p = 1; p <= task.passesPerCoat(); p++) {
      int pass = p;
      String where = words.say("entry.coat-pass", coat, pass);
      rows.add(
          new EntryForm.Row(
              String.valueOf(pass),
              0,
              run.stream()
                  .map(a -> fields.field(a, Cell.pass(a.measurand().id(), coat, pass), where))
                  .toList()));
    }
    return table(id, fields.coat(coat), "entry.pass", run, rows, coat);
  }

  private EntryForm.Block places(String id, List<Asked> run) {
    List<EntryForm.Row> rows =
        Stream.concat(
                PanelCells.places(task, run.get(0).field()).stream(),
                run.stream().flatMap(a -> PanelCells.further(task, a.field()).stream()).distinct())
            .map(
                n ->
                    new EntryForm.Row(
                        fields.placeName(n),
                        n,
                        run.stream()
                            .map(
                                a ->
                                    fields.field(
                                        a, Cell.place(a.measurand().id(), n), fields.place(n)))
                            .toList()))
            .toList();
    return table(id, "", "entry.place", run, rows, 0);
  }

  private EntryForm.Block placesByCoat(String id, Asked a) {
    List<EntryForm.Row> rows =
        PanelCells.places(task, a.field()).stream()
            .map(
                n ->
                    new EntryForm.Row(
                        fields.placeName(n),
                        n,
                        coats()
                            .map(
                                c ->
                                    fields.field(
                                        a,
                                        Cell.coatPlace(a.measurand().id(), c, n),
                                        words.say("entry.coat-place", c, n)))
                            .toList()))
            .toList();
    List<EntryForm.Column> columns =
        coats().map(c -> fields.column(c, a, fields.coat(c), c)).toList();
    return new EntryForm.Block(
        id, a.measurand().label(), true, words.get("entry.place"), columns, rows);
  }

  private EntryForm.Block steps(String id, List<Asked> run) {
    List<String> names = run.get(0).field().steps();
    List<EntryForm.Row> rows = new ArrayList<>();
    for (int s = 1; s <= names.size(); s++) {
      int step = s;
      String name = names.get(s - 1);
      rows.add(
          new EntryForm.Row(
              name,
              0,
              run.stream()
                  .map(a -> fields.field(a, Cell.step(a.measurand().id(), step), name))
                  .toList()));
    }
    return table(id, "", "entry.step", run, rows, 0);
  }

  private EntryForm.Block table(
      String id, String title, String corner, List<Asked> run, List<EntryForm.Row> rows, int coat) {
    List<EntryForm.Column> columns = new ArrayList<>();
    for (Asked a : run) {
      columns.add(fields.column(columns.size() + 1, a, a.measurand().label(), coat));
    }
    return new EntryForm.Block(id, title, true, words.get(corner), columns, rows);
  }
}
