package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lapline.pages.Messages;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;
import lapline.practice.PanelScore.Rival;
import lapline.practice.Phrase;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What is not decided is never told as the thing to change. */
class FirstCauseTest {
  private static final CriterionWriter WORDS =
      new CriterionWriter(
          new PhraseWriter(new Messages(), UnitSystem.METRIC), name -> Optional.empty());
  private static final Phrase FITS = Phrase.message("cause.stray");
  private static final Phrase OPEN = Phrase.message("cause.undecided");
  private static final List<NextPlace> THREE =
      List.of(NextPlace.of(0.1, 0.1), NextPlace.of(0.3, 0.1), NextPlace.of(0.5, 0.1));

  @Test
  void a_cause_without_a_rival_is_decided() {
    FirstCause arc = cause("arcing", List.of(FITS), List.of());
    assertThat(arc.isDecided()).isTrue();
    assertThat(arc.kind()).isEmpty();
  }

  @Test
  void one_of_two_is_told_with_the_other_and_with_the_places_to_read_first() {
    FirstCause arc = cause("arcing", List.of(FITS, OPEN), THREE, "trigger-early");
    assertThat(arc.isDecided()).isFalse();
    assertThat(arc.kind()).isEqualTo(".several");
    assertThat(arc.getSettle())
        .isEqualTo(
            "Before you change your stroke, read 3 more places. They tell which cause it is.");
    assertThat(arc.getNextPlaces()).hasSize(3);
    assertThat(arc.getPossible())
        .isEqualTo(
            "‘You swing the gun in an arc’ or ‘You let go of the trigger too early, or pull it too"
                + " late’");
  }

  @Test
  void a_place_to_read_says_what_it_shows_for_the_first_cause_and_for_the_others() {
    NextPlace spot = new NextPlace(0.094, 0.346, 53e-6, 58e-6);
    FirstCause arc = cause("arcing", List.of(OPEN), List.of(spot), "trigger-early");
    assertThat(arc.getNextPlaces())
        .singleElement()
        .asString()
        .endsWith("About 53\u00a0µm of film if it is the first cause, 58\u00a0µm if not");
  }

  @Test
  void what_says_that_it_is_open_is_no_evidence_for_it() {
    FirstCause arc = cause("arcing", List.of(FITS, OPEN), THREE, "trigger-early");
    assertThat(arc.getEvidence()).containsExactly("A reading fits nothing around it");
  }

  @Test
  void three_that_are_possible_are_all_named() {
    FirstCause arc = cause("arcing", List.of(OPEN), THREE, "trigger-early", "tilt");
    assertThat(arc.getPossible())
        .startsWith("‘You swing the gun in an arc’, ‘You let go")
        .endsWith(" or ‘The gun is tilted, so one side of each pass is heavy’");
  }

  @Test
  void where_no_place_tells_them_apart_it_is_said_what_does() {
    FirstCause amount =
        cause("too-little", List.of(Phrase.message("cause.undecided.mix")), List.of(), "wrong-mix");
    assertThat(amount.isOneOfSeveral()).isTrue();
    assertThat(amount.getSettle()).contains("Weigh out the next mix exactly");
  }

  /** One of several at 0.6 and rivals at 0.3 each. */
  @Test
  void what_no_named_cause_has_of_the_evidence_is_not_lost() {
    assertThat(cause("arcing", List.of(), List.of()).getUnnamed()).isCloseTo(0.4, within(1e-12));
    assertThat(cause("arcing", List.of(), List.of(), "tilt").getUnnamed())
        .isCloseTo(0.1, within(1e-12));
    assertThat(cause("arcing", List.of(), List.of(), "tilt", "drift-along").getUnnamed()).isZero();
  }

  @Test
  void a_change_is_noted_on_the_next_panel_without_what_spoke_for_it() {
    PhraseWriter words = WORDS.words();
    Phrase change = Phrase.message("cause.arcing.change", Phrase.word("20 %"));
    assertThat(words.phrase(change)).contains("20 %");
    assertThat(words.noted(change)).startsWith("Move the whole arm").doesNotContain("further away");
    assertThat(words.noted(Phrase.written("Go slower."))).isEqualTo("Go slower.");
  }

  private static FirstCause cause(
      String id, List<Phrase> evidence, List<NextPlace> places, String... rivals) {
    List<Rival> others =
        List.of(rivals).stream().map(r -> new Rival(r, 0.3, Phrase.message("cause." + r))).toList();
    Finding finding =
        new Finding(
            id,
            0.6,
            Phrase.message("cause." + id),
            evidence,
            others,
            Phrase.message("cause." + id + ".change"),
            null,
            places);
    WrittenPanel clear = WrittenPanel.under("clear/two-coats");
    PanelScore score = clear.score();
    return new FirstCause(finding, clear.task(), score, WORDS);
  }
}
