package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lapline.pages.Messages;
import lapline.practice.FieldProblem;
import lapline.practice.PanelReader;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Somebody who made one mistake many times is told of one mistake. */
class EntryProblemsTest {
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.US);
  private static final GapWords PLACES = new GapWords(WrittenPanel.COURSE.measurands(), WORDS);

  private static List<String> told(Map<String, String> typed) {
    List<FieldProblem> problems =
        PanelReader.read(
                WrittenPanel.under("clear/two-coats").task(),
                WrittenPanel.COURSE.measurands(),
                typed,
                UnitSystem.US)
            .problems();
    return new EntryProblems(PLACES, WORDS, cell -> "[" + cell + "]")
        .lines(problems).stream().map(l -> WORDS.say(l.key(), l.args().toArray())).toList();
  }

  private static Map<String, String> film(int places, String before, String after) {
    Map<String, String> typed = new TreeMap<>();
    for (int place = 1; place <= places; place++) {
      typed.put("film-before.at" + place, before);
      typed.put("film-after.at" + place, after);
    }
    return typed;
  }

  @Test
  void micrometres_where_mils_are_meant_are_one_line_with_all_their_places() {
    assertThat(told(film(15, "100", "155")))
        .containsExactly(
            "Film before at places 1–15; Film after at places 1–15: 30 readings cannot be in “mil”."
                + " They look like µm: write µm beside each number.");
  }

  /** Though 254 in would be said as feet elsewhere, the fields are in inches. */
  @Test
  void the_line_names_the_unit_of_the_fields() {
    Map<String, String> typed = new TreeMap<>();
    for (int pass = 2; pass <= 6; pass++) {
      typed.put("pass-spacing.c1.p" + pass, "76");
    }
    assertThat(told(typed))
        .singleElement()
        .asString()
        .endsWith("5 readings cannot be in “in”. They look like mm: write mm beside each number.");
  }

  @Test
  void a_few_of_the_same_are_told_one_by_one() {
    assertThat(told(film(1, "100", "155")))
        .hasSize(2)
        .allMatch(line -> line.startsWith("[film-") && line.contains("Did you mean"));
  }

  @Test
  void the_same_that_is_no_unit_is_told_once_with_what_is_wrong() {
    assertThat(told(film(15, "abc", "6 mil")))
        .containsExactly(
            "Film before at places 1–15: the same mistake in 15 readings. “abc” is not a reading."
                + " Write it like 2.4 mil.");
  }

  @Test
  void what_is_missing_is_named_once() {
    List<FieldProblem> missing =
        List.of(
            new FieldProblem("film-before.at3", "entry.gap.places", List.of("Film before", "3–15")),
            new FieldProblem("film-after.at1", "entry.required", List.of("Film after")));
    assertThat(
            new EntryProblems(PLACES, WORDS, cell -> "[" + cell + "]")
                .lines(missing).stream().map(l -> WORDS.say(l.key(), l.args().toArray())))
        .containsExactly(
            "Film before: places 3–15 are missing. A place left out can hide what you look for.",
            "Film after is needed before the panel can be scored.");
  }

  @Test
  void readings_of_passes_are_named_by_their_coat() {
    Map<String, String> typed = new TreeMap<>();
    for (int pass = 2; pass <= 6; pass++) {
      typed.put("pass-spacing.c1.p" + pass, "wide");
    }
    assertThat(told(typed))
        .singleElement()
        .asString()
        .contains(" in coat 1: the same mistake in 5");
  }
}
