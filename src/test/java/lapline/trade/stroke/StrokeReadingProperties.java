package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.StrokeReading.Found;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sprays panels with one known fault and equations of their own and asks what is read from them.
 * Gauge 1.5 µm, texture 1 µm, steps of a hand that stray by 6 mm, passes uneven by 3 %; seeds 0 to
 * 79.
 */
class StrokeReadingProperties {
  private static final int SEEDS = 80;

  private record Told(SprayedPanel panel, StrokeReading reading) {
    String first() {
      return reading.faults().isEmpty() ? "none" : reading.faults().get(0).fault().name();
    }
  }

  private static List<Told> sprayed(int places, Consumer<SprayedPanel> hand) {
    return IntStream.range(0, SEEDS)
        .parallel()
        .mapToObj(
            seed -> {
              Random chance = new Random(seed);
              SprayedPanel panel = new SprayedPanel();
              hand.accept(panel);
              PassPlan plan = panel.spray(chance);
              return new Told(panel, StrokeReading.of(plan, panel.read(places, chance)));
            })
        .toList();
  }

  private static Map<String, Integer> firsts(List<Told> told) {
    Map<String, Integer> count = new TreeMap<>();
    told.forEach(t -> count.merge(t.first(), 1, Integer::sum));
    return count;
  }

  private static long count(List<Told> told, Predicate<Told> which) {
    return told.stream().filter(which).count();
  }

  private static int share(double of) {
    return (int) Math.ceil(of * SEEDS);
  }

