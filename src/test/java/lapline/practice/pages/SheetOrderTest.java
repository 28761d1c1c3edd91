package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lapline.pages.Messages;
import lapline.pages.drawing.Shape;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.pages.TaskSheetTest.Print;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A thumb that goes down the paper goes down the entry page. */
class SheetOrderTest {

  @ParameterizedTest
  @MethodSource("lapline.practice.pages.TaskSheetTest#prints")
  void its_boxes_stand_in_the_order_of_the_entry_page(Print print) {
    String text =
        TaskSheetTest.sheet(print).on(print.paper()).stream()
            .flatMap(page -> page.shapes().stream())
            .filter(Shape.Words.class::isInstance)
            .map(shape -> plain(((Shape.Words) shape).text()))
            .collect(Collectors.joining(" "));
    int at = 0;
    for (EntryForm.Section section : form(print).sections()) {
      at = next(text, section.title(), at);
      int from = at;
      for (String label : labels(print, section)) {
        at = next(text, label, from);
        from = at;
      }
    }
  }

  private static int next(String text, String words, int from) {
    int at = text.indexOf(plain(words), from);
    assertThat(at).as("%s after: %s", words, text.substring(0, from)).isNotNegative();
    return at;
  }

  private static EntryForm form(Print print) {
    List<Measurand> asked =
        print.task().sections().stream()
            .flatMap(s -> s.fields().stream())
            .map(f -> print.measurands().apply(f.measurand()).orElseThrow())
            .toList();
    EntryValues nothing = new EntryValues(List.of(), Map.of());
    return new EntryFormWriter(
            print.task(), new Measurands(asked), print.units(), nothing, new Messages())
        .form();
  }

  /** What a section asks for, in the order of the page; what coat 1 has not, the last one has. */
  private static List<String> labels(Print print, EntryForm.Section section) {
    return new EntryForm(List.of(section))
        .fields().stream()
            .map(f -> Cell.of(f.key()))
            .filter(cell -> cell.coat() == 0 || cell.coat() == print.task().coats())
            .map(Cell::measurand)
            .distinct()
            .map(id -> print.measurands().apply(id).orElseThrow().label())
            .toList();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
