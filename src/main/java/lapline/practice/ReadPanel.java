package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.people.NotFoundException;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;

/** Makes numbers of what is kept of a panel, the way the person who typed it means them. */
@ApplicationScoped
public class ReadPanel {
  private PracticeTasks tasks;

  protected ReadPanel() {}

  @Inject
  public ReadPanel(PracticeTasks tasks) {
    this.tasks = tasks;
  }

  /** The task file of an attempt as it stands today, with the further places of this panel. */
  public PracticeTask task(Attempt attempt) {
    PracticeTask task = tasks.find(attempt.task()).orElseThrow(NotFoundException::new);
    return attempt.again() == null ? task : task.withFurther(attempt.again().further());
  }

  /** Keys of all places that a task's record has room for. */
  Set<String> cellsOf(PracticeTask task) {
    return PanelCells.of(task, tasks.measurands()).stream()
        .map(Cell::key)
        .collect(Collectors.toSet());
  }

  /**
   * @param units in which a figure without a unit is meant
   *     <p>Readings that the task no longer asks for, since its file has changed, stay kept but
   *     count no more: nobody could mend them on the page.
   */
  public PanelReading run(UnitSystem units, PracticeTask task, List<KeptReading> kept) {
    Set<String> asked = cellsOf(task);
    Map<String, String> typed =
        kept.stream()
            .filter(r -> !r.typed().isEmpty() && asked.contains(r.cell()))
            .collect(Collectors.toMap(KeptReading::cell, KeptReading::typed));
    return PanelReader.read(task, tasks.measurands(), typed, units);
  }

  /** What keeps a panel from being scored: wrong readings, and those the task cannot do without. */
  public List<FieldProblem> problemsBeforeScoring(PracticeTask task, PanelReading reading) {
    List<FieldProblem> problems = new ArrayList<>(reading.problems());
    task.sections().stream()
        .flatMap(s -> s.fields().stream())
        .filter(PracticeTask.Field::required)
        .filter(f -> problems.stream().noneMatch(p -> isOf(p, f)))
        .forEach(f -> problems.addAll(missing(task, f, reading.entry())));
    return problems;
  }

  private static boolean isOf(FieldProblem problem, PracticeTask.Field field) {
    return Cell.of(problem.cell()).measurand().equals(field.measurand());
  }

  private List<FieldProblem> missing(
      PracticeTask task, PracticeTask.Field field, PanelEntry entry) {
    String label = tasks.measurands().require(field.measurand()).label();
    if (entry.of(field.measurand()).isEmpty()) {
      Cell first = PanelCells.of(task, field).get(0);
      return List.of(FieldProblem.at(first, "entry.required", label));
    }
    return Gap.among(new RecordGaps(task, entry).of(field)).stream()
        .map(gap -> FieldProblem.at(gap.first(), "entry.gap." + gap.kind(), gap.args(label)))
        .toList();
  }

  /** How each reading was understood, by cell key, in the person's units. */
  public Map<String, String> understood(PanelEntry entry, UnitSystem units) {
    Map<String, String> texts = new LinkedHashMap<>();
    entry.readings().values().forEach(r -> texts.put(r.cell().key(), understood(r, units)));
    return texts;
  }

  private String understood(Reading reading, UnitSystem units) {
    return tasks
        .measurands()
        .find(reading.cell().measurand())
        .map(m -> m.options().isEmpty() ? quantity(reading, m, units) : option(reading, m))
        .orElse("");
  }

  private static String quantity(Reading reading, Measurand measurand, UnitSystem units) {
    return QuantityWriter.write(reading.value(), measurand.spoken(), units);
  }

  private static String option(Reading reading, Measurand measurand) {
    return measurand.options().stream()
        .filter(o -> o.value() == reading.value())
        .map(Measurand.Option::label)
        .findFirst()
        .orElse("");
  }
}
