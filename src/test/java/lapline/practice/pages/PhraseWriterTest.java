package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.pages.Messages;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class PhraseWriterTest {
  private final PhraseWriter metric = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  private String advice(int more) {
    return metric.phrase(
        Phrase.message("score.advice.more", Phrase.quantity(more, Dimension.COUNT)));
  }

  @Test
  void a_count_chooses_the_singular_or_the_plural() {
    assertThat(advice(1))
        .isEqualTo("One more reading here would settle it in four cases out of five.");
    assertThat(advice(3))
        .isEqualTo("3 more readings here would settle it in four cases out of five.");
  }

  @Test
  void a_quantity_is_written_in_the_readers_units() {
    Phrase low =
        Phrase.message(
            "score.evidence.low",
            Phrase.word("Film"),
            Phrase.quantity(40e-6, Dimension.FILM),
            Phrase.quantity(50e-6, Dimension.FILM));
    assertThat(metric.phrase(low))
        .isEqualTo("Film: 40\u00a0µm, where at least 50\u00a0µm is wanted.");
    assertThat(new PhraseWriter(new Messages(), UnitSystem.US).phrase(low))
        .isEqualTo("Film: 1.57\u00a0mil, where at least 1.97\u00a0mil is wanted.");
  }

  @Test
  void a_text_of_a_file_stands_as_it_is_and_nothing_is_nothing() {
    assertThat(metric.phrase(Phrase.written("Go slower {0}."))).isEqualTo("Go slower {0}.");
    assertThat(metric.phrase(null)).isEmpty();
  }

  @Test
  void a_text_of_a_file_gives_its_quantities_in_the_readers_units() {
    Phrase closer = Phrase.written("Step {75 mm | 3 in} at most.");
    assertThat(metric.phrase(closer)).isEqualTo("Step 75\u00a0mm at most.");
    assertThat(new PhraseWriter(new Messages(), UnitSystem.US).phrase(closer))
        .isEqualTo("Step 3\u00a0in at most.");
  }

  @Test
  void a_spot_on_the_panel_is_said_no_finer_than_it_is_pointed_out() {
    PhraseWriter us = new PhraseWriter(new Messages(), UnitSystem.US);
    assertThat(us.spot(0.42)).isEqualTo("16.5\u00a0in");
    assertThat(us.spot(0.223)).isEqualTo("8.8\u00a0in");
    assertThat(metric.spot(0.2234)).isEqualTo("223\u00a0mm");
  }

  /** A step of 76 mm is chalked at 3 in; nobody finds 2.99 in on a tape. */
  @Test
  void a_length_to_mark_is_said_in_tenths_of_an_inch_or_whole_millimetres() {
    Phrase step =
        Phrase.message(
            "cause.spacing-wide.change",
            Phrase.quantity(0.076, Dimension.LENGTH),
            Phrase.quantity(0.667, Dimension.SHARE),
            Phrase.quantity(0.2286, Dimension.LENGTH));
    assertThat(new PhraseWriter(new Messages(), UnitSystem.US).phrase(step))
        .startsWith("Mark your passes 3\u00a0in apart")
        .endsWith("with your fan of 9\u00a0in.");
    assertThat(metric.phrase(step))
        .startsWith("Mark your passes 76\u00a0mm apart")
        .endsWith("with your fan of 229\u00a0mm.");
  }

  @Test
  void a_length_too_short_to_mark_is_not_nothing() {
    Phrase tiny =
        Phrase.message("cause.spacing-uneven.change", Phrase.quantity(0.001, Dimension.LENGTH));
    assertThat(new PhraseWriter(new Messages(), UnitSystem.US).phrase(tiny))
        .contains("step of 0.039\u00a0in every");
  }

  @Test
  void a_panel_cut_to_millimetres_is_about_so_many_inches() {
    PhraseWriter us = new PhraseWriter(new Messages(), UnitSystem.US);
    assertThat(us.cutSize(0.15, 0.1)).isEqualTo("about 6\u00a0in × 4\u00a0in");
    assertThat(metric.cutSize(0.15, 0.1)).isEqualTo("150\u00a0mm × 100\u00a0mm");
  }
}
