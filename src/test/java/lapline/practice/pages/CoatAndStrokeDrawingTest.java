package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Shape;
import lapline.practice.PanelOutline;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** A coat and its strokes, drawn so that they can be read on a phone, and said in a sentence. */
class CoatAndStrokeDrawingTest {
  private static final PhraseWriter METRIC = new PhraseWriter(new Messages(), UnitSystem.METRIC);
  private static final PanelOutline PANEL =
      WrittenPanel.COURSE.find("clear/two-coats").orElseThrow().panel();

  /** Drawings have 358 px on a phone 390 px wide. */
  private static final double ON_A_PHONE = 358;

  private static SprayedCoat coat(double drift) {
    return new SprayedCoat(
        1,
        0.2,
        List.of(
            pass(1, PANEL.height() + 0.02, Double.NaN, drift),
            pass(2, PANEL.height() - 0.04, 0.06, drift),
            pass(3, PANEL.height() - 0.12, 0.08, drift)));
  }

  private static SprayedCoat.Pass pass(int number, double centre, double spacing, double drift) {
    return new SprayedCoat.Pass(number, centre, spacing, 0.1, 0.1 + drift / 2, 0.1 + drift);
  }

  private static StrokeDrawing stroke(double drift) {
    return new StrokeDrawing(coat(drift), new TargetRange(0.08, 0.12), METRIC);
  }

  @Test
  void every_letter_is_14_px_or_more_on_a_phone() {
    Drawing passes = new CoatDrawing(PANEL, coat(0), METRIC).drawing();
    for (Drawing drawing : List.of(passes, stroke(0.02).drawing())) {
      List<Shape.Words> letters =
          drawing.shapes().stream()
              .flatMap(s -> s instanceof Shape.Words w ? Stream.of(w) : Stream.empty())
              .toList();
      assertThat(letters).isNotEmpty();
      assertThat(letters).allMatch(w -> w.size() * ON_A_PHONE / drawing.width() >= 14);
    }
  }

  @Test
  void a_coat_says_its_overlaps_and_which_passes_lie_beyond_the_panel() {
    assertThat(plain(new CoatDrawing(PANEL, coat(0), METRIC).meaning()))
        .contains("from 60 % to 70 %")
        .endsWith("lies beyond the panel: 1.");
  }

  @Test
  void a_coat_whose_passes_all_overlap_alike_is_said_to() {
    SprayedCoat even =
        new SprayedCoat(
            1,
            0.2,
            List.of(pass(1, 0.1, Double.NaN, 0), pass(2, 0.16, 0.06, 0), pass(3, 0.22, 0.06, 0)));
    assertThat(plain(new CoatDrawing(PANEL, even, METRIC).meaning()))
        .endsWith("The overlap is 70 % from every pass to the next.");
  }

  @Test
  void a_stroke_says_where_the_gun_went_and_what_that_does() {
    assertThat(plain(stroke(0.03).meaning())).contains("moved away by 30 mm", "thinner");
    assertThat(plain(stroke(-0.03).meaning())).contains("came nearer by 30 mm", "thicker");
    assertThat(plain(stroke(0.00025).meaning()))
        .endsWith("kept its distance, within the 10 mm that a rule beside it can show.");
  }

  /** The swing of an arc ends where it began. */
  @Test
  void a_gun_that_is_as_far_off_at_both_ends_has_not_kept_its_distance() {
    assertThat(plain(swung(0.05).meaning()))
        .endsWith(
            "At both ends the gun was 50 mm further away than in the middle, so the film gets"
                + " thinner to the ends.");
    assertThat(plain(swung(-0.03).meaning())).contains("30 mm nearer than in the middle");
    assertThat(plain(swung(0.009).meaning())).contains("kept its distance");
  }

  private static StrokeDrawing swung(double farther) {
    SprayedCoat.Pass pass =
        new SprayedCoat.Pass(1, 0.2, Double.NaN, 0.1 + farther, 0.1, 0.1 + farther);
    SprayedCoat coat = new SprayedCoat(1, 0.2, List.of(pass));
    return new StrokeDrawing(coat, new TargetRange(0.08, 0.12), METRIC);
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
