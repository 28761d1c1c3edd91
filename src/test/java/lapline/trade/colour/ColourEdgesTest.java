package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lapline.trade.colour.AspecularAngle.Side;
import lapline.trade.colour.CardJudgement.Match;
import lapline.trade.colour.ColourMove.Direction;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Where one formula hands over to another, and where a rule begins to hold. */
class ColourEdgesTest {
  private static final ReaderError EXACT = new ReaderError(0, 0);

  @Test
  void opposite_hues_turn_by_half_a_circle_the_way_they_are_taken() {
    Ciede2000.Steps there = Ciede2000.between(new Lab(50, 10, 0), new Lab(50, -10, 0));
    Ciede2000.Steps back = Ciede2000.between(new Lab(50, -10, 0), new Lab(50, 10, 0));

    assertThat(there.hue()).isPositive();
    assertThat(back.hue()).isEqualTo(-there.hue());
    // up to and with 180 degrees apart, the mean hue is the plain mean
    assertThat(there.hues().degrees()).isEqualTo(90);
    assertThat(back.hues().degrees()).isEqualTo(90);
  }

  /** So far from grey that a* is no longer stretched and the hues are 315 and 45 exactly. */
  @Test
  void hues_that_make_a_whole_circle_have_their_mean_at_its_beginning() {
    assertThat(Ciede2000.between(new Lab(50, 1e6, -1e6), new Lab(50, 1e6, 1e6)).hues().degrees())
        .isZero();
  }

  @Test
  void the_hue_of_a_pair_with_a_grey_is_that_of_the_other() {
    Lab blue = new Lab(40, 0, -10);
    Lab grey = new Lab(40, 0, 0);

    assertThat(Ciede2000.between(grey, blue).hues().degrees()).isEqualTo(270);
    assertThat(Ciede2000.between(blue, grey).hues().degrees()).isEqualTo(270);
    assertThat(Ciede2000.between(blue, grey).hue()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "0.0, 0.0, 0",
    "-0.0, 0.0, 0",
    "-0.0, -0.0, 0",
    "1, 0, 0",
    "0, 1, 90",
    "-1, 0, 180",
    "0, -1, 270",
    "1, -1e-300, 0",
    "1, -1, 315"
  })
  void hues_run_from_0_to_below_360(double a, double b, double hue) {
    assertThat(Hue.degrees(a, b)).isEqualTo(hue);
    assertThat(new Lab(50, a, b).hue()).isEqualTo(hue);
  }

  /**
   * CMC parts its formulas at L* 16 and at hues of 164 and 345 degrees, all three belonging to the
   * upper, middle and middle one (ISO 105-J03, from memory); worked out from the printed formulas.
   */
  @Test
  void cmc_changes_its_formulas_where_it_says() {
    double perLightness = 0.040975 * 16 / (1 + 0.01765 * 16);
    assertThat(Cmc.SEEN.of(new Lab(16, 0, 0), new Lab(17, 0, 0)))
        .isCloseTo(1 / perLightness, within(1e-12));
    assertThat(Cmc.SEEN.of(new Lab(15.999, 0, 0), new Lab(16.999, 0, 0)))
        .isCloseTo(1 / 0.511, within(1e-12));

    hueStep(new Lab(50, -9.612616959383189, 2.7563735581699906), 164);
    hueStep(new Lab(50, 4.8296291314453415, -1.2940952255126061), 345);
  }

  private static void hueStep(Lab standard, double hue) {
    assertThat(standard.hue()).isEqualTo(hue);
    double chroma = standard.chroma();
    double fourth = Math.pow(chroma, 4);
    double f = Math.sqrt(fourth / (fourth + 1900));
    double t = 0.56 + Math.abs(0.2 * Math.cos(Math.toRadians(hue + 168)));
    double perHue = (0.0638 * chroma / (1 + 0.0131 * chroma) + 0.638) * (f * t + 1 - f);
    // the same chroma a degree on: all of the step is hue
    double next = Math.toRadians(hue + 1);
    Lab trial = new Lab(50, chroma * Math.cos(next), chroma * Math.sin(next));
    double step = 2 * chroma * Math.sin(Math.toRadians(0.5));
    assertThat(Cmc.SEEN.of(standard, trial)).isCloseTo(step / perHue, within(1e-9));
  }

