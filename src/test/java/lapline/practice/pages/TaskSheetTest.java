package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import lapline.content.ContentFiles;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.pages.drawing.Point;
import lapline.pages.drawing.PrintedSheet;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.TypeFace;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sheet that goes to the booth: large enough to read and write on, and a phone can open its
 * code.
 */
class TaskSheetTest {
  private static final String ADDRESS = "https://lapline.example.org/learn/sheet?code=k7f3mw2q";

  /** A box to tick off is no larger, in millimetres. */
  private static final double TICK = 3.2;

  record Print(
      PracticeTask task,
      Function<String, Optional<Measurand>> measurands,
      Paper paper,
      UnitSystem units) {
    @Override
    public String toString() {
      return task.id() + " on " + paper + " in " + units;
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
  void it_has_title_language_and_on_each_page_a_code_that_opens_the_entry_page(Print print)
      throws Exception {
    TaskSheet sheet = sheet(print);
    PrintedSheet printed = printed(sheet, print);
    printed.keep(print.toString());
    assertThat(printed.pages()).isBetween(1, 2);
    assertThat(printed.title()).isEqualTo(sheet.title());
    assertThat(printed.language()).isEqualTo("en");
    assertThat(printed.codes()).hasSize(printed.pages()).containsOnly(ADDRESS);
    assertThat(printed.text())
        .contains("k7f3mw2q", "Ana Łukasz", print.task().title())
        .contains("Where to read")
        .contains(print.task().cautions())
        .contains(print.task().prepare());
  }

  @ParameterizedTest
  @MethodSource("prints")
  void no_type_is_smaller_than_8_points(Print print) throws Exception {
    // the file keeps two decimals of its scale and sizes
    assertThat(printed(sheet(print), print).smallest()).isGreaterThan(7.95);
  }

  @ParameterizedTest
  @MethodSource("prints")
  void a_pencil_finds_room_in_every_box(Print print) {
    List<double[]> boxes =
        sheet(print).on(print.paper()).stream()
            .flatMap(page -> page.shapes().stream())
            .filter(s -> s instanceof Shape.Surface box && box.fill() == Fill.NONE)
            .map(s -> size(((Shape.Surface) s).rings().get(0)))
            .filter(size -> size[1] > TICK)
            .toList();
    assertThat(boxes).hasSizeGreaterThan(10);
    assertThat(boxes).as("wide").allSatisfy(b -> assertThat(b[0]).isGreaterThan(8.5));
    assertThat(boxes).as("high").allSatisfy(b -> assertThat(b[1]).isGreaterThan(5.3));
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
    assertThat(printed(sheet(print), print).hasBlankRim()).isTrue();
  }

  private static PrintedSheet printed(TaskSheet sheet, Print print) throws Exception {
    return PrintedSheet.of(PdfPage.of(sheet.title(), Locale.ENGLISH, sheet.on(print.paper())));
  }

  private static TaskSheet sheet(Print print) {
    return new TaskSheet(
        print.task(),
        print.measurands(),
        new TaskSheet.Head("Ana Łukasz", "3 Mar 2026", "k7f3mw2q", ADDRESS, "closer passes"),
        new PhraseWriter(new Messages(), print.units()));
  }
}
