package lapline.grading.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.grading.DefectMark;
import lapline.grading.UnfinishedGrading;
import lapline.pages.Messages;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Place;
import lapline.practice.pages.PhraseWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What the bench's fields hold survives the way to the server and back. */
class BenchFormTest {
  private static final PanelOutline PANEL =
      new PanelOutline(0.6, 0.4, List.of(), List.of(new Place(3, 0.3, 0.2, "")), List.of());
  private final Map<String, String[]> sent = new HashMap<>();

  @Test
  void a_defect_with_a_bar_in_its_note_is_read_back_as_it_was_placed() {
    DefectMark run = new DefectMark("run", 0.1234, 0.05, "long | and wet");
    sent.put("defect", new String[] {BenchForm.line(run)});
    assertThat(new BenchForm(sent).defects()).containsExactly(run);
  }

  @Test
  void the_defect_that_is_taken_away_is_gone_and_a_wrong_number_takes_none() {
    sent.put("defect", new String[] {"run|0.1|0.1|", "sag|0.2|0.1|"});
    sent.put("take-away", new String[] {"0"});
    assertThat(new BenchForm(sent).defects()).extracting(DefectMark::kind).containsExactly("sag");
    sent.put("take-away", new String[] {"2"});
    assertThat(new BenchForm(sent).defects()).hasSize(2);
  }

  @Test
  void more_defects_than_say_anything_are_left_out_and_a_note_ends_where_its_field_does() {
    String[] many = new String[BenchForm.MOST_DEFECTS + 3];
    Arrays.fill(many, "run|0.1000|0.1000|");
    assertThat(new BenchForm(Map.of(BenchForm.DEFECT, many)).defects())
        .hasSize(BenchForm.MOST_DEFECTS);
    assertThat(new BenchForm(Map.of("note", new String[] {"x".repeat(300)})).note()).hasSize(200);
  }

  @Test
  void lines_that_are_no_defect_are_left_out() {
    sent.put("defect", new String[] {"run", "run|NaN|0.1|", "run|x|0.1|", ""});
    assertThat(new BenchForm(sent).defects()).isEmpty();
  }

  @Test
  void a_defect_is_placed_by_tap_by_place_or_by_measure_in_the_persons_units() {
    assertThat(spot()).isEmpty();
    sent.put("from-left", new String[] {"4"});
    sent.put("from-below", new String[] {"2 in"});
    assertThat(spot()).hasValueSatisfying(p -> assertThat(p.x()).isEqualTo(0.1016));
    sent.put("place-number", new String[] {"3"});
    assertThat(spot()).hasValue(new PanelOutline.Point(0.3, 0.2));
    sent.put("tap-x", new String[] {"0.5"});
    sent.put("tap-y", new String[] {"0.1"});
    assertThat(spot()).hasValue(new PanelOutline.Point(0.5, 0.1));
  }

  @Test
  void a_tap_beside_the_edge_means_the_edge_and_one_far_off_means_nothing() {
    sent.put("tap-x", new String[] {"0.6123"});
    sent.put("tap-y", new String[] {"0.10037"});
    assertThat(spot()).hasValue(new PanelOutline.Point(0.6, 0.1));
    sent.put("tap-x", new String[] {"0.7"});
    assertThat(spot()).isEmpty();
  }

  @Test
  void what_is_wrong_names_the_field_and_what_was_typed() {
    sent.put("from-left", new String[] {"abc"});
    sent.put("from-below", new String[] {"4"});
    assertThat(wrong().field()).isEqualTo("from-left");
    assertThat(wrong().says()).contains("“abc” is not a length");
    sent.put("from-left", new String[] {"4"});
    sent.put("from-below", new String[] {"9999 mm"});
    assertThat(wrong().field()).isEqualTo("from-below");
    assertThat(wrong().says()).contains("“9999 mm” is off the panel").contains("15.75");
    sent.clear();
    assertThat(wrong().says()).contains("tap the panel");
  }

  @Test
  void what_was_kept_stands_in_the_fields_again() {
    DefectMark run = new DefectMark("run", 0.1234, 0.05, "long");
    BenchForm again =
        BenchForm.of(
            new UnfinishedGrading(
                UUID.randomUUID(),
                UUID.randomUUID(),
                Instant.EPOCH,
                "Good edges.",
                Map.of("dirt", 2),
                List.of(run)));
    assertThat(again.text("remark")).isEqualTo("Good edges.");
    assertThat(again.marks()).isEqualTo(Map.of("dirt", 2));
    assertThat(again.defects()).containsExactly(run);
  }

  @Test
  void letters_go_on_after_z() {
    assertThat(DefectMap.letter(0)).isEqualTo("A");
    assertThat(DefectMap.letter(25)).isEqualTo("Z");
    assertThat(DefectMap.letter(26)).isEqualTo("AA");
  }

  private java.util.Optional<PanelOutline.Point> spot() {
    return where().found();
  }

  private DefectSpot.Wrong wrong() {
    return where().wrong().orElseThrow();
  }

  private DefectSpot where() {
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.US);
    return new DefectSpot(new BenchForm(sent), PANEL, words, UnitSystem.US);
  }
}
