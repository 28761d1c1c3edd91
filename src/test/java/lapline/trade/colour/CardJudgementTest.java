package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import lapline.trade.colour.AspecularAngle.Side;
import lapline.trade.colour.CardJudgement.Match;
import lapline.trade.colour.ColourMove.Direction;
import lapline.trade.measure.MeasureException;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class CardJudgementTest {
  private static final ReaderError GOOD = new ReaderError(0.05, 0.03);

  private static AngleSet metallic(double face, double flop, double yellow) {
    return new AngleSet(
        White.D65_10,
        Map.of(
            AspecularAngle.A15, new Lab(120 + face, -2, -5 + yellow),
            AspecularAngle.A45, new Lab(62, -1, -6 + yellow),
            AspecularAngle.A110, new Lab(33 + flop, 0, -7 + yellow)));
  }

  private static AngleSet solid(double lightness) {
    return new AngleSet(White.D65_10, Map.of(AspecularAngle.A45, new Lab(lightness, 0, 0)));
  }

  private static CardJudgement judged(AngleSet panel, AngleSet card, ReaderError error) {
    return CardJudgement.of(panel, card, error, error, MatchLimits.COURSE);
  }

  @Test
  void the_same_colour_could_be_butted_and_needs_nothing() {
    CardJudgement judgement = judged(metallic(0, 0, 0), metallic(0, 0, 0), GOOD);

    assertThat(judgement.match()).isEqualTo(Match.BUTTED);
    assertThat(judgement.butted()).isGreaterThan(0.999);
    assertThat(judgement.moves()).isEmpty();
  }

  @Test
  void a_card_dark_on_the_face_and_light_on_the_flop_is_told_to_go_both_ways() {
    CardJudgement judgement = judged(metallic(5, -4, 0), metallic(0, 0, 0), GOOD);

    assertThat(judgement.match()).isEqualTo(Match.OTHER_VARIANT);
    assertThat(judgement.moves())
        .extracting(ColourMove::side, ColourMove::direction)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple(Side.FACE, Direction.LIGHTER),
            org.assertj.core.groups.Tuple.tuple(Side.FLOP, Direction.DARKER));
    assertThat(judgement.moves().get(0).side()).isEqualTo(Side.FLOP);
  }

  @Test
  void a_little_too_blue_everywhere_can_be_blended_and_should_be_yellower() {
    CardJudgement judgement = judged(metallic(0, 0, 2), metallic(0, 0, 0), GOOD);

    assertThat(judgement.match()).isEqualTo(Match.BLENDED);
    assertThat(judgement.moves())
        .extracting(ColourMove::direction)
        .containsOnly(Direction.YELLOWER);
    assertThat(judgement.moves())
        .allSatisfy(m -> assertThat(m.amount()).isEqualTo(2, within(1e-9)));
  }

  @Test
  void what_the_reader_may_have_made_up_is_neither_a_match_nor_a_move() {
    CardJudgement judgement =
        judged(metallic(1, 0, 1), metallic(0, 0, 0), new ReaderError(1.2, 0.8));

    assertThat(judgement.match()).isEqualTo(Match.READ_AGAIN);
    assertThat(judgement.moves()).isEmpty();
  }

  /** Of two greys only lightness differs: S_L at L* 50 is 1, and the rest is a normal value. */
  @Test
  void two_greys_read_with_an_error_in_lightness_only_are_a_plain_normal_case() {
    ReaderError error = new ReaderError(0.3, 0);
    AngleSet panel = solid(50.4);
    CardJudgement judgement =
        CardJudgement.of(panel, solid(49.6), error, error, MatchLimits.COURSE);
    double u = 0.3 * Math.sqrt(2);

    assertThat(judgement.angles().get(AspecularAngle.A45).difference())
        .isCloseTo(0.8, within(1e-9));
    assertThat(judgement.butted())
        .isCloseTo(NormalDistribution.of(0.8, u).probability(-1, 1), within(1e-9));
  }

  @Test
  void readings_of_other_angles_or_another_white_are_not_compared() {
    AngleSet other = new AngleSet(White.D65_2, Map.of(AspecularAngle.A45, new Lab(50, 0, 0)));

    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> judged(solid(50), other, GOOD))
        .withMessageContaining("card white X is 95.047");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> judged(solid(50), metallic(0, 0, 0), GOOD))
        .withMessageContaining("card angles is 3");
  }

  @Test
  void a_colour_that_gets_lighter_on_the_flop_has_no_index_but_its_travel_is_told() {
    AngleSet turned = metallic(-100, 0, 0);

    assertThatExceptionOfType(MeasureException.class).isThrownBy(turned::flopIndex);
    assertThat(turned.lightnessTravel()).hasValue(-13);
    assertThat(solid(50).lightnessTravel()).isEmpty();
    assertThat(solid(50).flopIndex()).isEmpty();
  }

  @Test
  void bad_input_is_named() {
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new Lab(Double.NaN, 0, 0))
        .withMessageContaining("L*");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new Xyz(-1, 0, 0))
        .withMessageContaining("X is -1.0; it must be 0 or more");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new AngleSet(White.D65_10, Map.of()))
        .withMessageContaining("colours.size");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new MatchLimits(2, 1))
        .withMessageContaining("blended is 1.0");
    assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> new White("E", 2, new Xyz(100, 0, 100)))
        .withMessageContaining("white Y");
  }
}
