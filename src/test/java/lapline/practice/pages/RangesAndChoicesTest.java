package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lapline.pages.Messages;
import lapline.practice.Cell;
import lapline.practice.Criterion;
import lapline.practice.Measurand;
import lapline.practice.Phrase;
import lapline.practice.Scope;
import lapline.practice.WrittenPanel;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Ranges, choices and places, said the way a sheet says them. */
class RangesAndChoicesTest {
  private final PhraseWriter metric = new PhraseWriter(new Messages(), UnitSystem.METRIC);
  private final PhraseWriter us = new PhraseWriter(new Messages(), UnitSystem.US);

  @Test
  void a_phrase_is_written_in_the_readers_units_and_words() {
    Phrase phrase =
        Phrase.message(
            "drawing.area.thin",
            Phrase.word("area.lower-edge"),
            Phrase.quantity(12.7e-6, Dimension.FILM),
            Phrase.quantity(0.1, Dimension.SHARE));
    assertThat(plain(metric.phrase(phrase)))
        .isEqualTo("thin along the lower edge, 12.7 µm under (10 % of the panel)");
    assertThat(plain(us.phrase(phrase)))
        .isEqualTo("thin along the lower edge, 0.5 mil under (10 % of the panel)");
  }

  @Test
  void words_of_a_content_file_stand_as_written_and_no_phrase_is_no_words() {
    assertThat(metric.phrase(Phrase.written("Hold {0} still"))).isEqualTo("Hold {0} still");
    assertThat(metric.phrase(null)).isEmpty();
  }

  @Test
  void ranges_are_said_the_way_a_sheet_says_them() {
    assertThat(range(new TargetRange(50e-6, 65e-6), Dimension.FILM)).isEqualTo("50 to 65 µm");
    assertThat(range(TargetRange.atLeast(0.9), Dimension.SHARE)).isEqualTo("at least 90 %");
    assertThat(range(TargetRange.atMost(0), Dimension.COUNT)).isEqualTo("none");
    assertThat(range(new TargetRange(-0.015, 0.015), Dimension.LENGTH)).isEqualTo("within ± 15 mm");
    assertThat(range(new TargetRange(480, 900), Dimension.DURATION)).isEqualTo("8 to 15 min");
  }

  @Test
  void of_a_choice_the_good_one_is_named() {
    Measurand film =
        new Measurand(
            "slack-film",
            "Masking film",
            "",
            SpokenUnits.usual(Dimension.CHOICE),
            Scope.PANEL,
            false,
            0,
            1,
            0,
            0,
            "",
            List.of(
                new Measurand.Option("tight", "Tight", 0),
                new Measurand.Option("slack", "Slack", 1)));
    Criterion tight =
        new Criterion(
            "film",
            "Film tight",
            "slack-film",
            Dimension.NUMBER,
            null,
            Criterion.Judged.MEAN,
            TargetRange.atMost(0),
            false,
            1,
            1,
            "",
            "",
            "");
    CriterionWriter writer = new CriterionWriter(metric, id -> Optional.of(film));
    assertThat(writer.target(tight)).isEqualTo("Tight");
    assertThat(writer.value(tight, Estimate.of(1, 0))).isEqualTo("Slack");
  }

  @Test
  void a_counting_rule_is_kept_or_broken() {
    Criterion rule =
        WrittenPanel.COURSE.find("clear/two-coats").orElseThrow().criteria().stream()
            .filter(c -> c.quantity().equals("film-plan"))
            .findFirst()
            .orElseThrow();
    CriterionWriter writer = new CriterionWriter(metric, id -> Optional.empty());
    assertThat(writer.target(rule)).isEqualTo("kept");
    assertThat(writer.value(rule, Estimate.of(0, 0))).isEqualTo("broken");
    assertThat(writer.value(rule, Estimate.of(1, 0))).isEqualTo("kept");
  }

  @Test
  void a_long_length_is_said_in_metres_or_feet() {
    assertThat(range(TargetRange.atMost(8), Dimension.LENGTH)).isEqualTo("at most 8 m");
    assertThat(plain(us.range(TargetRange.atMost(8), Dimension.LENGTH))).isEqualTo("at most 26 ft");
    assertThat(range(new TargetRange(1.5, 2.5), Dimension.LENGTH)).isEqualTo("1500 mm to 2.5 m");
  }

  @Test
  void a_place_on_the_record_is_named() {
    assertThat(metric.where(Cell.pass("stroke-time", 2, 3))).isEqualTo("coat 2, pass 3");
    assertThat(metric.where(Cell.panel("gun-pressure"))).isEmpty();
  }

  private String range(TargetRange range, Dimension dimension) {
    return plain(metric.range(range, dimension));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
