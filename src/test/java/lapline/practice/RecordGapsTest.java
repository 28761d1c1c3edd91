package lapline.practice;

import static lapline.practice.WrittenPanel.COURSE;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lapline.practice.PanelScore.Result;
import org.junit.jupiter.api.Test;

/** A panel is held against what was read everywhere, never against one place that looked good. */
class RecordGapsTest {
  private static final ReadPanel READ = new ReadPanel(COURSE);

  private static Stream<String> required(WrittenPanel panel) {
    return panel.task().sections().stream()
        .flatMap(s -> s.fields().stream())
        .filter(PracticeTask.Field::required)
        .flatMap(f -> panel.cellsOf(f.measurand()).stream());
  }

  private static List<String> missing(PanelScore score) {
    return score.results().stream().flatMap(r -> r.missing().stream()).toList();
  }

  private static List<FieldProblem> problems(WrittenPanel panel) {
    PanelReading reading = new PanelReading(panel.entry(), List.of(), List.of());
    return READ.problemsBeforeScoring(panel.task(), reading);
  }

  private static Result result(WrittenPanel panel, String criterion) {
    return panel.score().result(criterion).orElseThrow();
  }

  @Test
  void without_any_one_required_reading_no_panel_is_accepted_and_the_reading_is_named() {
    for (WrittenPanel good : GoodPanels.all()) {
      assertThat(problems(good)).as(good.task().id()).isEmpty();
      assertThat(good.score().accepted()).as(good.task().id()).isTrue();
      required(good).toList().forEach(cell -> isMissed(good, cell));
    }
  }

  private static void isMissed(WrittenPanel good, String cell) {
    String typed = good.typed(cell);
    good.put(cell, "");
    assertThat(good.score().accepted()).as(cell).isFalse();
    assertThat(missing(good.score())).as(cell).contains(cell);
    assertThat(problems(good)).extracting(FieldProblem::cell).as(cell).contains(cell);
    good.put(cell, typed);
  }

  @Test
  void one_reading_of_a_grid_alone_is_never_accepted() {
    for (WrittenPanel panel : GoodPanels.all()) {
      panel.task().sections().stream()
          .flatMap(s -> s.fields().stream())
          .filter(f -> f.required() && PanelCells.of(panel.task(), f).size() > 1)
          .forEach(
              f -> panel.cellsOf(f.measurand()).stream().skip(1).forEach(c -> panel.put(c, "")));
      boolean grids = !problems(panel).isEmpty();
      assertThat(panel.score().accepted()).as(panel.task().id()).isNotEqualTo(grids);
    }
  }

  @Test
  void the_open_places_are_told_in_one_error() {
    WrittenPanel panel = GoodPanels.prepared().leaveOut("shine-left");
    panel.put("shine-left.at1", "dull").put("shine-left.at3", "dull");
    assertThat(problems(panel)).hasSize(1);
    assertThat(problems(panel).get(0).key()).isEqualTo("entry.gap.places");
    assertThat(problems(panel).get(0).cell()).isEqualTo("shine-left.at2");
    assertThat(problems(panel).get(0).args()).startsWith("Shine left", "2, 4–14");
  }

  @Test
  void a_share_of_some_of_its_places_is_no_share() {
    Result dust = result(GoodPanels.prepared().put("dust-left.at14", ""), "dust");
    assertThat(dust.judged()).isFalse();
    assertThat(dust.missing()).containsExactly("dust-left.at14");
  }

  @Test
  void what_each_coat_is_held_against_waits_for_every_coat() {
    WrittenPanel clear = ClearPanel.good().written();
    for (int place : new int[] {3, 6, 15}) {
      clear.put("wet-film.c2.at" + place, "");
    }
    assertThat(result(clear, "wet-film").missing()).containsExactly("wet-film.c2");
    WrittenPanel blend = GoodPanels.blended();
    for (int pass = 1; pass <= 3; pass++) {
      blend.put("stroke-time.c2.p" + pass, "").put("pass-spacing.c3.p" + pass, "");
    }
    assertThat(result(blend, "speed").missing()).containsExactly("stroke-time.c2");
    assertThat(result(blend, "overlap").missing()).containsExactly("pass-spacing.c3");
    assertThat(result(blend.put("flash.c2", ""), "flash").missing()).containsExactly("flash.c2");
  }

  @Test
  void a_coat_that_the_task_needs_is_missed_though_nothing_was_written_about_it() {
    WrittenPanel card = GoodPanels.card();
    for (String of : List.of("squares-seen", "flash")) {
      card.leaveOut(of);
    }
    for (int pass = 1; pass <= 3; pass++) {
      for (String of :
          List.of("distance-start", "distance-middle", "distance-end", "stroke-time")) {
        card.put(of + ".c2.p" + pass, "").put(of + ".c3.p" + pass, "");
      }
      card.put("pass-spacing.c2.p" + pass, "").put("pass-spacing.c3.p" + pass, "");
    }
    card.put("squares-seen.c1", "0");
    assertThat(result(card, "hiding").missing()).containsExactly("squares-seen.c2");
  }

  @Test
  void where_the_task_says_how_many_places_will_do_so_many_do() {
    String share =
        WrittenPanel.criterion(
            "shine",
            "shine-left",
            "at most 0 %",
            "judged: share, critical: yes, weight: 1, fade: 5 %");
    assertThat(result(WrittenPanel.against(share).put("shine-left.at9", "dull"), "shine").judged())
        .isTrue();
  }
}