  @Test
  void black_and_nearly_black_come_back() {
    assertThat(Lab.of(new Xyz(0, 0, 0), White.D65_10)).isEqualTo(new Lab(0, 0, 0));
    assertThat(new Lab(0, 0, 0).toXyz(White.D65_10)).isEqualTo(new Xyz(0, 0, 0));
    Xyz dark = new Xyz(0.3, 0.2, 0.1);
    Xyz back = Lab.of(dark, White.D65_10).toXyz(White.D65_10);
    assertThat(back.x()).isCloseTo(0.3, within(1e-12));
    assertThat(back.y()).isCloseTo(0.2, within(1e-12));
    assertThat(back.z()).isCloseTo(0.1, within(1e-12));
    // L* is 903.2963 Y/Yn below 0.008856 (24389/27, ISO/CIE 11664-4)
    assertThat(Lab.of(dark, White.D65_10).lightness())
        .isCloseTo(24389 / 27.0 * 0.002, within(1e-12));
  }

  @Test
  void light_colours_and_colours_of_one_part_only_come_back() {
    Xyz light = new Xyz(60, 70, 80);
    Xyz back = Lab.of(light, White.D50_2).toXyz(White.D50_2);
    assertThat(back.x()).isCloseTo(60, within(1e-11));
    assertThat(back.y()).isCloseTo(70, within(1e-11));
    assertThat(back.z()).isCloseTo(80, within(1e-11));
    // nothing red or blue in it: what rounding leaves below 0 is none
    for (int y = 1; y < 300; y++) {
      Xyz green = Lab.of(new Xyz(0, y / 3.0, 0), White.D65_10).toXyz(White.D65_10);
      assertThat(green.x()).isCloseTo(0, within(1e-12));
      assertThat(green.z()).isCloseTo(0, within(1e-12));
    }
  }

