package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lapline.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What papers and pencil say of even passes, each named beside its check. */
class ClosedFormsReferenceTest {
  private static final FanProfile PARABOLA = FanProfile.parabola();

  static Stream<FanProfile> profiles() {
    return Stream.of(
        FanProfile.uniform(),
        FanProfile.beta(1.5),
        PARABOLA,
        FanProfile.beta(2.5),
        FanProfile.beta(7.3),
        FanProfile.measured(List.of(0.2, 3.0, 4.5, 5.0, 3.5, 1.0)),
        new HeeledProfile(PARABOLA, new Heel(0.2, 0.5)));
  }

  /** Derived by hand from the piecewise parabola. */
  @Test
  void a_parabola_at_half_overlap_has_valleys_of_two_thirds_and_a_variation_of_root_5_over_20() {
    Ripple ripple = Ripple.ofEvenPasses(PARABOLA, 0.5);

    assertThat(ripple.evenness()).isCloseTo(2 / 3.0, within(1e-9));
    assertThat(ripple.variation()).isCloseTo(Math.sqrt(5) / 20, within(1e-9));
  }

  /**
   * Published: least variance 'about 0.0025 when the overlap was between 0.29 and 0.31' ('Coating
   * uniformity with a uniform robotic spray gun velocity', a university journal). Derived by hand,
   * in squares of the peak, with step s = 2(1 − overlap): (16/15 + (2 − s)³(s² + 6s + 4)/15) / s −
   * (4/3s)²; least, found by trying a million overlaps, at 0.29850 with 0.0025752.
   */
  @Test
  void the_evenest_single_neighbour_overlap_of_a_parabola_is_the_published_one() {
    double overlap = EvenestOverlap.byVariance(PARABOLA);
    double inPeaks = Ripple.ofEvenPasses(PARABOLA, overlap).spread() / PARABOLA.peak();

    double s = 2 * (1 - overlap);
    double shared = Math.pow(2 - s, 3) * (s * s + 6 * s + 4) / 15;

    assertThat(overlap).isBetween(0.29, 0.31).isCloseTo(0.29850, within(2e-5));
    assertThat(inPeaks * inPeaks)
        .isCloseTo(0.0026, within(5e-5))
        .isCloseTo((16 / 15.0 + shared) / s - 16 / (9 * s * s), within(1e-9));
    assertThat(EvenestOverlap.byVariation(PARABOLA)).isCloseTo(0.301, within(5.1e-4));
  }

  /** Computed by an independent program, T(x) summed over 200,000 places of a period. */
  @ParameterizedTest
  @CsvSource({"1.5, 0.1595, 0.09219", "2.5, 0.392, 0.02668", "3.0, 0.457, 0.01051"})
  void other_shapes_want_other_overlaps(double beta, double overlap, double variation) {
    double found = EvenestOverlap.byVariation(FanProfile.beta(beta));

    assertThat(found).isCloseTo(overlap, within(5.1e-4));
    assertThat(Ripple.ofEvenPasses(FanProfile.beta(beta), found).variation())
        .isCloseTo(variation, within(5.1e-6));
  }

  /** Published for an ellipse: 16 to 18 per cent by measures that the thesis does not print. */
  @Test
  void the_evenest_overlap_of_an_ellipse_lies_by_the_published_one() {
    assertThat(EvenestOverlap.byVariation(FanProfile.beta(1.5))).isCloseTo(0.17, within(0.03));
  }

  /**
   * Published: a parabolic spot of radius 50 mm that gives 0.1 (R² − r²) µm/s, r in mm, 50 µm
   * wanted: 39.2 mm overlap at 323.3 mm/s (Chen, Sheng, Xi, Song, Chen, ICRA 2002; from memory).
   * Extremes 47.74 and 51.66 µm computed from the formula.
   */
  @Test
  void a_parabolic_spot_of_50_mm_wants_39_millimetres_overlap_and_323_millimetres_a_second() {
    FanProfile stroke = FanProfile.beta(2.5);
    double overlap = EvenestOverlap.byVariation(stroke);
    // all that the spot gives in a second: πkR⁴/2, in m³
    double flow = Math.PI * 0.1 * Math.pow(50, 4) / 2 * 1e-12;
    MassBalance paint = new MassBalance(flow, 1, 1);
    double spacing = Overlap.spacing(overlap, 0.1);
    double speed = paint.speedFor(50e-6, spacing);
    StrokePlan plan = new StrokePlan(paint, new Fan(0.1, 0.2), stroke, 0.2, speed, spacing);

    assertThat(overlap * 100).isCloseTo(39.2, within(0.051));
    assertThat(speed * 1000).isCloseTo(323.3, within(0.6));
    assertThat(plan.dryFilm().mean() * 1e6).isCloseTo(50, within(1e-6));
    assertThat(plan.dryFilm().least() * 1e6).isCloseTo(47.74, within(0.05));
    assertThat(plan.dryFilm().most() * 1e6).isCloseTo(51.66, within(0.05));
  }

  /** Conservation of volume, whatever the shape. */
  @ParameterizedTest
  @MethodSource("profiles")
  void mean_film_times_speed_times_step_is_the_solids_that_arrive(FanProfile profile) {
    Samples.each(
        20,
        chance -> {
          double arriving = 3e-6 * (0.1 + chance.nextDouble());
          MassBalance paint = new MassBalance(arriving, 0.3 + 0.7 * chance.nextDouble(), 0.4);
          double speed = 0.2 + chance.nextDouble();
          double spacing = 0.25 * (0.06 + 1.5 * chance.nextDouble());
          StrokePlan plan = new StrokePlan(paint, new Fan(0.2, 0.2), profile, 0.25, speed, spacing);
          double solids = paint.flow() * paint.transferEfficiency() * paint.volumeSolids();
          double mean = plan.dryFilm().mean();
          assertThat(mean * speed * spacing / solids).isCloseTo(1, within(2e-6));
          assertThat(paint.speedFor(mean, spacing) / speed).isCloseTo(1, within(2e-6));
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 7, 10, 20})
  void even_bands_that_overlap_by_one_less_one_nth_are_flat(int n) {
    Ripple ripple = Ripple.ofEvenPasses(FanProfile.uniform(), 1 - 1.0 / n);

    assertThat(ripple.variation()).isCloseTo(0, within(1e-7));
    assertThat(ripple.mean()).isCloseTo(n, within(1e-9));
    assertThat(ripple.least()).isCloseTo(n, within(1e-9));
    assertThat(ripple.most()).isCloseTo(n, within(1e-9));
  }

  /** Point source, W = 2 h tan φ; computed from the formula. */
  @ParameterizedTest
  @CsvSource({"0.150, 79.611", "0.200, 64.011"})
  void a_fan_known_by_its_angle_is_as_wide_as_its_test_pattern(double distance, double degrees) {
    Fan fan = Fan.ofAngle(Math.toRadians(degrees), distance);

    assertThat(fan.width()).isCloseTo(0.25, within(1e-5));
    assertThat(fan.widthAt(2 * distance)).isCloseTo(0.5, within(2e-5));
  }

  /**
   * By hand: at 45° full angle tilted by 22.5° one end meets the panel square, the other at 45°.
   */
  @Test
  void a_tilted_fan_widens() {
    Fan fan = Fan.ofAngle(Math.PI / 4, 0.2);

    assertThat(fan.widthAt(0.3, Math.PI / 8)).isCloseTo(0.3, within(1e-12));
    assertThat(fan.widthAt(0.3, 0)).isCloseTo(0.3 * 2 * Math.tan(Math.PI / 8), within(1e-12));
  }
}
