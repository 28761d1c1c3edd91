package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.content.ContentFiles;
import lapline.content.units.BothUnits;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.pages.drawing.Pen;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.PrintedSheet;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.TypeFace;
import lapline.practice.Cell;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.PanelCells;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.Scope;
import lapline.practice.fit.BuildByPlace;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sheet that goes to the booth: large enough to read and write on, and a phone can open its
 * code.
 */
class TaskSheetTest {
  private static final String ADDRESS = "https://lapline.example.org/learn/sheet?code=k7f3mw2q";

  private static final Map<String, PrintedSheet> PRINTED = new HashMap<>();

  /** A box to tick off is no larger, in millimetres. */
  private static final double TICK = 3.2;

  record Print(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Paper paper,
      UnitSystem units) {
    /** A line of the task as this sheet's reader reads it. */
    private String read(String line) {
      return BothUnits.shown(line, units);
    }

    /** All that its record has a place for. */
    List<Cell> cells() {
      return task.sections().stream()
          .flatMap(section -> section.fields().stream())
          .flatMap(field -> PanelCells.of(task, field).stream())
          .toList();
    }

    @Override
    public String toString() {
      return task.id()
          + " of "
          + task.coats()
          + " coats, "
          + task.passesPerCoat()
          + " passes on "
          + paper
          + " in "
          + units;
    }
  }

