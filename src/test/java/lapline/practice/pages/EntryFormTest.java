package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lapline.pages.Messages;
import lapline.pages.drawing.Fill;
import lapline.pages.drawing.Shape;
import lapline.pages.drawing.SheetColumn;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.PanelCells;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The page and the printed sheet ask for the same readings, and for none that mean nothing. */
class EntryFormTest {
  private final PracticeTask task = InventedTask.full();
  private final Measurands measurands =
      new Measurands(
          task.sections().stream()
              .flatMap(s -> s.fields().stream())
              .map(f -> InventedTask.measurand(f.measurand()))
              .toList());
  private final List<String> room =
      PanelCells.of(task, measurands).stream().map(Cell::key).toList();

  private EntryForm form() {
    EntryValues nothing = new EntryValues(List.of(), Map.of());
    return new EntryFormWriter(task, measurands, UnitSystem.METRIC, nothing, new Messages()).form();
  }

  @Test
  void the_page_has_a_field_for_every_reading_of_the_record() {
    assertThat(form().fields())
        .extracting(EntryForm.Field::key)
        .containsExactlyInAnyOrderElementsOf(room);
  }

  @Test
  void nobody_is_asked_for_a_wait_before_coat_1_or_a_step_to_pass_1() {
    assertThat(form().fields())
        .extracting(EntryForm.Field::key)
        .contains("flash.c2", "spacing.c1.p2")
        .doesNotContain("flash.c1", "spacing.c1.p1", "spacing.c2.p1");
  }

  /** A phone's keys for numbers have no minus, and no colon for a time of day. */
  @Test
  void what_may_be_less_than_nothing_is_typed_on_keys_that_have_a_minus() {
    assertThat(course("clear/two-coats").fields())
        .filteredOn(EntryForm.Field::signed)
        .extracting(EntryForm.Field::key)
        .containsExactlyInAnyOrder(
            "air-temperature",
            "panel-temperature",
            "coat-start.c1",
            "coat-start.c2",
            "first-pass.c1",
            "first-pass.c2");
  }

  @Test
  void a_coat_that_need_not_be_sprayed_is_not_needed_and_columns_say_what_is() {
    EntryForm card = course("coverage/spray-out-card");
    assertThat(card.fields())
        .filteredOn(f -> f.key().startsWith("squares-seen"))
        .extracting(EntryForm.Field::required)
        .containsExactly(true, true, false, false);
    List<EntryForm.Column> film =
        blocks(course("clear/two-coats")).stream()
            .flatMap(b -> b.columns().stream())
            .filter(c -> c.label().startsWith("Film"))
            .toList();
    assertThat(film).hasSize(2).allMatch(c -> c.needed().equals("needed"));
  }

  @Test
  void what_is_read_once_stands_apart_from_the_drawing_of_the_places() {
    EntryForm.Section cleaning =
        course("preparing/flat-panel").sections().stream()
            .filter(s -> s.parts().size() > 1)
            .findFirst()
            .orElseThrow();
    assertThat(cleaning.parts()).extracting(EntryForm.Part::drawn).containsExactly(true, false);
  }

  /** Beside the sheet's own places, in the same table, and not asked for before painting. */
  @Test
  void further_places_have_fields_by_their_letters_and_the_section_says_where_they_are() {
    PracticeTask clear = WrittenPanel.COURSE.find("clear/two-coats").orElseThrow();
    PracticeTask more = clear.withFurther(List.of(new PanelOutline.Place(101, 0.12, 0.08, "")));
    EntryForm form = form(more);
    EntryForm.Field a = form.field("film-after.at101");
    assertThat(a.label()).startsWith("Film after").contains("place A");
    assertThat(form.field("film-before.at101")).isNull();
    EntryForm.Section film =
        form.sections().stream().filter(s -> s.id().equals("dry-film")).findFirst().orElseThrow();
    assertThat(film.note().replace('\u00a0', ' ')).contains("A: 120 mm from the left edge, 80 mm");
    assertThat(film.parts()).as("one table").hasSize(1);
    assertThat(film.parts().get(0).blocks()).hasSize(1);
    assertThat(form(clear).field("film-after.at101")).isNull();
  }

  private static List<EntryForm.Block> blocks(EntryForm form) {
    return form.sections().stream()
        .flatMap(s -> s.parts().stream())
        .flatMap(p -> p.blocks().stream())
        .toList();
  }

  private static EntryForm course(String id) {
    return form(WrittenPanel.COURSE.find(id).orElseThrow());
  }

  private static EntryForm form(PracticeTask task) {
    return new EntryFormWriter(
            task,
            WrittenPanel.COURSE.measurands(),
            UnitSystem.METRIC,
            new EntryValues(List.of(), Map.of()),
            new Messages())
        .form();
  }

  @Test
  void the_sheet_has_a_box_for_every_reading_of_the_record() {
    List<Shape> shapes = new ArrayList<>();
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    SheetColumn sheet = new SheetColumn(shapes, 0, 0, 190, 1);
    Function<String, Optional<Measurand>> known = id -> Optional.of(InventedTask.measurand(id));
    SheetTargets targets = new SheetTargets(task, new CriterionWriter(words, known), words);
    SheetBoxes boxes = new SheetBoxes(task, InventedTask::measurand, targets, words);
    task.sections().stream()
        .flatMap(section -> boxes.blocks(section).stream())
        .forEach(block -> block.write(sheet));
    assertThat(shapes)
        .filteredOn(s -> s instanceof Shape.Surface box && box.fill() == Fill.NONE)
        .hasSize(room.size());
  }
}
