package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.MeasureException;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurenessReferenceTest {
  private static final Lab CARD = new Lab(52, 10, -8);
  private static final Lab PANEL = new Lab(52.6, 10.5, -8.4);

  private static double sure(Lab first, Lab second, ReaderError error, double limit) {
    return DifferenceSureness.of(Ciede2000.between(first, second), error).within(limit);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sureness.csv", useHeadersInDisplayName = true)
  void the_chance_of_a_small_difference_is_that_of_another_method(ArgumentsAccessor row) {
    Lab first = new Lab(row.getDouble(0), row.getDouble(1), row.getDouble(2));
    Lab second = new Lab(row.getDouble(3), row.getDouble(4), row.getDouble(5));
    ReaderError error = new ReaderError(row.getDouble(6), row.getDouble(7));

    assertThat(sure(first, second, error, row.getDouble(8)))
        .isCloseTo(row.getDouble(9), within(1e-6));
  }

  /** Without an error in colour, lightness alone has to keep what chroma and hue leave of it. */
  @Test
  void an_error_in_lightness_alone_is_a_normal_case_in_the_room_that_colour_leaves() {
    Ciede2000.Steps steps = Ciede2000.between(CARD, PANEL);
    double colour = Math.pow(steps.size(), 2) - Math.pow(steps.lightness(), 2);
    double room = Math.sqrt(1 - colour);
    double u = 0.3 / steps.weights().lightness();

    assertThat(sure(CARD, PANEL, new ReaderError(0.3, 0), 1))
        .isCloseTo(
            NormalDistribution.of(steps.lightness(), u).probability(-room, room), within(1e-9));
  }

  /** Colour alone already lies beyond the limit. */
  @Test
  void no_error_in_lightness_helps_where_colour_is_too_far_off() {
    assertThat(sure(CARD, new Lab(52, 16, -8), new ReaderError(0.5, 0), 1)).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.7, 0.8})
  void two_readings_without_error_are_near_enough_or_not(double limit) {
    // their difference is 0.754
    assertThat(sure(CARD, PANEL, new ReaderError(0, 0), limit)).isEqualTo(limit > 0.754 ? 1 : 0);
  }

  /** Among blues, where chroma and hue are felt together, they differ by 0.806. */
  @ParameterizedTest
  @ValueSource(doubles = {0.8, 0.81})
  void two_blues_read_without_error_too(double limit) {
    Lab first = new Lab(30, 15, -50);
    Lab second = new Lab(30.5, 16.5, -50.8);

    assertThat(sure(first, second, new ReaderError(0, 0), limit)).isEqualTo(limit > 0.806 ? 1 : 0);
  }

  @Test
  void what_lies_far_beyond_the_limit_is_surely_beyond_it() {
    assertThat(sure(CARD, PANEL, new ReaderError(1e-3, 1e-3), 0.3)).isZero();
    assertThat(sure(CARD, PANEL, new ReaderError(1e-3, 1e-3), 0.7)).isLessThan(1e-9);
  }

  /** Errors of thousandths or of many steps leave no number outside 0 to 1. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 1e-3, 30})
  void errors_of_any_size_give_a_probability(double error) {
    double found = sure(CARD, PANEL, new ReaderError(error, error), 1);

    assertThat(found).isBetween(0.0, 1.0);
    assertThat(error < 0.01 ? found : 1 - found).isGreaterThan(0.9);
  }

  @Test
  void the_same_both_ways_round() {
    ReaderError error = new ReaderError(0.3, 0.2);

    assertThat(sure(CARD, PANEL, error, 1)).isCloseTo(sure(PANEL, CARD, error, 1), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void a_limit_of_nothing_is_refused(double limit) {
    Assertions.assertThatExceptionOfType(MeasureException.class)
        .isThrownBy(() -> sure(CARD, PANEL, new ReaderError(0.3, 0.2), limit))
        .withMessageContaining("steps");
  }
}
