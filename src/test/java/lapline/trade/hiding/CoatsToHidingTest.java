package lapline.trade.hiding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class CoatsToHidingTest {
  private static final TargetRange UP_TO_FOUR = TargetRange.atMost(4);

  private static CoatsToHiding contrast(double... afterEachCoat) {
    return ContrastByCoat.coatsToHiding(
        Arrays.stream(afterEachCoat).mapToObj(c -> Estimate.of(c, 0.003)).toList());
  }

  @Test
  void contrast_is_black_over_white_with_both_uncertainties() {
    Estimate ratio = ContrastRatio.of(Estimate.of(45, 0.6), Estimate.of(50, 0.5));

    assertThat(ratio.value()).isCloseTo(0.9, within(1e-12));
    assertThat(ratio.standardUncertainty()).isCloseTo(0.015, within(1e-12));
  }

  @Test
  void squares_last_seen_after_the_second_coat_take_three() {
    assertThat(SquaresSeen.coatsToHiding(List.of(9, 2, 0, 0)))
        .isEqualTo(new CoatsToHiding.Vanished(3));
  }

  @Test
  void a_square_that_comes_through_again_was_not_hidden() {
    assertThat(SquaresSeen.coatsToHiding(List.of(9, 0, 1, 0)))
        .isEqualTo(new CoatsToHiding.Vanished(4));
  }

  @Test
  void one_coat_may_do() {
    assertThat(SquaresSeen.coatsToHiding(List.of(0, 0))).isEqualTo(new CoatsToHiding.Vanished(1));
  }

  @Test
  void the_slowest_square_decides() {
    assertThat(SquaresSeen.ofEachSquare(List.of(1, 2, 1, 0), 4))
        .isEqualTo(new CoatsToHiding.Vanished(3));
  }

  @Test
  void hiding_lies_between_the_last_coat_seen_and_the_next() {
    Estimate film = new CoatsToHiding.Vanished(3).film();

    assertThat(film.value()).isEqualTo(2.5);
    assertThat(film.standardUncertainty()).isCloseTo(0.288675, within(1e-6));
  }

  @Test
  void a_card_still_showing_after_four_coats_needs_more_than_four() {
    CoatsToHiding showing = SquaresSeen.coatsToHiding(List.of(9, 6, 3, 1));

    assertThat(showing).isEqualTo(new CoatsToHiding.StillShowing(4));
    assertThat(showing.probabilityWithin(UP_TO_FOUR)).hasValue(0);
  }

  @Test
  void a_card_given_up_after_two_coats_says_nothing_of_four() {
    CoatsToHiding showing = SquaresSeen.coatsToHiding(List.of(9, 6));

    assertThat(showing.probabilityWithin(UP_TO_FOUR)).isEmpty();
    assertThat(showing.probabilityWithin(TargetRange.atLeast(3))).hasValue(1);
  }

  @Test
  void a_crossing_between_the_third_and_fourth_coat_takes_four() {
    CoatsToHiding crossed = contrast(0.7246, 0.92043, 0.97756, 0.99373);

    assertThat(((CoatsToHiding.Crossed) crossed).coats()).isEqualTo(4);
    assertThat(((CoatsToHiding.Crossed) crossed).at()).isCloseTo(3.0904, within(0.001));
    assertThat(crossed.probabilityWithin(UP_TO_FOUR).getAsDouble()).isGreaterThan(0.99);
    // hiding at 3.09 ± 0.1 coats may well have been at three
    assertThat(crossed.probabilityWithin(TargetRange.atMost(3)).getAsDouble()).isBetween(0.1, 0.4);
  }

  /** A tenth of doubt: a twentieth on either side. */
  @Test
  void an_interval_leaves_half_of_its_doubt_on_either_side() {
    CoatsToHiding.Crossed crossed =
        (CoatsToHiding.Crossed) contrast(0.7246, 0.92043, 0.97756, 0.99373);
    CoatsToHiding.Interval interval = crossed.interval(0.9);

    assertThat(interval.least()).isCloseTo(crossed.readings().coatsAt(0.05), within(1e-9));
    assertThat(interval.most()).isCloseTo(crossed.readings().coatsAt(0.95), within(1e-9));
    assertThat(interval.least()).isLessThan(interval.most());
  }

  @Test
  void what_vanished_after_the_third_coat_took_three_and_no_fewer() {
    CoatsToHiding seen = new CoatsToHiding.Vanished(3);

    assertThat(seen.probabilityWithin(TargetRange.atMost(3))).hasValue(1);
    assertThat(seen.probabilityWithin(TargetRange.atMost(2))).hasValue(0);
  }

  /** Twice the standard uncertainty is what stands behind the ±. */
  @Test
  void the_plus_or_minus_of_a_crossing_reaches_over_its_interval() {
    CoatsToHiding.Crossed crossed =
        (CoatsToHiding.Crossed) contrast(0.7246, 0.92043, 0.97756, 0.99373);
    CoatsToHiding.Interval holds = crossed.interval(0.9545);
    double reach = 2 * crossed.film().standardUncertainty();

    assertThat(reach)
        .isCloseTo(
            Math.max(crossed.at() - holds.least(), holds.most() - crossed.at()), within(1e-9))
        .isBetween(0.1, 0.4);
  }

  @Test
  void just_short_of_the_mark_is_drawn_on_by_one_coat() {
    CoatsToHiding crossed = contrast(0.7246, 0.92043, 0.97756);

    assertThat(((CoatsToHiding.Crossed) crossed).at()).isBetween(3.0, 3.2);
  }

  /** Nobody looked at a third coat, so no part of it is told. */
  @Test
  void what_is_drawn_on_is_told_in_whole_coats() {
    CoatsToHiding.Crossed crossed = (CoatsToHiding.Crossed) contrast(0.7246, 0.92043, 0.972);

    assertThat(crossed.at()).isBetween(3.2, 3.5);
    assertThat(crossed.interval(0.95).least()).isEqualTo(3);
    assertThat(crossed.interval(0.95).most()).isEqualTo(4);
  }

  @Test
  void far_short_of_the_mark_is_not_reached() {
    CoatsToHiding short_ = contrast(0.4, 0.62);

    assertThat(((CoatsToHiding.NotReached) short_).coats()).isEqualTo(2);
    assertThat(short_.probabilityWithin(TargetRange.atMost(2))).hasValue(0);
    assertThat(short_.probabilityWithin(TargetRange.atLeast(3))).hasValue(1);
    assertThat(short_.probabilityWithin(UP_TO_FOUR)).isEmpty();
  }

  @Test
  void a_coat_that_added_nothing_draws_no_line() {
    assertThat(contrast(0.7, 0.9, 0.9)).isInstanceOf(CoatsToHiding.NotReached.class);
  }

  /** 97.7 ± 0.6 % after as much before it: the film may hide, and nothing says how many more do. */
  @Test
  void a_reading_just_below_the_mark_may_have_been_one_above_it() {
    CoatsToHiding found = contrast(0.9, 0.977, 0.977);

    assertThat(found).isInstanceOf(CoatsToHiding.NotReached.class);
    assertThat(found.probabilityWithin(TargetRange.atMost(3)).getAsDouble())
        .isCloseTo(0.1587, within(1e-3));
    assertThat(found.probabilityWithin(TargetRange.atLeast(4)).getAsDouble())
        .isCloseTo(0.8413, within(1e-3));
  }

  @Test
  void a_contrast_above_one_by_noise_is_taken_as_hidden() {
    assertThat(((CoatsToHiding.Crossed) contrast(0.9, 1.002)).coats()).isEqualTo(2);
  }

  @Test
  void no_coat_looked_at_is_refused() {
    assertThatThrownBy(() -> SquaresSeen.coatsToHiding(List.of()))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void readings_no_film_can_give_are_refused() {
    assertThatThrownBy(() -> KubelkaMunk.ofPair(0.5, 0.3, 0.8))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("overBacking");
  }
}
