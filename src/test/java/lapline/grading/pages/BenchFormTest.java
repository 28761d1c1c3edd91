package lapline.grading.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lapline.grading.DefectMark;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Place;
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
    sent.put("tap-x", new String[] {"0.61"});
    assertThat(spot()).isEmpty();
  }

  @Test
  void letters_go_on_after_z() {
    assertThat(DefectMap.letter(0)).isEqualTo("A");
    assertThat(DefectMap.letter(25)).isEqualTo("Z");
    assertThat(DefectMap.letter(26)).isEqualTo("AA");
  }

  private java.util.Optional<PanelOutline.Point> spot() {
    return new DefectSpot(new BenchForm(sent), PANEL, UnitSystem.US).found();
  }
}
