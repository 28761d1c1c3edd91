package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lapline.practice.PanelOutline.Place;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;
import lapline.practice.fit.BuildByPlace;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Places that a score asked for: keyed in, drawn and fitted, but neither averaged nor counted. */
class FurtherPlacesTest {
  private static final String FILM =
      WrittenPanel.criterion(
          "film",
          "film-build",
          "50 to 65 um",
          "judged: mean, critical: yes, weight: 1, fade: 6 um");
  private static final String SHARE =
      WrittenPanel.criterion("share", "film-share", "at least 80 %", "weight: 1, fade: 25 %");
  private static final String RULE =
      WrittenPanel.criterion("rule", "film-plan", "at least 1", "weight: 1, fade: 1");

  private final PracticeShop shop = new PracticeShop();
  private final Attempt draft = shop.draft();
  private final MeasureAgain again = new MeasureAgain(shop.attempts, shop.told::add);

  private static WrittenPanel even() {
    double[] film = IntStream.range(0, 15).mapToDouble(i -> 57 + i % 3 - 1).toArray();
    return WrittenPanel.against(FILM, SHARE, RULE).putAtPlaces("film-after", film);
  }

  private static PanelScore with(WrittenPanel panel, String... further) {
    List<Place> places =
        List.of(new Place(101, 0.2, 0.3, ""), new Place(102, 0.4, 0.3, ""))
            .subList(0, Math.max(1, further.length));
    PracticeTask task = panel.task().withFurther(places);
    Map<String, String> typed = new TreeMap<>();
    panel.cellsOf("film-after").forEach(c -> typed.put(c, panel.typed(c)));
    panel.cellsOf("film-before").forEach(c -> typed.put(c, panel.typed(c)));
    for (int i = 0; i < further.length; i++) {
      typed.put("film-after.at" + (101 + i), further[i]);
    }
    PanelReading read =
        PanelReader.read(task, WrittenPanel.COURSE.measurands(), typed, UnitSystem.METRIC);
    assertThat(read.problems()).isEmpty();
    return PanelScorer.score(task, read.entry());
  }

  @Test
  void a_further_reading_is_on_the_map_and_in_the_fit() {
    PanelScore before = with(even());
    PanelScore after = with(even(), "40 um", "41 um");
    assertThat(after.film().places()).extracting("place").contains(101, 102).hasSize(17);
    assertThat(after.film().shareInside()).isLessThan(before.film().shareInside() - 0.02);
    assertThat(after.stroke()).isNotEqualTo(before.stroke());
  }

  /** A place read because it tells most is no fair sample of the panel. */
  @Test
  void it_is_neither_averaged_nor_counted() {
    PanelScore before = with(even());
    PanelScore after = with(even(), "40 um", "41 um");
    for (String id : List.of("film", "rule")) {
      assertThat(after.result(id).orElseThrow().value())
          .as(id)
          .isEqualTo(before.result(id).orElseThrow().value());
    }
    assertThat(after.result("share").orElseThrow().value())
        .isLessThan(before.result("share").orElseThrow().value());
  }

  @Test
  void a_further_place_left_unread_is_no_gap() {
    assertThat(with(even()).results()).allMatch(PanelScore.Result::judged);
  }

  /** By hand: mean 20, spread 2, so one more reads 20 with 2 · √(1 + 1/4) = 2.236. */
  @Test
  void where_nobody_read_before_the_film_before_is_taken_as_elsewhere() {
    PanelEntry entry =
        PanelEntry.of(
            List.of(
                film("film-before", 1, 18),
                film("film-before", 2, 22),
                film("film-before", 3, 20 - Math.sqrt(2)),
                film("film-before", 4, 20 + Math.sqrt(2)),
                film("film-after", 1, 78),
                film("film-after", 101, 80),
                film("film-after", 5, 80)));
    Estimate a = BuildByPlace.dryByPlace(entry).get(101);
    assertThat(a.value()).isCloseTo(60e-6, within(1e-9));
    assertThat(a.standardUncertainty()).isCloseTo(Math.hypot(2.236, 1) * 1e-6, within(1e-9));
    assertThat(BuildByPlace.dryByPlace(entry)).as("a place of the task").doesNotContainKey(5);
  }

  private static Reading film(String measurand, int place, double microns) {
    return new Reading(Cell.place(measurand, place), microns * 1e-6, 1e-6, "");
  }

  @Test
  void spots_that_are_there_keep_their_name_and_new_ones_go_on_with_the_letters() {
    PanelOutline panel =
        shop.tasks
            .find(PracticeShop.TASK)
            .orElseThrow()
            .panel()
            .withFurther(List.of(new Place(101, 0.15, 0.05, "")));
    List<Place> places =
        FurtherPlaces.of(
            panel,
            List.of(NextPlace.of(0.076, 0.1), NextPlace.of(0.15, 0.052), NextPlace.of(0.2, 0.19)));
    assertThat(places)
        .extracting(p -> PanelOutline.nameOf(p.number()))
        .containsExactly("1", "A", "B");
  }

  @Test
  void a_panel_measured_again_has_fields_for_the_places_that_were_advised() {
    scored(finding(NextPlace.of(0.15, 0.05), NextPlace.of(0.225, 0.1)));
    Attempt open = again.run(shop.apprentice, draft.id());
    assertThat(open.again().further()).containsExactly(new Place(101, 0.15, 0.05, ""));
    assertThat(open.again().practiceScore()).isEqualTo(71);
    assertThat(open.again().finding()).isEqualTo("arcing");
    assertThat(shop.type(open, "film-after.at101", "52 um").complete()).isTrue();
    assertThat(shop.type(open, "film-before.at101", "20 um").refused())
        .as("nobody can read what lay there before")
        .hasSize(1);
    shop.type(open, "gun-pressure", "165 kPa");
    shop.score.run(shop.apprentice, draft.id(), "again");
    FindAttempts.Judged judged = shop.find.judged(shop.instructor, draft.id()).orElseThrow();
    assertThat(judged.task().panel().furtherPlaces()).hasSize(1);
    assertThat(judged.attempt().again().finding()).isEqualTo("arcing");
  }

  @Test
  void further_places_of_the_time_before_stay_and_the_next_go_on_after_them() {
    scored(finding(NextPlace.of(0.15, 0.05)));
    Attempt open = again.run(shop.apprentice, draft.id());
    PracticeTask task = shop.read.task(open);
    shop.attempts.keepJudgement(
        open.judged("v", new Attempt.Outcome(PracticeShop.NOW, 72, false)),
        "k",
        task,
        score(finding(NextPlace.of(0.15, 0.15))));
    Attempt third = again.run(shop.apprentice, draft.id());
    assertThat(third.again().further()).extracting(Place::number).containsExactly(101, 102);
  }

  private void scored(Finding first) {
    PracticeTask task = shop.tasks.find(PracticeShop.TASK).orElseThrow();
    shop.attempts.keepJudgement(
        draft.judged("v", new Attempt.Outcome(PracticeShop.NOW, 71, false)),
        "k",
        task,
        score(first));
  }

  private static PanelScore score(Finding first) {
    return new PanelScore(71, false, List.of(), List.of(), List.of(first), null, null, "4");
  }

  private static Finding finding(NextPlace... next) {
    return new Finding(
        "arcing",
        0.6,
        Phrase.message("cause.arcing"),
        List.of(),
        List.of(),
        Phrase.message("cause.arcing.change"),
        null,
        List.of(next));
  }
}
