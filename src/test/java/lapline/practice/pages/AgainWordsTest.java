package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.practice.Again;
import lapline.practice.FilmField;
import lapline.practice.FilmField.PlaceFilm;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What reading a panel again has changed is told beside the new score. */
class AgainWordsTest {
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  private static List<String> said(Again before, PanelScore now) {
    return AgainWords.of(before, now, WORDS).stream().map(s -> s.replace('\u00a0', ' ')).toList();
  }

  @Test
  void a_panel_read_once_has_nothing_to_tell() {
    assertThat(said(null, now(70, "arcing"))).isEmpty();
  }

  @Test
  void further_readings_the_score_and_what_stood_first_are_told() {
    assertThat(said(before(70, "arcing"), now(74, "tilt", new PlaceFilm(101, 0, 0, 52e-6, 1e-6))))
        .containsExactly(
            "Before, this stood first: You swing the gun in an arc. Now it is this: The gun is"
                + " tilted, so one side of each pass is heavy.",
            "The practice score went from 70 to 74.",
            "Read at further places: A "
                + WORDS.quantity(Estimate.of(52e-6, 1e-6), Dimension.FILM).replace('\u00a0', ' ')
                + ". They count for the film map, the share of the"
                + " panel in range and the causes; the mean and the counting rule go by the places"
                + " of the sheet.");
  }

  @Test
  void what_stayed_is_said_to_have_stayed() {
    assertThat(said(before(70, "arcing"), now(70, "arcing", new PlaceFilm(7, 0, 0, 52e-6, 1e-6))))
        .containsExactly(
            "What stands first is the same as before: You swing the gun in an arc.",
            "The practice score stays at 70.");
    assertThat(said(before(70, ""), now(70, "")))
        .contains("Nothing was found before, and nothing is now.");
    assertThat(said(before(70, "arcing"), now(90, "")))
        .contains("Before, this stood first: You swing the gun in an arc. Now nothing is found.");
    assertThat(said(before(70, ""), now(60, "tilt")))
        .first()
        .asString()
        .startsWith("Before, nothing");
  }

  private static Again before(double score, String finding) {
    return new Again(List.of(), score, finding, finding.isEmpty() ? null : cause(finding));
  }

  private static PanelScore now(double score, String finding, PlaceFilm... places) {
    List<Finding> found =
        finding.isEmpty()
            ? List.of()
            : List.of(
                new Finding(
                    finding, 1, cause(finding), List.of(), List.of(), null, null, List.of()));
    FilmField film =
        new FilmField(
            0.6,
            0.4,
            0,
            0,
            List.of(),
            new TargetRange(50e-6, 65e-6),
            0,
            0,
            0,
            0,
            0,
            List.of(),
            List.of(places),
            List.of());
    return new PanelScore(score, false, List.of(), List.of(), found, film, null, "4");
  }

  private static Phrase cause(String finding) {
    return Phrase.message("cause." + finding);
  }
}
