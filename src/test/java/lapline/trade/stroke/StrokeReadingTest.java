package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read from single panels, and what is refused. */
class StrokeReadingTest {
  private final Random chance = new Random(7);
  private final SprayedPanel panel = new SprayedPanel();

  @Test
  void an_arc_is_named_with_its_size_its_probability_and_its_rivals() {
    panel.wrist = 0.5;
    PassPlan plan = panel.spray(chance);
    StrokeReading reading = StrokeReading.of(plan, panel.read(36, chance));
    StrokeReading.Found found = reading.faults().get(0);
    assertThat(found.fault()).isEqualTo(Fault.ARCING);
    // 1 − cos^2.5 of the angle from the wrist at the panel's end
    assertThat(found.value().value())
        .isCloseTo(0.328, within(3 * found.value().standardUncertainty()));
    assertThat(found.probability()).isBetween(0.8, 1.0);
    double others = found.rivals().stream().mapToDouble(StrokeReading.Rival::probability).sum();
    assertThat(found.probability() + others).isLessThanOrEqualTo(1);
    assertThat(reading.fits()).isGreaterThan(0.01);
  }

  /** Four columns have but an inner and an outer film. */
  @Test
  void on_four_columns_an_arc_and_an_early_trigger_look_alike_and_three_readings_settle_it() {
    panel.wrist = 0.5;
    PassPlan plan = panel.spray(chance);
    List<FilmAt> readings = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      readings.add(panel.readAt(0.03 + 0.55 * (i % 4) / 3, 0.03 + 0.4 * (i / 4) / 5, chance));
    }
    StrokeReading.Found before = StrokeReading.of(plan, readings).faults().get(0);
    assertThat(before.rivals()).isNotEmpty();
    assertThat(List.of(before.fault(), before.rivals().get(0).fault()))
        .containsExactlyInAnyOrder(Fault.ARCING, Fault.TRIGGER_EARLY);
    assertThat(before.next()).hasSize(3);
    assertThat(before.next()).allMatch(n -> Math.abs(n.ifSo() - n.ifNot()) > 3e-6);
    before.next().stream()
        .map(NextSpot::spot)
        .forEach(s -> readings.add(panel.readAt(s.x(), s.y(), chance)));
    StrokeReading.Found after = StrokeReading.of(plan, readings).faults().get(0);
    assertThat(after.fault()).isEqualTo(Fault.ARCING);
    assertThat(after.rivals()).isEmpty();
    assertThat(after.next()).isEmpty();
  }

  @Test
  void one_reading_that_is_far_off_is_a_stray_and_no_fault() {
    PassPlan plan = panel.spray(chance);
    for (int at : new int[] {0, 5, 11, 17}) {
      List<FilmAt> readings = new ArrayList<>(panel.read(18, new Random(at)));
      FilmAt one = readings.get(at);
      readings.set(at, new FilmAt(one.x(), one.y(), 0.4 * one.film(), one.uncertainty()));
      StrokeReading reading = StrokeReading.of(plan, readings);
      assertThat(reading.faults()).isEmpty();
      assertThat(reading.strays()).containsExactly(at);
    }
  }

  /**
   * Of 300 even panels with one reading two or three times as high as it should be these are some
   * of which that one bent everything, so that steps too wide or a drift were made up for it.
   */
  @ParameterizedTest(name = "place {1} by {2}")
  @CsvSource({
    "700253, 11, 2, 1",
    "700253, 11, 25, 1",
    "700008, 6, 1, 1",
    "700068, 6, 2, 1",
    "700057, 4, 2, 2",
    "88, 7, 0.2, 2"
  })
  void a_reading_far_off_all_others_is_set_aside_before_anything_is_fitted(
      int seed, int place, double off, int coats) {
    Random hand = SprayedPanel.chance(seed);
    panel.coats = coats;
    StrokeRecord record = panel.writtenDown(panel.spray(hand), false);
    List<FilmAt> readings =
        new ArrayList<>(panel.read(ReadingPlan.of(panel.asMeant(), 15, 0.03), hand));
    putOff(readings, place, off);
    StrokeReading reading = StrokeReading.of(record, readings);
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.strays()).contains(place);
  }

  private void putOff(List<FilmAt> readings, int place, double off) {
    FilmAt one = readings.get(place);
    double film = one.film() + off * panel.film;
    readings.set(place, new FilmAt(one.x(), one.y(), film, one.uncertainty()));
  }

  /**
   * Of 900 even panels of which one reading was too low or too high these are two on which that one
   * alone makes a fault, as passes elsewhere than meant: one step, steps too wide. Without it there
   * is nothing.
   */
  @ParameterizedTest(name = "place {1}")
  @CsvSource({"10, 4, -0.2", "183, 3, 0.2"})
  void a_fault_that_rests_on_one_reading_is_suspected_and_never_named(
      int seed, int place, double off) {
    Random hand = SprayedPanel.chance(seed);
    StrokeRecord record = panel.writtenDown(panel.spray(hand), false);
    List<FilmAt> readings =
        new ArrayList<>(panel.read(ReadingPlan.of(SprayedPanel.meant(), 15, 0.03), hand));
    putOff(readings, place, off);
    StrokeReading reading = StrokeReading.of(record, readings);
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.suspected()).get().matches(StrokeReading.Suspected::oneReading);
    readings.remove(place);
    StrokeReading without = StrokeReading.of(record, readings);
    assertThat(without.faults()).isEmpty();
    assertThat(without.suspected()).isEmpty();
  }

  /** By a fan with a blurred rim nothing is named on these two panels. */
  @ParameterizedTest
  @ValueSource(ints = {89, 175})
  void a_heeled_gun_that_only_the_sharp_rim_of_the_fan_shows_is_named(int seed) {
    Random hand = new Random(seed);
    panel.coats = 1;
    panel.overlap = 0.33;
    panel.meantOverlap = 0.33;
    panel.lean = 0.5;
    StrokeRecord record = panel.writtenDown(panel.spray(hand), false);
    List<Spot> sheet = ReadingPlan.of(panel.asMeant(), 15, 0.03);
    List<StrokeReading.Found> faults = StrokeReading.of(record, panel.read(sheet, hand)).faults();
    assertThat(faults).extracting(StrokeReading.Found::fault).containsExactly(Fault.TILT);
    assertThat(faults.get(0).probability()).isGreaterThan(0.9);
  }

  @Test
  void strays_do_not_hide_behind_each_other() {
    PassPlan plan = panel.spray(chance);
    List<FilmAt> readings = new ArrayList<>(panel.read(24, chance));
    for (int at : new int[] {3, 12, 20}) {
      FilmAt one = readings.get(at);
      double film = (at == 12 ? 1.6 : 0.5) * one.film();
      readings.set(at, new FilmAt(one.x(), one.y(), film, one.uncertainty()));
    }
    StrokeReading reading = StrokeReading.of(plan, readings);
    assertThat(reading.strays()).containsExactlyInAnyOrder(3, 12, 20);
    assertThat(reading.faults()).isEmpty();
  }

  @Test
  void film_that_no_hand_leaves_fits_nothing() {
    PassPlan plan = panel.spray(chance);
    List<FilmAt> blotched =
        panel.read(40, chance).stream()
            .map(r -> new FilmAt(r.x(), r.y(), blot(r) * r.film(), r.uncertainty()))
            .toList();
    assertThat(StrokeReading.of(plan, blotched).fits()).isLessThan(0.01);
  }

  /** Of film 30 % up or down at every place one panel in three was said to have wide steps. */
  @Test
  void film_that_fits_nothing_blames_no_steps_that_nobody_wrote_down() {
    List<Spot> sheet = ReadingPlan.of(SprayedPanel.meant(), 15, 0.03);
    for (int seed = 0; seed < 12; seed++) {
      Random any = SprayedPanel.chance(seed);
      StrokeRecord record = panel.writtenDown(panel.spray(any), false);
      List<FilmAt> readings =
          panel.read(sheet, any).stream()
              .map(
                  r -> {
                    double film = Math.max(1e-6, r.film() * (1 + 0.3 * any.nextGaussian()));
                    return new FilmAt(r.x(), r.y(), film, r.uncertainty());
                  })
              .toList();
      StrokeReading reading = StrokeReading.of(record, readings);
      assertThat(reading.fits()).isLessThan(StrokeReading.FITS_NOTHING);
      assertThat(reading.faults()).noneMatch(f -> f.fault() == Fault.STEPS_WIDE);
    }
  }

  private static double blot(FilmAt r) {
    return Math.floor(r.x() / 0.05) % 2 == Math.floor(r.y() / 0.05) % 2 ? 0.8 : 1.2;
  }

  @Test
  void the_same_readings_say_the_same_again() {
    PassPlan plan = panel.spray(chance);
    List<FilmAt> readings = panel.read(24, chance);
    assertThat(StrokeReading.of(plan, readings))
        .usingRecursiveComparison()
        .isEqualTo(StrokeReading.of(plan, readings));
  }

  @Test
  void too_few_readings_and_film_of_nothing_are_refused() {
    PassPlan plan = panel.spray(chance);
    assertThatThrownBy(() -> StrokeReading.of(plan, panel.read(7, chance)))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("readings")
        .hasMessageContaining("8 or more");
    List<FilmAt> nothing =
        panel.read(12, chance).stream().map(r -> new FilmAt(r.x(), r.y(), 0, 1e-6)).toList();
    assertThatThrownBy(() -> StrokeReading.of(plan, nothing))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("mean film");
  }

  @Test
  void a_plan_that_is_none_is_refused_with_the_argument_named() {
    List<PassPlan.Coat> coats = panel.spray(chance).coats();
    Estimate fan = Estimate.of(0.23, 0.01);
    Estimate beta = Estimate.of(2, 0.1);
    assertThatThrownBy(() -> new PassPlan(0, 1, coats, fan, beta)).hasMessageContaining("width");
    assertThatThrownBy(() -> new PassPlan(1, Double.NaN, coats, fan, beta))
        .hasMessageContaining("height");
    assertThatThrownBy(() -> new PassPlan(1, 1, List.of(), fan, beta))
        .hasMessageContaining("coats");
    assertThatThrownBy(() -> new PassPlan(1, 1, coats, Estimate.of(0.2, 0), beta))
        .hasMessageContaining("fanWidth uncertainty");
    assertThatThrownBy(() -> new PassPlan(1, 1, coats, fan, Estimate.of(1, 0)))
        .hasMessageContaining("beta");
    assertThatThrownBy(() -> new PassPlan.Coat(List.of(0.1), 0.01, 0.1, 0.1))
        .hasMessageContaining("centrelines");
    assertThatThrownBy(() -> new PassPlan.Coat(List.of(0.2, 0.1), 0.01, 0.1, 0.1))
        .hasMessageContaining("step");
    assertThatThrownBy(() -> new PassPlan.Coat(List.of(0.1, 0.2), 0.01, 0.2, 0.1))
        .hasMessageContaining("all");
    assertThatThrownBy(() -> new FilmAt(0, 0, 1e-6, 0)).hasMessageContaining("uncertainty");
  }
}
