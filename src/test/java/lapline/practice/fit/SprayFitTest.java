package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;
import lapline.practice.Phrase;
import lapline.practice.PracticeTask;
import lapline.practice.Reading;
import lapline.trade.stroke.Fault;
import lapline.trade.stroke.StrokeReading.Found;
import org.junit.jupiter.api.Test;

class SprayFitTest {
  private static final PanelOutline PANEL = Panels.staggered(24);
  private static final PracticeTask TASK = Panels.task(PANEL);

  @Test
  void without_film_there_is_nothing_to_explain() {
    assertThat(SprayFit.explain(TASK, PanelEntry.of(List.of())).findings()).isEmpty();
  }

  @Test
  void the_film_that_lay_there_before_is_taken_off() {
    Map<Integer, Double> even = everywhere(180e-6);
    List<Reading> before =
        even.keySet().stream()
            .map(p -> Panels.reading(Cell.place("film-before", p), 122e-6, Panels.NOISE))
            .toList();
    assertThat(
            SprayFit.explain(TASK, Panels.entry(even, before.toArray(Reading[]::new))).findings())
        .isEmpty();
    assertThat(SprayFit.explain(TASK, Panels.entry(even)).findings())
        .extracting(Finding::id)
        .containsExactly("too-much");
  }

  @Test
  void wet_film_is_used_where_there_is_no_dry() {
    List<Reading> wet = new ArrayList<>();
    for (PanelOutline.Place p : PANEL.places()) {
      for (int coat = 1; coat <= 2; coat++) {
        double film = 100e-6 * (1 + 0.4 * p.x() / PANEL.width());
        wet.add(Panels.reading(Cell.coatPlace("wet-film", coat, p.number()), film, 4e-6));
      }
    }
    assertThat(SprayFit.explain(TASK, PanelEntry.of(wet)).findings())
        .extracting(Finding::id)
        .containsExactly("drift-along");
  }

  @Test
  void two_places_are_enough_for_the_amount_and_for_no_pattern() {
    Map<Integer, Double> two = Map.of(1, 30e-6, 24, 34e-6);
    assertThat(SprayFit.explain(TASK, Panels.entry(two)).findings())
        .extracting(Finding::id)
        .containsExactly("too-few.blind", "too-little");
  }

  @Test
  void thin_film_from_a_thin_mix_is_laid_to_the_mix() {
    // 4 : 1 : 1 wanted; poured with so much reducer that 62 % of the solids are left
    Finding f =
        SprayFit.explain(TASK, Panels.entry(everywhere(36e-6), mix(400, 100, 468)))
            .findings()
            .get(0);
    assertThat(f.id()).isEqualTo("wrong-mix");
  }

  @Test
  void thin_film_from_a_right_mix_is_laid_to_the_hand() {
    Finding f =
        SprayFit.explain(TASK, Panels.entry(everywhere(36e-6), mix(400, 100, 100)))
            .findings()
            .get(0);
    assertThat(f.id()).isEqualTo("too-little");
    assertThat(f.rivals()).isEmpty();
    // film goes with one over the speed: 36 of 57.5 µm wants 0.63 of it
    assertThat(f.change().key()).isEqualTo("cause.too-little.change.by");
    assertThat(f.change().args().get(0).value()).isCloseTo(1 - 36 / 57.5, within(0.01));
  }

  @Test
  void thin_film_from_a_rich_mix_is_laid_to_the_hand() {
    Finding f =
        SprayFit.explain(TASK, Panels.entry(everywhere(36e-6), mix(400, 100, 20)))
            .findings()
            .get(0);
    assertThat(f.id()).isEqualTo("too-little");
  }