  private static Arguments fault(Fault fault, int places, Consumer<SprayedPanel> hand) {
    return Arguments.of(fault, places, hand);
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        fault(Fault.ARCING, 24, p -> p.wrist = 0.5),
        fault(Fault.LINGERING, 24, p -> p.linger = 0.5),
        fault(Fault.TRIGGER_EARLY, 24, p -> p.linger = -0.4),
        fault(Fault.DRIFT_ALONG, 24, p -> p.along = 0.25),
        fault(Fault.DRIFT_ACROSS, 36, p -> p.across = 0.3),
        fault(Fault.EDGES_THIN, 60, p -> p.lowest = 0.02),
        fault(
            Fault.TILT,
            24,
            p -> {
              p.coats = 1;
              p.overlap = 0.33;
              p.lean = 0.5;
            }));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  void the_fault_that_was_made_is_named_first(
      Fault fault, int places, Consumer<SprayedPanel> hand) {
    List<Told> told = sprayed(places, hand);
    assertThat(count(told, t -> t.first().equals(fault.name())))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.9));
  }

  static Stream<Arguments> evenHands() {
    return Stream.of(0.7, 0.6, 0.5).flatMap(o -> Stream.of(true, false).flatMap(w -> places(o, w)));
  }

  private static Stream<Arguments> places(double overlap, boolean written) {
    return Stream.of(12, 24).map(n -> Arguments.of(overlap, written, n));
  }

  @ParameterizedTest(name = "overlap {0}, steps written {1}, {2} places")
  @MethodSource("evenHands")
  void a_steady_hand_has_no_fault(double overlap, boolean written, int places) {
    List<Told> told =
        sprayed(
            places,
            p -> {
              p.overlap = overlap;
              p.written = written;
            });
    assertThat(count(told, t -> t.first().equals("none")))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.95));
  }

  @Test
  void one_pass_too_far_on_is_found_where_the_steps_were_not_written_down() {
    List<Told> told =
        sprayed(
            24,
            p -> {
              p.written = false;
              p.gapAt = 0.2;
              p.gapBy = 0.06;
            });
    assertThat(count(told, t -> t.first().equals("ONE_STEP"))).isGreaterThanOrEqualTo(share(0.9));
  }

  /**
   * As a learner writes it down: steps of the passes over the panel or none at all, and never where
   * the first one lay.
   */
  private static List<Told> written(int places, Consumer<SprayedPanel> hand, boolean steps) {
    return written((panel, chance) -> panel.read(places, chance), hand, steps);
  }

  private static List<Told> written(
      BiFunction<SprayedPanel, Random, List<FilmAt>> reader,
      Consumer<SprayedPanel> hand,
      boolean steps) {
    return IntStream.range(0, SEEDS)
        .parallel()
        .mapToObj(
            seed -> {
              Random chance = new Random(seed);
              SprayedPanel panel = new SprayedPanel();
              hand.accept(panel);
              PassPlan plan = panel.spray(chance);
              List<FilmAt> readings = reader.apply(panel, chance);
              return new Told(panel, StrokeReading.of(panel.writtenDown(plan, steps), readings));
            })
        .toList();
  }

  static Stream<Arguments> writtenFaults() {
    return Stream.of(
        Arguments.of(Fault.STEPS_WIDE, hand(p -> p.overlap = 0.4).andThen(p -> p.coats = 1)),
        Arguments.of(Fault.ARCING, hand(p -> p.wrist = 0.5)),
        Arguments.of(Fault.ARCING, hand(p -> p.wrist = 0.8)),
        Arguments.of(Fault.LINGERING, hand(p -> p.linger = 0.5)),
        Arguments.of(Fault.TRIGGER_EARLY, hand(p -> p.linger = -0.4)),
        Arguments.of(Fault.DRIFT_ALONG, hand(p -> p.along = 0.25)),
        Arguments.of(Fault.DRIFT_ACROSS, hand(p -> p.across = 0.45)),
        Arguments.of(Fault.EDGES_THIN, hand(p -> p.lowest = 0.02)),
        Arguments.of(Fault.EDGES_HEAVY, hand(p -> p.twiceBelow = 0.02)));
  }

  private static Consumer<SprayedPanel> hand(Consumer<SprayedPanel> hand) {
    return hand;
  }

  /** At the 15 places of a task's sheet. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("writtenFaults")
  void it_is_named_first_from_what_a_learner_writes_down(Fault fault, Consumer<SprayedPanel> hand) {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    for (boolean steps : new boolean[] {true, false}) {
      List<Told> told = written((p, chance) -> p.read(sheet, chance), hand, steps);
      assertThat(count(told, t -> t.first().equals(fault.name())))
          .as("steps written: %s, %s", steps, firsts(told))
          .isGreaterThanOrEqualTo(share(0.9));
    }
  }

  /** With the steps a heeled gun is 199 of 200 then, and 94 of 100 without the first pass. */
  @ParameterizedTest(name = "steps written {0}")
  @ValueSource(booleans = {true, false})
  void a_first_pass_that_was_written_down_shows_a_heeled_gun_and_no_other_fault(boolean steps) {
    for (double lean : new double[] {0, 0.5}) {
      Consumer<SprayedPanel> hand =
          p -> {
            p.coats = 1;
            p.overlap = 0.33;
            p.meantOverlap = 0.33;
            p.lean = lean;
            p.firstWritten = true;
          };
      SprayedPanel meant = new SprayedPanel();
      hand.accept(meant);
      List<Spot> sheet = ReadingPlan.of(meant.asMeant(), 15, 0.03);
      List<Told> told = written((p, chance) -> p.read(sheet, chance), hand, steps);
      assertThat(count(told, t -> t.first().equals(lean == 0 ? "none" : "TILT")))
          .as("%s", firsts(told))
          .isGreaterThanOrEqualTo(share(lean == 0 ? 0.98 : 0.95));
    }
  }

  /**
   * By places chosen for one way in which the passes may lie it was 21 of 100; by a fan with a
   * blurred rim 91, and 87 where no steps were written down.
   */
  @ParameterizedTest(name = "steps written {0}")
  @ValueSource(booleans = {true, false})
  void a_sheet_for_one_coat_tells_a_heeled_gun_wherever_the_first_pass_lay(boolean steps) {
    Consumer<SprayedPanel> heeled =
        p -> {
          p.coats = 1;
          p.overlap = 0.33;
          p.meantOverlap = 0.33;
          p.lean = 0.5;
        };
    SprayedPanel meant = new SprayedPanel();
    heeled.accept(meant);
    List<Spot> sheet = ReadingPlan.of(meant.asMeant(), 15, 0.03);
    List<Told> told = written((p, chance) -> p.read(sheet, chance), heeled, steps);
    assertThat(count(told, t -> t.first().equals("TILT")))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.9));
  }

  /** Where the second coat's passes lie between the first's, the film is even. */
  @ParameterizedTest
  @CsvSource({"0.4, 24", "0.5, 15"})
  void steps_that_were_written_down_as_too_wide_are_named_even_where_luck_hid_it(
      double overlap, int places) {
    List<Told> told = written(places, p -> p.overlap = overlap, true);
    assertThat(count(told, t -> t.first().equals("STEPS_WIDE")))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.9));
  }

  @Test
  void steps_too_wide_in_two_coats_that_nobody_wrote_down_are_named_where_the_film_shows_them() {
    List<Told> told = written(24, p -> p.overlap = 0.4, false);
    assertThat(count(told, t -> t.first().equals("STEPS_WIDE")))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.8));
  }

  /**
   * By the 15 places of a sheet, where the film along the middle differs by more than it does on
   * any of 400 panels of a steady hand at the meant overlap: by 0.27 of its mean.
   */
  @Test
  void and_by_a_sheet_where_the_film_is_more_uneven_than_any_steady_hand_leaves_it() {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    List<Told> shown =
        written((p, chance) -> p.read(sheet, chance), p -> p.overlap = 0.4, false).stream()
            .filter(t -> spread(t.panel) > 0.3)
            .toList();
    assertThat(shown.size()).isGreaterThan(SEEDS / 4);
    assertThat(count(shown, t -> t.first().equals("STEPS_WIDE")))
        .as("%s", firsts(shown))
        .isGreaterThanOrEqualTo((long) Math.ceil(0.9 * shown.size()));
  }

  private static double spread(SprayedPanel panel) {
    double[] film =
        IntStream.range(0, 81)
            .mapToDouble(i -> panel.truth(SprayedPanel.WIDTH / 2, SprayedPanel.HEIGHT * i / 80))
            .toArray();
    return PanelFits.spread(film) / panel.mean();
  }

  /** The film of one coat cannot hide them: then it was the writing down that went wrong. */
  @Test
  void steps_written_down_as_too_wide_are_not_believed_against_the_film_of_one_coat() {
    int named = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random chance = new Random(seed);
      SprayedPanel panel = new SprayedPanel();
      panel.coats = 1;
      panel.spray(chance);
      Estimate fan = Estimate.of(SprayedPanel.FAN, 0.04 * SprayedPanel.FAN);
      Map<Integer, Estimate> twice = new TreeMap<>();
      for (int pass = 2; pass < 4; pass++) {
        twice.put(pass, Estimate.of(0.85 * SprayedPanel.FAN, 0.003));
      }
      StrokeRecord record =
          new WrittenPasses(
                  SprayedPanel.WIDTH, SprayedPanel.HEIGHT, fan, 0.069, List.of(Map.copyOf(twice)))
              .record(0.65, Optional.empty());
      List<Found> faults = StrokeReading.of(record, panel.read(24, chance)).faults();
      named += faults.stream().anyMatch(f -> f.fault() == Fault.STEPS_WIDE) ? 1 : 0;
    }
    assertThat(named).isLessThanOrEqualTo(SEEDS / 20);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void and_a_steady_hand_has_none(boolean steps) {
    for (double jitter : new double[] {0.004, 0.006, 0.008}) {
      List<Told> told = written(24, p -> p.jitter = jitter, steps);
      assertThat(count(told, t -> t.first().equals("none")))
          .as("%s", firsts(told))
          .isGreaterThanOrEqualTo(share(0.95));
    }
  }

  @Test
  void steps_that_were_as_uneven_as_written_are_named_where_the_film_shows_it() {
    Consumer<SprayedPanel> hand =
        p -> {
          p.gapAt = 0.2;
          p.gapBy = 0.06;
        };
    List<Told> told = written(24, hand, true);
    assertThat(count(told, t -> t.first().equals("STEPS_UNEVEN")))
        .as("%s", firsts(told))
        .isGreaterThanOrEqualTo(share(0.9));
  }

  /**
   * By places that suit it badly, with written steps; where the first pass lay nobody wrote. The
   * fault that leads is weighed over all ways in which the passes may lie: by the likeliest one
   * alone a weak arc was named or suspected on 32 of 80.
   */
  @Test
  void what_is_likely_and_not_sure_is_suspected_and_rightly() {
    List<Told> told = written(15, hand(p -> p.wrist = 0.8), true);
    long suspected = count(told, t -> t.reading.suspected().isPresent());
    long arcing =
        count(told, t -> t.reading.suspected().filter(s -> s.fault() == Fault.ARCING).isPresent());
    long named = count(told, t -> t.first().equals("ARCING"));
    assertThat(suspected).isGreaterThanOrEqualTo(share(0.18));
    assertThat(arcing).isGreaterThanOrEqualTo((long) Math.ceil(0.8 * suspected));
    assertThat(named + arcing).isGreaterThanOrEqualTo(share(0.45));
    assertThat(told)
        .allMatch(t -> t.reading.suspected().isEmpty() || t.reading.faults().isEmpty())
        .allMatch(t -> t.reading.suspected().map(s -> s.next().size() == 3).orElse(true));
  }

  @Test
  void of_a_steady_hand_hardly_anything_is_suspected() {
    List<Told> told = written(24, p -> {}, true);
    assertThat(count(told, t -> t.reading.suspected().isPresent()))
        .isLessThanOrEqualTo(SEEDS - share(0.95));
  }

  /** One panel in six has two strays or more, one of which may not be set aside. */
  @Test
  void strays_among_the_few_places_of_a_sheet_make_no_fault() {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    long faulty =
        IntStream.range(0, 2 * SEEDS)
            .parallel()
            .filter(
                seed -> {
                  Random chance = new Random(seed);
                  SprayedPanel panel = new SprayedPanel();
                  panel.grossStrays = 0.05;
                  StrokeRecord record = panel.writtenDown(panel.spray(chance), true);
                  return !StrokeReading.of(record, panel.read(sheet, chance)).faults().isEmpty();
                })
            .count();
    assertThat(faulty).isLessThanOrEqualTo(2 * SEEDS / 50);
  }

  /**
   * By the places of a sheet, of which one reading is off: by a fifth of the film, six of its
   * standard uncertainties, or three times what it should be. Of 1,200 panels of one and two coats
   * a fault is named on 9 by the readings as they are, and on 5 and 4 where one is a fifth too high
   * or too low; where one reading is no rival of a fault, on 17 of 900. Three times too high makes
   * 1 of 600, and 7 where it is not set aside before anything is fitted.
   */
  @ParameterizedTest(name = "by {0} or {1}")
  @CsvSource({"0.2, -0.2", "2, 2"})
  void one_reading_of_a_steady_hand_that_is_off_makes_no_fault(double by, double orBy) {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    int panels = 6 * SEEDS;
    List<String> named =
        IntStream.range(0, panels)
            .parallel()
            .mapToObj(seed -> withOneOff(sheet, seed, by, orBy))
            .flatMap(reading -> reading.faults().stream().limit(1))
            .map(found -> found.fault().name())
            .toList();
    assertThat(named.size()).as("%s", named).isLessThanOrEqualTo(panels / 100);
  }

  private static StrokeReading withOneOff(List<Spot> sheet, int seed, double by, double orBy) {
    Random chance = SprayedPanel.chance(seed);
    SprayedPanel panel = new SprayedPanel();
    StrokeRecord record = panel.writtenDown(panel.spray(chance), false);
    List<FilmAt> readings = new ArrayList<>(panel.read(sheet, chance));
    int place = seed % sheet.size();
    FilmAt one = readings.get(place);
    double off = (seed / sheet.size() % 2 == 0 ? by : orBy) * panel.film;
    readings.set(place, new FilmAt(one.x(), one.y(), one.film() + off, one.uncertainty()));
    return StrokeReading.of(record, readings);
  }

  static Stream<Arguments> troubles() {
    Consumer<SprayedPanel> strays = p -> p.grossStrays = 0.05;
    Consumer<SprayedPanel> misplaced = p -> p.misplaced = 0.01;
    Consumer<SprayedPanel> wrongFan = p -> p.fanWritten = 1.1 * SprayedPanel.FAN;
    return Stream.of(
        Arguments.of("strays", strays),
        Arguments.of("places off by 10 mm", misplaced),
        Arguments.of("fan written 10 % too wide", wrongFan));
  }

  /** The right one, or none; and not a wrong one in more than 2 of 100. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("troubles")
  void trouble_with_the_readings_makes_no_wrong_fault(String name, Consumer<SprayedPanel> trouble) {
    int wrong = 0;
    int all = 0;
    Map<Fault, Consumer<SprayedPanel>> made =
        Map.of(
            Fault.ARCING, p -> p.wrist = 0.5,
            Fault.LINGERING, p -> p.linger = 0.5,
            Fault.DRIFT_ALONG, p -> p.along = 0.25);
    for (Map.Entry<Fault, Consumer<SprayedPanel>> one : made.entrySet()) {
      List<Told> told = sprayed(24, trouble.andThen(one.getValue()));
      String right = one.getKey().name();
      wrong += (int) count(told, t -> !t.first().equals(right) && !t.first().equals("none"));
      all += told.size();
    }
    assertThat(wrong).isLessThanOrEqualTo(all / 50);
    List<Told> even = sprayed(24, trouble);
    assertThat(count(even, t -> t.first().equals("none"))).isGreaterThanOrEqualTo(share(0.95));
  }

  static Stream<Arguments> recorded() {
    Map<String, Consumer<SprayedPanel>> hands = new TreeMap<>();
    hands.put("even", p -> {});
    hands.put("arcing", p -> p.wrist = 0.5);
    hands.put("drift across", p -> p.across = 0.3);
    hands.put("lingering", p -> p.linger = 0.5);
    hands.put(
        "one step wider",
        p -> {
          p.gapAt = 0.2;
          p.gapBy = 0.06;
        });
    return hands.entrySet().stream()
        .flatMap(h -> Stream.of(true, false).map(w -> Arguments.of(h.getKey(), w, h.getValue())));
  }

  /**
   * 80 panels at the 15 places of a sheet, as a learner writes it down: 88 to 100 of 100 is what
   * chance leaves of 95 (three standard deviations).
   */
  @ParameterizedTest(name = "{0}, steps written {1}")
  @MethodSource("recorded")
  void film_and_overlap_lie_in_their_intervals_whatever_the_hand_did(
      String name, boolean steps, Consumer<SprayedPanel> hand) {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    List<Told> told = written((p, chance) -> p.read(sheet, chance), hand, steps);
    assertThat(count(told, t -> holds(t.reading.meanFilm(), t.panel.mean())))
        .isGreaterThanOrEqualTo(share(0.88));
    assertThat(
            count(
                told,
                t ->
                    holds(
                        t.reading.overlap(),
                        steps ? t.panel.realOverlap() : t.panel.usualOverlap())))
        .isGreaterThanOrEqualTo(share(0.88));
  }

  private static boolean holds(Estimate interval, double real) {
    return Math.abs(interval.value() - real) < 1.96 * interval.standardUncertainty();
  }

  /** 80 panels in each of 4 cases: 93 to 100 of 100 is what chance leaves of 95. */
  @Test
  void film_and_overlap_lie_in_their_intervals() {
    List<Consumer<SprayedPanel>> hands =
        List.of(p -> {}, p -> p.overlap = 0.5, p -> p.along = 0.25, p -> p.across = 0.2);
    int film = 0;
    int overlap = 0;
    for (Consumer<SprayedPanel> hand : hands) {
      List<Told> told = sprayed(36, hand);
      film += (int) count(told, t -> holds(t.reading.meanFilm(), t.panel.mean()));
      overlap += (int) count(told, t -> holds(t.reading.overlap(), t.panel.realOverlap()));
    }
    assertThat(film).isGreaterThanOrEqualTo(share(4 * 0.93));
    assertThat(overlap).isGreaterThanOrEqualTo(share(4 * 0.93));
  }

  @Test
  void the_size_of_an_arc_lies_in_its_interval() {
    List<Told> told = sprayed(36, p -> p.wrist = 0.5);
    double ends = 1 - Math.pow(Math.cos(Math.atan(SprayedPanel.WIDTH / 2 / 0.5)), 2.5);
    long inside =
        count(
            told,
            t ->
                t.reading.faults().stream()
                    .filter(f -> f.fault() == Fault.ARCING)
                    .anyMatch(f -> holds(f.value(), ends)));
    assertThat(inside).isGreaterThanOrEqualTo(share(0.92));
  }
}
