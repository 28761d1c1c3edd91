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
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PdfPage;
import lapline.pages.drawing.PrintedSheet;
import lapline.practice.Measurand;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheet that goes to the booth: one page on either paper, and a phone can open its code. */
class TaskSheetTest {
  private static final String ADDRESS = "https://lapline.example.org/learn/sheet?code=k7f3mw2q";

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
  void it_is_one_page_with_title_language_and_a_code_that_opens_the_entry_page(Print print)
      throws Exception {
    TaskSheet sheet = sheet(print);
    assertThat(sheet.scale(print.paper())).as("type large enough to read").isGreaterThan(0.65);
    PrintedSheet printed = printed(sheet, print);
    assertThat(printed.pages()).isEqualTo(1);
    assertThat(printed.title()).isEqualTo(sheet.title());
    assertThat(printed.language()).isEqualTo("en");
    printed.keep(print.toString());
    assertThat(printed.decoded()).isEqualTo(ADDRESS);
    assertThat(printed.text())
        .contains("k7f3mw2q", "Ana Łukasz", print.task().title())
        .contains(print.task().cautions())
        .contains(print.task().prepare());
  }

  @ParameterizedTest
  @MethodSource("prints")
  void nothing_is_written_over_the_edge_of_the_paper(Print print) throws Exception {
    assertThat(printed(sheet(print), print).hasBlankRim()).isTrue();
  }

  private static PrintedSheet printed(TaskSheet sheet, Print print) throws Exception {
    return PrintedSheet.of(
        PdfPage.of(sheet.title(), Locale.ENGLISH, List.of(sheet.on(print.paper()))));
  }

  private static TaskSheet sheet(Print print) {
    return new TaskSheet(
        print.task(),
        print.measurands(),
        new TaskSheet.Head("Ana Łukasz", "3 Mar 2026", "k7f3mw2q", ADDRESS, "closer passes"),
        new PhraseWriter(new Messages(), print.units()));
  }
}