  @Test
  void coordinates_that_no_surface_has_are_refused() {
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new Lab(1, 0, 200).toXyz(White.D65_10))
        .satisfies(e -> assertThat(e.argument()).isEqualTo("Z"));
  }

  private static AngleSet set(Map<AspecularAngle, Lab> colours) {
    return new AngleSet(White.D65_10, colours);
  }

  @ParameterizedTest
  @EnumSource(names = {"A15", "A45", "A110"})
  void a_flop_index_needs_all_three_of_its_angles(AspecularAngle missing) {
    Map<AspecularAngle, Lab> colours = new java.util.EnumMap<>(AspecularAngle.class);
    for (AspecularAngle angle : AspecularAngle.values()) {
      colours.put(angle, new Lab(100 - angle.degrees() / 2.0, 0, 0));
    }
    assertThat(set(colours).flopIndex()).isPresent();
    colours.remove(missing);
    assertThat(set(colours).flopIndex()).isEmpty();
  }

  @Test
  void a_solid_colour_has_no_flop_and_two_angles_have_a_travel() {
    Lab grey = new Lab(50, 0, 0);
    assertThat(
            set(Map.of(
                    AspecularAngle.A15, grey, AspecularAngle.A45, grey, AspecularAngle.A110, grey))
                .flopIndex())
        .hasValue(0);
    assertThat(
            set(Map.of(AspecularAngle.A25, new Lab(80, 0, 0), AspecularAngle.A75, grey))
                .lightnessTravel())
        .hasValue(30);
  }

  @ParameterizedTest
  @CsvSource({
    "A15, 15, FACE",
    "A25, 25, FACE",
    "A45, 45, MIDDLE",
    "A75, 75, FLOP",
    "A110, 110, FLOP"
  })
  void angles_lie_on_their_sides(AspecularAngle angle, int degrees, Side side) {
    assertThat(angle.degrees()).isEqualTo(degrees);
    assertThat(angle.side()).isEqualTo(side);
  }

  @Test
  void four_readings_halve_the_readers_error_and_one_limit_may_be_both() {
    assertThat(new ReaderError(0.4, 0.2).ofMean(4)).isEqualTo(new ReaderError(0.2, 0.1));
    assertThat(new ReaderError(0.4, 0.2).ofMean(1)).isEqualTo(new ReaderError(0.4, 0.2));
    assertThat(new MatchLimits(1, 1).blended()).isEqualTo(1);
  }

  private static List<ColourMove> moves(AngleSet card, AngleSet panel, ReaderError error) {
    return ColourMove.from(card, panel, error);
  }

  @Test
  void two_angles_of_a_side_are_one_move_of_their_mean() {
    Lab near = new Lab(60, 0, 0);
    Lab nearWanted = new Lab(62, 0, 0);
    Lab far = new Lab(50, 0, 0);
    Lab farWanted = new Lab(54, 0, 0);

    ColourMove move =
        moves(
                set(Map.of(AspecularAngle.A15, near, AspecularAngle.A25, far)),
                set(Map.of(AspecularAngle.A15, nearWanted, AspecularAngle.A25, farWanted)),
                new ReaderError(0.2, 0.1))
            .get(0);

    assertThat(move.side()).isEqualTo(Side.FACE);
    assertThat(move.direction()).isEqualTo(Direction.LIGHTER);
    assertThat(move.amount()).isEqualTo(3);
    assertThat(move.uncertainty()).isCloseTo(0.2 / Math.sqrt(2), within(1e-12));
    assertThat(move.seen())
        .isCloseTo(
            (Ciede2000.of(near, nearWanted) + Ciede2000.of(far, farWanted)) / 2, within(1e-12));
  }

  @Test
  void steps_that_cancel_are_no_move() {
    AngleSet card =
        set(Map.of(AspecularAngle.A15, new Lab(90, 0, 0), AspecularAngle.A25, new Lab(50, 0, 0)));
    AngleSet panel =
        set(Map.of(AspecularAngle.A15, new Lab(94, 0, 0), AspecularAngle.A25, new Lab(46, 0, 0)));

    assertThat(moves(card, panel, EXACT)).isEmpty();
  }

  private static AngleSet square(double lightness, double a, double b) {
    return set(Map.of(AspecularAngle.A45, new Lab(lightness, a, b)));
  }

  @ParameterizedTest
  @CsvSource({
    "50.5, 0, 0, LIGHTER",
    "49.5, 0, 0, DARKER",
    "50, 0.5, 0, REDDER",
    "50, -0.5, 0, GREENER",
    "50, 0, 0.5, YELLOWER",
    "50, 0, -0.5, BLUER"
  })
  void half_a_step_is_said_in_its_own_word(double l, double a, double b, Direction direction) {
    assertThat(moves(square(50, 0, 0), square(l, a, b), EXACT))
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.direction()).isEqualTo(direction);
              assertThat(m.side()).isEqualTo(Side.MIDDLE);
              assertThat(m.amount()).isEqualTo(0.5);
            });
  }

  @Test
  void what_no_eye_sees_is_not_said() {
    assertThat(moves(square(50, 0, 0), square(50.31, 0, 0), EXACT)).hasSize(1);
    assertThat(moves(square(50, 0, 0), square(50.29, 0, 0), EXACT)).isEmpty();
  }

  @Test
  void from_twice_its_error_on_a_move_is_believed() {
    assertThat(moves(square(50, 0, 0), square(51, 0, 0), new ReaderError(0.5, 0))).hasSize(1);
    assertThat(moves(square(50, 0, 0), square(51, 0, 0), new ReaderError(0.501, 0))).isEmpty();
  }

  @Test
  void the_most_visible_move_comes_first() {
    List<ColourMove> moves = moves(square(50, 0, 0), square(51, 3, -2), EXACT);

    assertThat(moves).hasSize(3);
    assertThat(moves).isSortedAccordingTo(Comparator.comparing(ColourMove::seen).reversed());
    assertThat(moves.get(0).direction()).isEqualTo(Direction.REDDER);
  }

  @Test
  void a_card_that_can_be_butted_is_left_as_it_is_though_a_move_is_seen() {
    CardJudgement judgement =
        CardJudgement.of(
            square(50, 0, 0),
            square(50.6, 0, 0),
            new ReaderError(0.05, 0.05),
            new ReaderError(0.05, 0.05),
            MatchLimits.COURSE);

    assertThat(judgement.match()).isEqualTo(Match.BUTTED);
    assertThat(judgement.moves()).isEmpty();
  }

  @Test
  void every_angle_has_to_be_near_enough_at_once() {
    Map<AspecularAngle, Lab> card = new java.util.EnumMap<>(AspecularAngle.class);
    Map<AspecularAngle, Lab> panel = new java.util.EnumMap<>(AspecularAngle.class);
    for (AspecularAngle angle : AspecularAngle.values()) {
      card.put(angle, new Lab(50, 0, 0));
      panel.put(angle, new Lab(50.9, 0, 0));
    }
    ReaderError error = new ReaderError(0.05, 0);

    CardJudgement judgement =
        CardJudgement.of(set(panel), set(card), error, error, MatchLimits.COURSE);

    double one = judgement.angles().get(AspecularAngle.A45).butted();
    assertThat(judgement.butted()).isCloseTo(Math.pow(one, 5), within(1e-12));
    assertThat(judgement.blended()).isCloseTo(1, within(1e-9));
  }
}
