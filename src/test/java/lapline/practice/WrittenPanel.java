package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.practice.quantity.Measured;
import lapline.practice.quantity.MeasuredPanel;
import lapline.practice.quantity.PanelQuantities;
import lapline.trade.measure.UnitSystem;

/**
 * A panel as an apprentice writes it down: readings typed at the places of a task's record, read by
 * the course's own measurands. The task is invented and asks for everything there is.
 */
public final class WrittenPanel {
  public static final PracticeTasks COURSE = PracticeTasks.read(new ContentFiles(Path.of(".")));

  private static final String ASKS_EVERYTHING =
      """
      title: Everything at once
      skill: clear
      purpose: Have something to measure.
      panel:
        width: 600 mm
        height: 400 mm
        places:
      %s
        features:
          - {id: primer, kind: spot, label: Primer, corners: [[250, 150], [350, 150], [350, 250], [250, 250]]}
      coats: 4
      coats-needed: 1
      passes-per-coat: 4
      prepare: [Clean the panel.]
      cautions: [Read the data sheet.]
      mix: [{name: Clear, parts: 4}, {name: Hardener, parts: 1}, {name: Reducer, parts: 1}]
      sections:
        - id: all
          title: All
          fields:
      %s
      criteria:
      %s
      findings:
      %s
      """;

  private final PracticeTask task;
  private final Map<String, String> typed = new TreeMap<>();

  private WrittenPanel(PracticeTask task) {
    this.task = task;
  }

  /** A panel under a task of the course. */
  public static WrittenPanel under(String taskId) {
    return new WrittenPanel(COURSE.find(taskId).orElseThrow());
  }

  /** A panel with an even grid of 5 × 3 places, held against these criteria, in YAML. */
  public static WrittenPanel against(String... criteria) {
    return of(grid(), String.join("\n", criteria), "  []");
  }

  /** As above, with finding rules, in YAML. */
  static WrittenPanel withFindings(String findings, String... criteria) {
    return of(grid(), String.join("\n", criteria), findings);
  }

  /** A panel with five spots of three places each, a spot's places 20 mm from each other. */
  public static WrittenPanel inSpots(String... criteria) {
    StringBuilder places = new StringBuilder();
    int[][] centres = {{100, 100}, {500, 100}, {300, 200}, {100, 300}, {500, 300}};
    for (int i = 0; i < 15; i++) {
      int[] c = centres[i / 3];
      place(places, i + 1, c[0] + 20 * (i % 3 == 1 ? 1 : 0), c[1] + 20 * (i % 3 == 2 ? 1 : 0));
    }
    return of(places.toString(), String.join("\n", criteria), "  []");
  }

  private static WrittenPanel of(String places, String criteria, String findings) {
    String text = ASKS_EVERYTHING.formatted(places, everyField(), criteria, findings);
    var reading =
        new PracticeTaskReader(COURSE.measurands())
            .read(new ContentFile("curriculum/90-invented/tasks/all.yaml", text));
    assertThat(reading.problems()).isEmpty();
    return new WrittenPanel(reading.value());
  }

  private static String grid() {
    StringBuilder places = new StringBuilder();
    for (int i = 0; i < 15; i++) {
      place(places, i + 1, 60 + 120 * (i % 5), 70 + 130 * (i / 5));
    }
    return places.toString();
  }

  private static void place(StringBuilder places, int number, int x, int y) {
    places.append("    - {number: %d, at: [%d, %d]}%n".formatted(number, x, y));
  }

  private static String everyField() {
    StringBuilder fields = new StringBuilder();
    for (Measurand m : COURSE.measurands().all()) {
      String steps = m.id().equals("mix-amount") ? "Clear, Hardener, Reducer" : "A, B, C";
      String more =
          switch (m.scope()) {
            case STEP -> ", steps: [" + steps + "]";
            case PLACE -> ", places-needed: 1";
            default -> "";
          };
      fields.append("      - {measurand: %s%s}%n".formatted(m.id(), more));
    }
    return fields.toString();
  }

  public WrittenPanel put(String cell, String text) {
    typed.put(cell, text);
    return this;
  }

  /** A value at each place in turn, from place 1. */
  public WrittenPanel putAtPlaces(String measurand, double... values) {
    for (int i = 0; i < values.length; i++) {
      put(measurand + ".at" + (i + 1), String.valueOf(values[i]));
    }
    return this;
  }

  public WrittenPanel leaveOut(String measurand) {
    typed.keySet().removeIf(k -> Cell.of(k).measurand().equals(measurand));
    return this;
  }

  /** Cells of a measurand that something stands in. */
  List<String> cellsOf(String measurand) {
    return typed.keySet().stream().filter(k -> Cell.of(k).measurand().equals(measurand)).toList();
  }

  /** What stands in a cell. */
  String typed(String cell) {
    return typed.get(cell);
  }

  public PracticeTask task() {
    return task;
  }

  public PanelEntry entry() {
    PanelReading reading = PanelReader.read(task, COURSE.measurands(), typed, UnitSystem.METRIC);
    assertThat(reading.problems()).isEmpty();
    return reading.entry();
  }

  public PanelScore score() {
    return PanelScorer.score(task, entry());
  }

  public Measured measure(String quantity) {
    return PanelQuantities.find(quantity).orElseThrow().measure(new MeasuredPanel(task, entry()));
  }

  /** The only value of a quantity. */
  public Measured.Value value(String quantity) {
    assertThat(measure(quantity)).isInstanceOf(Measured.Values.class);
    Measured.Values values = (Measured.Values) measure(quantity);
    assertThat(values.values()).hasSize(1);
    return values.values().get(0);
  }

  /** One criterion in YAML, with what the test does not care about filled in. */
  public static String criterion(String id, String quantity, String target, String more) {
    return "  - {id: %s, label: A %s, quantity: %s, target: %s, why: Because., source: invented, %s}"
        .formatted(id, id, quantity, target, more);
  }
}
