package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import lapline.practice.pages.PhraseWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A result names the places, the part of the mix and the papers, not just a share of them. */
class WhereaboutsTest {
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  private static String told(WrittenPanel panel, String criterion) {
    PanelScore.Result result = panel.score().result(criterion).orElseThrow();
    return plain(Whereabouts.of(panel.task(), result).map(WORDS::phrase).orElse(""));
  }

  private static String brief(WrittenPanel panel, String criterion) {
    PanelScore.Result result = panel.score().result(criterion).orElseThrow();
    return plain(Whereabouts.brief(panel.task(), result).map(WORDS::phrase).orElse(""));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  /** The flat panel with shine at these places, dull elsewhere. */
  private static WrittenPanel shineAt(Integer... places) {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel");
    for (int place = 1; place <= 14; place++) {
      panel.put("shine-left.at" + place, "dull");
    }
    for (int place : places) {
      panel.put("shine-left.at" + place, "shine");
    }
    return panel;
  }

  private static WrittenPanel mixed(String clear, String hardener, String reducer) {
    return WrittenPanel.under("clear/two-coats")
        .put("mix-amount.s1", clear)
        .put("mix-amount.s2", hardener)
        .put("mix-amount.s3", reducer);
  }

  @Test
  void places_with_shine_are_named_with_their_numbers() {
    assertThat(told(shineAt(2, 8), "shine")).isEqualTo("2 of 14: top edge (2), left edge (8)");
    assertThat(told(shineAt(), "shine")).isEqualTo("none of 14");
    assertThat(told(shineAt(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14), "shine"))
        .isEqualTo("all 14");
  }

  @Test
  void a_heading_only_counts_them_where_they_are_many() {
    assertThat(brief(shineAt(2, 8), "shine")).isEqualTo("2 of 14: top edge (2), left edge (8)");
    assertThat(brief(shineAt(2, 4, 8), "shine")).startsWith("3 of 14: ").contains("left edge (8)");
    assertThat(brief(shineAt(1, 2, 3, 4), "shine")).isEqualTo("4 of 14");
    assertThat(brief(shineAt(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14), "shine"))
        .isEqualTo("all 14");
  }

  @Test
  void the_part_of_the_mix_that_strays_is_named_with_what_the_sheet_asks_for() {
    assertThat(told(mixed("400 ml", "100 ml", "150 ml"), "mix"))
        .isEqualTo("Reducer: 150 mL, the sheet asks for 100 mL");
    assertThat(told(mixed("400 ml", "60 ml", "100 ml"), "mix"))
        .isEqualTo("Hardener: 60 mL, the sheet asks for 100 mL");
    assertThat(told(mixed("300 ml", "100 ml", "100 ml"), "mix"))
        .isEqualTo("Hardener: 100 mL, the sheet asks for 75 mL");
  }

  @Test
  void the_largest_jump_names_its_two_papers() {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel");
    panel.put("grit.s1", "P240").put("grit.s2", "P600").put("grit.s3", "P800");
    assertThat(told(panel, "steps")).isEqualTo("P240 to P600");
  }

  @Test
  void a_value_that_says_it_all_has_nothing_added() {
    WrittenPanel panel = WrittenPanel.under("preparing/flat-panel").put("work-time", "42 min");
    assertThat(told(panel, "time")).isEmpty();
  }

  @Test
  void the_sentence_that_proves_a_cause_names_them_too() {
    PanelScore score = shineAt(2, 8).score();
    String evidence = WORDS.phrase(score.findings().get(0).evidence().get(0));
    assertThat(plain(evidence))
        .isEqualTo("Places with shine left: 2 of 14, top edge (2), left edge (8).");
  }
}