  /** Every task of the course, and one with all that a task can have, on every paper. */
  static List<Print> prints() {
    PracticeTasks course = PracticeTasks.read(new ContentFiles(Path.of("")));
    assertThat(course.all()).hasSizeGreaterThanOrEqualTo(4);
    List<Print> prints = new ArrayList<>();
    for (Paper paper : Paper.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        prints.add(
            new Print(
                InventedTask.full(), id -> Optional.of(InventedTask.measurand(id)), paper, units));
        for (PracticeTask task : course.all()) {
          prints.add(new Print(task, course.measurands()::find, paper, units));
        }
      }
    }
    return prints;
  }

  @ParameterizedTest
  @MethodSource("prints")
  void it_is_one_page_with_title_language_and_a_code_that_opens_the_entry_page(Print print)
      throws Exception {
    TaskSheet sheet = sheet(print);
    PrintedSheet printed = printed(sheet, print);
    printed.keep(print.toString());
    assertThat(printed.pages()).isEqualTo(1);
    assertThat(printed.title()).isEqualTo(sheet.title());
    assertThat(printed.language()).isEqualTo("en");
    assertThat(printed.codes()).containsExactly(ADDRESS);
    assertThat(printed.text())
        .contains("k7f3mw2q", "Ana Łukasz", print.task().title())
        .contains("Where to read")
        .contains(print.task().cautions())
        .contains(print.task().prepare().stream().map(print::read).toList());
  }

  /** Prints on the paper that goes with their units. */
  static List<Print> printsAtHome() {
    return prints().stream()
        .filter(p -> (p.units() == UnitSystem.METRIC) == (p.paper() == Paper.A4))
        .toList();
  }

  /** Nobody finds fifteen places on a bare panel by a drawing alone. */
  @ParameterizedTest
  @MethodSource("printsAtHome")
  void every_place_is_told_by_its_distance_from_two_edges(Print print) throws Exception {
    String text = printed(sheet(print), print).text().replace('\u00a0', ' ');
    double step = print.units() == UnitSystem.METRIC ? 1e-3 : 2.54e-3;
    for (PanelOutline.Place place : print.task().panel().places()) {
      Matcher told =
          Pattern.compile(
                  "(?:^|\\s)%s: ([0-9.]+)/([0-9.]+)".formatted(PanelOutline.nameOf(place.number())))
              .matcher(text);
      assertThat(told.find()).as("place %d", place.number()).isTrue();
      double unit = print.units() == UnitSystem.METRIC ? 1e-3 : 0.0254;
      assertThat(Double.parseDouble(told.group(1)) * unit)
          .isCloseTo(place.x(), within(step / 2 + 1e-9));
      assertThat(Double.parseDouble(told.group(2)) * unit)
          .isCloseTo(place.y(), within(step / 2 + 1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("prints")
  void no_type_is_smaller_than_8_points(Print print) throws Exception {
    // the file keeps two decimals of its scale and sizes
    assertThat(printed(sheet(print), print).smallest()).isGreaterThan(7.95);
  }

  @ParameterizedTest
  @MethodSource("prints")
  void every_reading_has_a_box_that_a_pencil_in_a_cold_hand_finds_room_in(Print print) {
    List<double[]> boxes = boxes(sheet(print).on(print.paper()));
    assertThat(boxes).hasSameSizeAs(print.cells());
    assertThat(boxes).as("wide").allSatisfy(b -> assertThat(b[0]).isGreaterThanOrEqualTo(11));
    assertThat(boxes).as("high").allSatisfy(b -> assertThat(b[1]).isGreaterThanOrEqualTo(5.5));
  }

  /** Width and height of every box to write in; what is drawn on the panel is none. */
  private static List<double[]> boxes(List<Drawing> pages) {
    List<double[]> boxes = new ArrayList<>();
    for (Drawing page : pages) {
      List<Shape.Surface> open =
          page.shapes().stream()
              .filter(s -> s instanceof Shape.Surface surface && surface.fill() == Fill.NONE)
              .map(Shape.Surface.class::cast)
              .toList();
      List<Shape.Surface> panels = open.stream().filter(s -> s.pen().equals(Pen.FIRM)).toList();
      open.stream()
          .filter(s -> panels.stream().noneMatch(panel -> lies(s, panel)))
          .map(s -> size(s.rings().get(0)))
          .filter(size -> size[1] > TICK)
          .forEach(boxes::add);
    }
    return boxes;
  }

  private static boolean lies(Shape.Surface shape, Shape.Surface in) {
    return around(in).intersects(around(shape));
  }

  private static Rectangle2D around(Shape.Surface surface) {
    List<Point> ring = surface.rings().get(0);
    Rectangle2D box = new Rectangle2D.Double(ring.get(0).x(), ring.get(0).y(), 0, 0);
    ring.forEach(p -> box.add(p.x(), p.y()));
    return box;
  }

  /** A panel keeps the units it was begun in, whatever the person measures in by then. */
  @ParameterizedTest
  @MethodSource("prints")
  void it_says_which_units_a_bare_figure_is_in(Print print) throws Exception {
    String units = print.units() == UnitSystem.US ? "in US units." : "metric.";
    assertThat(plain(printed(sheet(print), print).text()))
        .contains("Write the unit beside a figure that is not " + units);
  }

  @ParameterizedTest
  @MethodSource("prints")
  void every_target_is_on_it_in_the_persons_units(Print print) throws Exception {
    PhraseWriter words = new PhraseWriter(new Messages(), print.units());
    CriterionWriter criteria = new CriterionWriter(words, print.measurands());
    String text = printed(sheet(print), print).text();
    assertThat(print.task().criteria())
        .allSatisfy(
            c -> {
              String what = asBox(print, c) ? "" : c.label() + " ";
              assertThat(plain(text)).contains(plain(what + criteria.target(c)));
            });
  }

  /** What is read once on a panel has its target beside its box. */
  private static boolean asBox(Print print, Criterion criterion) {
    return print
        .task()
        .field(criterion.quantity())
        .filter(f -> f.scope() == Scope.PANEL)
        .isPresent();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @CsvSource({"4, 12", "9, 12", "9, 5"})
  void a_task_too_large_for_a_page_goes_on_on_others_each_with_the_code(int coats, int passes)
      throws Exception {
    for (Paper paper : Paper.values()) {
      Print print =
          new Print(
              InventedTask.sprayed(coats, passes),
              id -> Optional.of(InventedTask.measurand(id)),
              paper,
              UnitSystem.METRIC);
      PrintedSheet printed = printed(sheet(print), print);
      printed.keep(coats + " coats of " + passes + " passes on " + paper);
      assertThat(printed.pages()).isGreaterThan(1);
      assertThat(printed.codes()).hasSize(printed.pages()).containsOnly(ADDRESS);
      assertThat(printed.hasBlankRim(8)).isTrue();
      assertThat(printed.text()).contains("page 1 of " + printed.pages());
      assertThat(boxes(sheet(print).on(paper))).hasSameSizeAs(print.cells());
    }
  }

  /** What a panel asks for when its readings are opened again. */
  @Test
  void further_places_stand_on_the_panel_and_have_their_boxes() throws Exception {
    for (Print plain : prints()) {
      if (plain.cells().stream().noneMatch(c -> c.measurand().equals(BuildByPlace.AFTER))) {
        continue;
      }
      PracticeTask again =
          plain
              .task()
              .withFurther(
                  List.of(
                      new PanelOutline.Place(101, 0.2, 0.07, ""),
                      new PanelOutline.Place(102, 0.31, 0.21, ""),
                      new PanelOutline.Place(103, 0.4, 0.3, "")));
      Print print = new Print(again, plain.measurands(), plain.paper(), plain.units());
      assertThat(print.cells()).hasSize(plain.cells().size() + 3);
      TaskSheet sheet = sheet(print);
      PrintedSheet printed =
          PrintedSheet.of(PdfPage.of(sheet.title(), Locale.ENGLISH, sheet.on(print.paper())));
      printed.keep(print + " again");
      assertThat(boxes(sheet.on(print.paper()))).hasSameSizeAs(print.cells());
      // on the panel and above its box
      assertThat(printed.text()).containsPattern("A[^A-Za-z]+B[^A-Za-z]+C\\b");
      assertThat(printed.text()).doesNotContain("101");
    }
  }

  /** The circles of the places on it would hide it otherwise. */
  @Test
  void a_primer_spot_is_drawn_over_the_places_that_are_read_on_it() {
    Print print =
        prints().stream()
            .filter(p -> p.task().id().equals("coverage/base-over-spot"))
            .findFirst()
            .orElseThrow();
    List<Shape> shapes = sheet(print).on(print.paper()).get(0).shapes();
    List<Shape.Surface> firm =
        shapes.stream()
            .filter(Shape.Surface.class::isInstance)
            .map(Shape.Surface.class::cast)
            .filter(s -> s.fill() == Fill.NONE && s.pen().equals(Pen.FIRM))
            .toList();
    assertThat(firm).as("panel and spot").hasSize(2);
    assertThat(shapes.subList(shapes.indexOf(firm.get(1)), shapes.size()))
        .noneMatch(s -> s instanceof Shape.Named || s instanceof Shape.Circle);
  }

  @ParameterizedTest
  @MethodSource("prints")
  void no_words_run_into_others_on_their_line(Print print) {
    for (Drawing page : sheet(print).on(print.paper())) {
      List<Shape.Words> words =
          page.shapes().stream()
              .filter(Shape.Words.class::isInstance)
              .map(Shape.Words.class::cast)
              .toList();
      assertThat(words).hasSizeGreaterThan(20);
      for (Shape.Words one : words) {
        assertThat(words).filteredOn(o -> o != one && meet(one, o)).as(one.text()).isEmpty();
      }
    }
  }

  private static boolean meet(Shape.Words one, Shape.Words other) {
    return Math.abs(one.y() - other.y()) < 0.6 * one.size()
        && left(one) < left(other) + width(other)
        && left(other) < left(one) + width(one);
  }

  private static double width(Shape.Words words) {
    return TypeFace.width(words.text(), words.size());
  }

  private static double left(Shape.Words words) {
    return switch (words.align()) {
      case START -> words.x();
      case MIDDLE -> words.x() - width(words) / 2;
      case END -> words.x() - width(words);
    };
  }

  private static double[] size(List<Point> corners) {
    return new double[] {
      corners.get(2).x() - corners.get(0).x(), corners.get(2).y() - corners.get(0).y()
    };
  }

  @ParameterizedTest
  @MethodSource("prints")
  void nothing_is_written_over_the_edge_of_the_paper(Print print) throws Exception {
    assertThat(printed(sheet(print), print).hasBlankRim(8)).isTrue();
  }

  /** Printed once for all that is looked at. */
  private static PrintedSheet printed(TaskSheet sheet, Print print) throws Exception {
    PrintedSheet known = PRINTED.get(print.toString());
    if (known == null) {
      known = PrintedSheet.of(PdfPage.of(sheet.title(), Locale.ENGLISH, sheet.on(print.paper())));
      PRINTED.put(print.toString(), known);
    }
    return known;
  }

  static TaskSheet sheet(Print print) {
    return new TaskSheet(
        print.task(),
        print.measurands(),
        new TaskSheet.Head("Ana Łukasz", "3 Mar 2026", "k7f3mw2q", ADDRESS, "closer passes"),
        new PhraseWriter(new Messages(), print.units()));
  }
}
