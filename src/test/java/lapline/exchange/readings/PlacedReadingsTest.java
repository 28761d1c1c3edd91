package lapline.exchange.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.Scope;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;
import org.junit.jupiter.api.Test;

class PlacedReadingsTest {
  private final Measurands measurands =
      new Measurands(
          List.of(
              measurand("film-before", "Film before", Dimension.FILM, Scope.PLACE),
              measurand("film-after", "Film after", Dimension.FILM, Scope.PLACE),
              measurand("wet-film", "Wet film", Dimension.FILM, Scope.COAT_PLACE),
              measurand("pass-spacing", "Step to this pass", Dimension.LENGTH, Scope.PASS),
              measurand("stroke-time", "Time of the stroke", Dimension.DURATION, Scope.PASS)));
  private final PracticeTask task = task();
  private final ColumnChoices choices = new ColumnChoices(task, measurands);

  private List<String> guess(String... header) {
    return choices.guess(List.of(header)).stream().map(ColumnUse::code).toList();
  }

  private PlacedReadings place(List<String> header, List<List<String>> rows) {
    return PlacedReadings.of(
        task, measurands, new ReadingsTable("UTF-8", header, rows), choices.guess(header));
  }

  @Test
  void columns_are_guessed_from_their_names() {
    assertThat(guess("Place", "Film before (µm)", "FILM_AFTER", "Operator"))
        .containsExactly("#place", "film-before", "film-after", "-");
    assertThat(guess("coat", "pass", "Stroke time [s]", "Wet film coat 2"))
        .containsExactly("#coat", "#pass", "stroke-time", "wet-film.c2");
  }

  @Test
  void no_use_is_guessed_twice() {
    assertThat(guess("Film after", "Film after")).containsExactly("film-after", "-");
  }

  @Test
  void values_go_where_the_place_column_says_with_the_unit_of_the_head() {
    PlacedReadings placed =
        place(
            List.of("place", "film after (mil)"),
            List.of(List.of("2", "2.4"), List.of("P1", "61 um"), List.of("9", "60")));
    assertThat(placed.typed())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of("film-after.at2", "2.4 mil", "film-after.at1", "61 um"));
    assertThat(placed.astray()).containsExactly(new PlacedReadings.At(2, 1));
  }

  @Test
  void a_further_place_goes_by_its_letter_or_number_where_the_panel_has_it() {
    PracticeTask more = task.withFurther(List.of(new PanelOutline.Place(101, 0.1, 0.1, "")));
    List<List<String>> rows = List.of(List.of("A", "52"), List.of("B", "53"), List.of("2", "60"));
    PlacedReadings placed =
        PlacedReadings.of(
            more,
            measurands,
            new ReadingsTable("UTF-8", List.of("place", "film after"), rows),
            choices.guess(List.of("place", "film after")));
    assertThat(placed.typed())
        .containsOnly(Map.entry("film-after.at101", "52"), Map.entry("film-after.at2", "60"));
    assertThat(placed.astray()).containsExactly(new PlacedReadings.At(1, 1));
  }

  @Test
  void without_numbers_values_go_down_the_record_in_order() {
    assertThat(place(List.of("film after"), List.of(List.of("61"), List.of("62"))).typed())
        .containsExactly(Map.entry("film-after.at1", "61"), Map.entry("film-after.at2", "62"));
    assertThat(
            place(
                    List.of("coat", "stroke time"),
                    List.of(List.of("1", "2.1"), List.of("2", "2.2"), List.of("2", "2.3")))
                .typed())
        .containsOnlyKeys("stroke-time.c1.p1", "stroke-time.c2.p1", "stroke-time.c2.p2");
  }

  @Test
  void an_empty_value_takes_its_turn_but_writes_nothing() {
    assertThat(place(List.of("film after"), List.of(List.of(""), List.of("62"))).typed())
        .containsOnlyKeys("film-after.at2");
  }

  @Test
  void the_first_pass_has_no_step_whether_its_row_is_left_free_or_not() {
    List<String> header = List.of("pass spacing");
    Map<String, String> steps = Map.of("pass-spacing.c1.p2", "75", "pass-spacing.c1.p3", "80");
    assertThat(place(header, List.of(List.of(""), List.of("75"), List.of("80"))).typed())
        .isEqualTo(steps);
    assertThat(place(header, List.of(List.of("75"), List.of("80"))).typed()).isEqualTo(steps);
  }

  private static Measurand measurand(String id, String label, Dimension d, Scope scope) {
    boolean between = id.equals("pass-spacing");
    return new Measurand(
        id, label, "", SpokenUnits.usual(d), scope, between, 0, 1, 0, 0, "", List.of());
  }

  private PracticeTask task() {
    List<PracticeTask.Field> fields =
        measurands.all().stream().map(PracticeTask.Field::of).toList();
    PanelOutline panel =
        new PanelOutline(
            0.3,
            0.2,
            List.of(),
            List.of(
                new PanelOutline.Place(1, 0.1, 0.1, ""), new PanelOutline.Place(2, 0.2, 0.1, "")),
            List.of());
    return new PracticeTask(
        "clear/small",
        "clear",
        "Small",
        "v1",
        "clear",
        "",
        panel,
        2,
        2,
        3,
        List.of(),
        List.of(),
        List.of(new PracticeTask.Section("all", "All", "", fields)),
        List.<Criterion>of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
