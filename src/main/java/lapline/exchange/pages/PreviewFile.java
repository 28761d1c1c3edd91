package lapline.exchange.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.exchange.readings.ColumnChoices;
import lapline.exchange.readings.ColumnUse;
import lapline.exchange.readings.PlacedReadings;
import lapline.exchange.readings.ReadingsTable;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.practice.Attempt;
import lapline.practice.FieldProblem;
import lapline.practice.FindAttempts;
import lapline.practice.KeptReading;
import lapline.practice.Measurand;
import lapline.practice.NumberRuns;
import lapline.practice.PanelReading;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.ReadPanel;
import lapline.practice.Scope;

/** Works out what a file would write down, without writing it. */
@RequestScoped
public class PreviewFile {
  private static final int ROWS = 8;

  /** More rows with something wrong than these are better mended in the file. */
  private static final int MOST_ROWS = 40;

  private ReadPanel read;
  private PracticeTasks tasks;
  private FindAttempts find;
  private Messages words;

  protected PreviewFile() {}

  @Inject
  public PreviewFile(ReadPanel read, PracticeTasks tasks, FindAttempts find, Messages words) {
    this.read = read;
    this.tasks = tasks;
    this.find = find;
    this.words = words;
  }

  /** One use in the list to choose from. */
  public record Choice(String code, String label) {}

  ColumnChoices choicesFor(Attempt attempt) {
    return new ColumnChoices(read.task(attempt), tasks.measurands());
  }

  List<Choice> choices(ColumnChoices choices) {
    return choices.all().stream().map(u -> new Choice(u.code(), label(u))).toList();
  }

  private String label(ColumnUse use) {
    if (use.kind() != ColumnUse.Kind.READING) {
      return words.get("import.use." + use.kind().name().toLowerCase(java.util.Locale.ROOT));
    }
    String name = tasks.measurands().find(use.measurand()).map(Measurand::label).orElse("");
    return use.coat() > 0 ? words.say("import.use.of-coat", name, use.coat()) : name;
  }

  FilePreview of(Person by, Attempt attempt, ReadingsTable table, List<ColumnUse> uses) {
    PracticeTask task = read.task(attempt);
    PlacedReadings placed = PlacedReadings.of(task, tasks.measurands(), table, uses);
    PanelReading reading =
        read.run(
            attempt.units(),
            task,
            placed.typed().entrySet().stream()
                .map(e -> new KeptReading(e.getKey(), e.getValue(), null, 0))
                .toList());
    Map<String, String> understood = read.understood(reading.entry(), attempt.units());
    Map<String, String> problems = inWords(reading.problems());
    List<Integer> taken =
        IntStream.range(0, uses.size())
            .filter(c -> uses.get(c).kind() != ColumnUse.Kind.NONE)
            .boxed()
            .toList();
    return new FilePreview(
        placed.typed(),
        table.rows().size(),
        table.charset(),
        taken.stream().map(c -> label(uses.get(c))).toList(),
        rows(table, placed, taken, understood, problems),
        replaced(by, attempt, placed),
        inTurn(uses),
        told(placed.astray()),
        told(placed.with(problems.keySet())));
  }

  /** Whether a reading is taken at places, and no column says at which. */
  private boolean inTurn(List<ColumnUse> uses) {
    boolean atPlaces =
        uses.stream()
            .filter(u -> u.kind() == ColumnUse.Kind.READING)
            .flatMap(u -> tasks.measurands().find(u.measurand()).stream())
            .anyMatch(m -> m.scope() == Scope.PLACE || m.scope() == Scope.COAT_PLACE);
    return atPlaces && uses.stream().noneMatch(u -> u.kind() == ColumnUse.Kind.PLACE);
  }

  private static FilePreview.Told told(List<PlacedReadings.At> values) {
    List<Integer> rows = values.stream().map(at -> at.row() + 1).distinct().sorted().toList();
    return new FilePreview.Told(values.size(), NumberRuns.of(rows));
  }

  private int replaced(Person by, Attempt attempt, PlacedReadings placed) {
    return (int)
        find.readings(by, attempt.id()).stream()
            .filter(r -> !r.typed().isEmpty())
            .filter(r -> !r.typed().equals(placed.typed().getOrDefault(r.cell(), r.typed())))
            .count();
  }

  private Map<String, String> inWords(List<FieldProblem> problems) {
    Map<String, String> texts = new HashMap<>();
    problems.forEach(p -> texts.putIfAbsent(p.cell(), words.say(p.key(), p.args().toArray())));
    return texts;
  }

  private List<FilePreview.Row> rows(
      ReadingsTable table,
      PlacedReadings placed,
      List<Integer> taken,
      Map<String, String> understood,
      Map<String, String> problems) {
    IntStream toLookAt =
        Stream.concat(placed.astray().stream(), placed.with(problems.keySet()).stream())
            .mapToInt(PlacedReadings.At::row);
    return IntStream.concat(IntStream.range(0, Math.min(ROWS, table.rows().size())), toLookAt)
        .sorted()
        .distinct()
        .limit(MOST_ROWS)
        .mapToObj(
            r ->
                new FilePreview.Row(
                    r + 1,
                    taken.stream()
                        .map(c -> value(table, placed, r, c, understood, problems))
                        .toList()))
        .toList();
  }

  private FilePreview.Value value(
      ReadingsTable table,
      PlacedReadings placed,
      int row,
      int column,
      Map<String, String> understood,
      Map<String, String> problems) {
    PlacedReadings.At at = new PlacedReadings.At(row, column);
    String text = table.rows().get(row).get(column);
    if (placed.astray().contains(at)) {
      return new FilePreview.Value(text, words.get("import.no-place"), false);
    }
    String cell = placed.cells().get(at);
    if (cell == null) {
      return new FilePreview.Value(text, "", true);
    }
    String wrong = problems.get(cell);
    return wrong == null
        ? new FilePreview.Value(text, understood.getOrDefault(cell, ""), true)
        : new FilePreview.Value(text, wrong, false);
  }
}