  @Test
  void the_same_readings_give_the_same_findings() {
    PanelEntry entry = Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.4).arcing(0.5)), PANEL, 3);
    assertThat(SprayFit.explain(TASK, entry).findings())
        .isEqualTo(SprayFit.explain(TASK, entry).findings());
  }

  @Test
  void impossible_uncertainties_and_bare_places_do_no_harm() {
    Map<Integer, Double> film = everywhere(57e-6);
    List<Reading> readings = new ArrayList<>();
    film.forEach((p, f) -> readings.add(Panels.reading(Cell.place("film-after", p), f, 0)));
    readings.add(Panels.reading(Cell.place("film-after", 99), 57e-6, 1e-6));
    assertThat(SprayFit.explain(TASK, PanelEntry.of(readings)).findings()).isEmpty();
    assertThat(SprayFit.explain(TASK, Panels.entry(everywhere(0))).findings()).isEmpty();
  }

  /** A reading that fits nothing around it makes no cause; it is to be read again at its place. */
  @Test
  void a_stray_reading_is_a_doubt_about_its_own_place() {
    Map<Integer, Double> film = everywhere(57e-6);
    film.put(7, 25e-6);
    List<Finding> findings = SprayFit.explain(TASK, Panels.entry(film)).findings();
    assertThat(findings).extracting(Finding::id).containsExactly("stray.doubt");
    PanelOutline.Place seven = PANEL.place(7).orElseThrow();
    assertThat(findings.get(0).nextPlaces()).containsExactly(NextPlace.of(seven.x(), seven.y()));
    assertThat(findings.get(0).evidence().get(0).args().get(0).word()).isEqualTo("7");
    assertThat(findings.get(0).doubtful()).isTrue();
  }

  /** Every second place thick, in no order that a hand could make. */
  @Test
  void film_that_no_hand_makes_is_called_so() {
    Map<Integer, Double> film = new TreeMap<>();
    PANEL.places().forEach(p -> film.put(p.number(), 57e-6 + (p.number() % 2 == 0 ? 9e-6 : -9e-6)));
    List<Finding> findings = SprayFit.explain(TASK, Panels.entry(film)).findings();
    assertThat(findings).extracting(Finding::id).contains("no-pattern.doubt");
  }

  @Test
  void a_cause_says_its_size_its_number_to_change_and_what_it_would_gain() {
    PanelEntry entry = Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.4).arcing(0.5)), PANEL, 3);
    Finding arc = SprayFit.explain(TASK, entry).findings().get(0);
    assertThat(arc.id()).isEqualTo("arcing");
    // 1 - cos^2.5 of the angle from the wrist at the panel's end, by hand
    assertThat(arc.estimate().value()).isBetween(0.25, 0.42);
    assertThat(arc.estimate().standardUncertainty()).isBetween(0.005, 0.06);
    assertThat(arc.change().args()).hasSize(1);
    // the same as a distance: by 17 % further away
    assertThat(arc.change().args().get(0).value()).isBetween(0.12, 0.24);
    assertThat(arc.change().args().get(0).standardUncertainty()).isBetween(0.005, 0.06);
    assertThat(arc.evidence()).extracting("key").contains("cause.preview", "cause.fit");
  }

  /** An arc of 17 % in distance by the film, and what was written down beside it. */
  @Test
  void distances_that_tell_of_another_arc_are_not_said_to_agree() {
    assertThat(saidOfDistances(0.17)).isEqualTo("cause.arcing.distance");
    assertThat(saidOfDistances(0.5)).isEqualTo("cause.arcing.distance.other");
    assertThat(saidOfDistances(0)).isEqualTo("cause.arcing.distance.other");
  }

  private static String saidOfDistances(double farther) {
    double ends = 0.15 * (1 + farther);
    Reading[] distances = {
      Panels.reading(Cell.pass("distance-start", 1, 1), ends, 0.003),
      Panels.reading(Cell.pass("distance-middle", 1, 1), 0.15, 0.003),
      Panels.reading(Cell.pass("distance-end", 1, 1), ends, 0.003)
    };
    var film = Panels.sprayed(Hand.steady(0.07, 0.4).arcing(0.5));
    return SprayFit.explain(TASK, Panels.entry(film, PANEL, 3, distances))
        .findings()
        .get(0)
        .evidence()
        .get(1)
        .key();
  }

  /**
   * What the panel's what-if page draws is the share of the film in the middle, not of the mean.
   */
  @Test
  void an_arc_takes_the_same_share_on_the_result_page_as_on_the_what_if_page() {
    PanelEntry entry = Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.4).arcing(0.5)), PANEL, 3);
    Explanation read = SprayFit.explain(TASK, entry);
    Phrase said = read.findings().get(0).evidence().get(0);
    assertThat(said.key()).isEqualTo("cause.arcing.evidence.ends");
    assertThat(said.args().get(1).value()).isCloseTo(read.stroke().missingAtEnds(), within(0.01));
    assertThat(said.args().get(1).standardUncertainty()).isBetween(0.005, 0.06);
  }

  @Test
  void every_size_that_speaks_for_a_cause_has_its_uncertainty() {
    for (Hand hand :
        List.of(
            Hand.steady(0.07, 0.4).arcing(0.5),
            Hand.steady(0.18, 0.4),
            Hand.steady(0.07, 0.4).lingering(0.9, 0.1))) {
      Finding f =
          SprayFit.explain(TASK, Panels.entry(Panels.sprayed(hand), PANEL, 3)).findings().get(0);
      assertThat(f.evidence().get(0).args().subList(0, 2))
          .as(f.id())
          .allMatch(a -> a.standardUncertainty() != null && a.standardUncertainty() > 0);
    }
  }

  @Test
  void thin_film_from_a_mix_that_may_explain_it_is_not_decided() {
    Finding f =
        SprayFit.explain(TASK, Panels.entry(everywhere(44e-6), mix(400, 100, 200)))
            .findings()
            .get(0);
    assertThat(f.rivals()).hasSize(1);
    assertThat(f.undecided()).isTrue();
    assertThat(f.decided()).isFalse();
    assertThat(f.evidence()).extracting("key").endsWith("cause.undecided.mix");
  }

  /** Two coats at half a fan leave what one coat at a quarter leaves. */
  @Test
  void steps_written_down_as_too_wide_are_told_first_where_the_film_hides_them() {
    List<Reading> steps = new ArrayList<>();
    for (int pass = 2; pass <= 5; pass++) {
      for (int coat = 1; coat <= 2; coat++) {
        steps.add(Panels.reading(Cell.pass("pass-spacing", coat, pass), 0.115, 0.003));
      }
    }
    PanelEntry entry =
        Panels.entry(
            Panels.sprayed(Hand.steady(0.0575, 0.4)), PANEL, 3, steps.toArray(Reading[]::new));
    Finding wide = SprayFit.explain(TASK, entry).findings().get(0);
    assertThat(wide.id()).isEqualTo("spacing-wide");
    assertThat(wide.evidence())
        .extracting("key")
        .startsWith("cause.spacing-wide.written.hidden", "cause.spacing-wide.evidence.hidden");
    assertThat(wide.evidence().get(0).args().get(0).value()).isCloseTo(0.115, within(1e-9));
    for (Phrase.Arg said :
        List.of(wide.evidence().get(0).args().get(0), wide.change().args().get(0))) {
      assertThat(said.value() * 1000)
          .as("whole millimetres")
          .isCloseTo(Math.rint(said.value() * 1000), within(1e-9));
    }
  }

  @Test
  void the_film_is_kept_to_be_sprayed_again() {
    PanelEntry entry = Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.4)), PANEL, 3);
    var kept = SprayFit.explain(TASK, entry).stroke();
    double mean =
        PANEL.places().stream().mapToDouble(p -> kept.at(p.x(), p.y())).average().orElseThrow();
    assertThat(mean).isBetween(54e-6, 61e-6);
    assertThat(SprayFit.explain(TASK, Panels.entry(Map.of(1, 57e-6))).stroke()).isNull();
  }

  @Test
  void every_sentence_of_every_cause_is_written() {
    ResourceBundle words = ResourceBundle.getBundle("lapline.messages.cause", Locale.ENGLISH);
    for (Cause cause : Cause.values()) {
      assertThat(words.containsKey(cause.key())).as(cause.key()).isTrue();
      assertThat(words.containsKey(cause.key() + ".change")).as(cause.key()).isTrue();
    }
    for (Found found : Founds.all()) {
      String key =
          Cause.of(found.fault()).key() + ".evidence" + StrokeForm.of(found, Panels.HEIGHT, 57e-6);
      assertThat(words.containsKey(key)).as(key).isTrue();
    }
    for (Fault fault : EnumSet.range(Fault.ARCING, Fault.STEPS_WIDE)) {
      String key = Cause.of(fault).key() + ".suspected";
      assertThat(words.containsKey(key)).as(key).isTrue();
    }
    for (String doubt :
        List.of("cause.stray", "cause.stray.place", "cause.stray.places", "cause.no-pattern")) {
      assertThat(words.containsKey(doubt)).as(doubt).isTrue();
      assertThat(words.containsKey(doubt + ".change")).as(doubt).isTrue();
    }
  }

  @Test
  void all_that_a_finding_says_has_its_sentence() {
    ResourceBundle words = ResourceBundle.getBundle("lapline.messages.cause", Locale.ENGLISH);
    PanelOutline rows = Panels.outline(4, 4);
    PanelEntry entry = Panels.entry(Panels.sprayed(Hand.steady(0.07, 0.5).arcing(0.5)), rows, 3);
    for (Finding f : SprayFit.explain(Panels.task(rows), entry).findings()) {
      for (Phrase said : f.evidence()) {
        assertThat(words.containsKey(said.key())).as(said.key()).isTrue();
      }
    }
  }

  private static Map<Integer, Double> everywhere(double film) {
    Map<Integer, Double> all = new TreeMap<>();
    PANEL.places().forEach(p -> all.put(p.number(), film));
    return all;
  }

  private static Reading[] mix(double... millilitres) {
    Reading[] poured = new Reading[millilitres.length];
    for (int i = 0; i < poured.length; i++) {
      poured[i] = Panels.reading(Cell.step("mix-amount", i + 1), millilitres[i] * 1e-6, 4e-6);
    }
    return poured;
  }
}
