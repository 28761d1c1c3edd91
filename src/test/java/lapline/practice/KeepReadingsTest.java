package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Random;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class KeepReadingsTest {
  private final PracticeShop shop = new PracticeShop();
  private final Attempt draft = shop.draft();
  private final Attempt courseDraft =
      new StartAttempt(shop.attempts, WrittenPanel.COURSE, shop.choose, shop.clock, new Random(7))
          .run(shop.apprentice, "clear/two-coats", null, "");

  private KeptReadings keep(long since, TypedReading... typed) {
    return shop.keep.run(shop.apprentice, draft.id(), since, List.of(typed));
  }

  private static TypedReading typed(String cell, String text, long base) {
    return new TypedReading(cell, text, base);
  }

  private List<String> kept() {
    return shop.attempts.readings(draft.id()).stream()
        .map(r -> r.cell() + "=" + r.typed())
        .sorted()
        .toList();
  }

  @Test
  void what_was_typed_is_kept_as_typed_and_shown_back_as_understood() {
    KeptReadings answer = keep(0, typed("film-after.at1", " 2.4 mil ", 0));
    assertThat(kept()).containsExactly("film-after.at1=2.4 mil");
    assertThat(answer.revision()).isEqualTo(1);
    assertThat(answer.at()).isEqualTo(PracticeShop.NOW);
    assertThat(answer.cells())
        .singleElement()
        .satisfies(c -> assertThat(c.understood()).isEqualTo("61\u00a0µm"));
  }

  @Test
  void a_figure_keeps_its_meaning_when_the_person_changes_their_units() {
    keep(0, typed("film-after.at1", "61", 0));
    Person inUs = PracticeShop.inUnits(shop.apprentice, UnitSystem.US);
    KeptReadings answer =
        shop.keep.run(inUs, draft.id(), 0, List.of(typed("film-after.at2", "62", 1)));
    assertThat(answer.problems()).isEmpty();
    assertThat(answer.cells())
        .extracting(KeptReadings.KeptCell::understood)
        .containsExactlyInAnyOrder("61\u00a0µm", "62\u00a0µm");
  }

  /** What was keyed in first looks odd only once there are others, and no more without them. */
  @Test
  void a_reading_that_others_make_look_odd_comes_back_with_them() {
    assertThat(cells(inCourse(0, typed("film-after.at1", "1560", 0)))).hasSize(1);
    for (int place = 2; place <= 4; place++) {
      inCourse(place - 1, typed("film-after.at" + place, "156", 0));
    }
    KeptReadings fifth = inCourse(4, typed("film-after.at5", "156", 0));
    assertThat(fifth.questions()).extracting(FieldProblem::cell).containsExactly("film-after.at1");
    assertThat(fifth.problems()).isEmpty();
    assertThat(cells(fifth)).containsExactlyInAnyOrder("film-after.at1", "film-after.at5");
    assertThat(cells(inCourse(5, typed("fan-width", "250", 0)))).containsExactly("fan-width");
    KeptReadings fewer = inCourse(6, typed("film-after.at5", "", 5));
    assertThat(fewer.questions()).isEmpty();
    assertThat(cells(fewer)).containsExactlyInAnyOrder("film-after.at1", "film-after.at5");
  }

  /** Keeps in a draft of a task of the course, which has more places than the shop's own. */
  private KeptReadings inCourse(long since, TypedReading typed) {
    return new KeepReadings(shop.attempts, new ReadPanel(WrittenPanel.COURSE), shop.clock)
        .run(shop.apprentice, courseDraft.id(), since, List.of(typed));
  }

  private static List<String> cells(KeptReadings answer) {
    return answer.cells().stream().map(KeptReadings.KeptCell::cell).toList();
  }

  @Test
  void a_wrong_reading_is_kept_too_and_told() {
    KeptReadings answer = keep(0, typed("film-after.at1", "abc", 0));
    assertThat(kept()).containsExactly("film-after.at1=abc");
    assertThat(answer.problems()).extracting(FieldProblem::cell).containsExactly("film-after.at1");
    assertThat(answer.complete()).isTrue();
  }

  @Test
  void two_windows_merge_reading_by_reading() {
    keep(0, typed("film-after.at1", "61", 0));
    KeptReadings second = keep(0, typed("film-after.at2", "62", 0));
    assertThat(kept()).containsExactly("film-after.at1=61", "film-after.at2=62");
    assertThat(second.conflicts()).isEmpty();
    assertThat(second.cells())
        .as("what the other window wrote comes with the answer")
        .extracting(KeptReadings.KeptCell::cell)
        .containsExactlyInAnyOrder("film-after.at1", "film-after.at2");
  }

  @Test
  void two_values_at_one_place_are_told_and_neither_is_lost() {
    keep(0, typed("film-after.at1", "61", 0));
    KeptReadings second = keep(0, typed("film-after.at1", "71", 0), typed("fan-width", "250", 0));
    assertThat(second.conflicts())
        .containsExactly(new KeptReadings.Conflict("film-after.at1", "71", "61", 1));
    assertThat(second.cells())
        .as("what clashed is not among what was kept")
        .extracting(KeptReadings.KeptCell::cell)
        .containsExactly("fan-width");
    assertThat(kept()).containsExactly("fan-width=250", "film-after.at1=61");
    assertThat(keep(2, typed("film-after.at1", "71", 1)).complete()).isTrue();
    assertThat(kept()).contains("film-after.at1=71");
  }

  @Test
  void the_same_value_from_two_windows_is_no_conflict_and_no_change() {
    keep(0, typed("film-after.at1", "61", 0));
    KeptReadings second = keep(1, typed("film-after.at1", "61", 0));
    assertThat(second.complete()).isTrue();
    assertThat(second.revision()).isEqualTo(1);
  }

  @Test
  void a_reading_taken_out_stays_known_so_that_a_late_window_cannot_put_it_back_unseen() {
    keep(0, typed("film-after.at1", "61", 0));
    keep(1, typed("film-after.at1", "", 1));
    assertThat(keep(1, typed("film-after.at1", "61.5", 1)).conflicts())
        .extracting(KeptReadings.Conflict::theirs)
        .containsExactly("");
  }

  @Test
  void what_the_task_has_no_place_for_and_what_is_too_long_is_refused_by_name() {
    KeptReadings answer =
        keep(
            0,
            typed("film-after.at9", "61", 0),
            typed("shine-left.at1", "dull", 0),
            typed("fan-width", "2".repeat(201), 0));
    assertThat(answer.refused())
        .extracting(FieldProblem::key)
        .containsExactly("entry.no-such-place", "entry.no-such-place", "entry.too-long");
    assertThat(kept()).isEmpty();
  }

  @Test
  void what_the_task_asked_for_once_and_asks_no_more_stays_kept_and_stands_in_no_ones_way() {
    shop.attempts.keep(draft.id(), 1, PracticeShop.NOW, Map.of("pass-spacing.c1.p1", "90"));
    KeptReadings answer = keep(1, typed("gun-pressure", "165 kPa", 0));
    assertThat(answer.problems()).isEmpty();
    assertThat(kept()).contains("pass-spacing.c1.p1=90");
    assertThat(shop.score.run(shop.apprentice, draft.id(), "key"))
        .isInstanceOf(ScoreAttempt.Scored.class);
  }

  @Test
  void only_the_apprentice_writes_and_only_while_it_is_a_draft() {
    List<TypedReading> one = List.of(typed("fan-width", "250", 0));
    assertThatThrownBy(() -> shop.keep.run(shop.other, draft.id(), 0, one))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.keep.run(shop.instructor, draft.id(), 0, one))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.keep.run(shop.stranger, draft.id(), 0, one))
        .isInstanceOf(NotFoundException.class);
    shop.attempts.changeState(draft.id(), Attempt.State.SCORED);
    assertThatThrownBy(() -> shop.keep.run(shop.apprentice, draft.id(), 0, one))
        .isInstanceOf(NotAllowedException.class)
        .hasMessage("entry.not-draft");
  }
}
