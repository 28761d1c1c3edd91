package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The interval of a difference of two means, or of a mean and its instrument, whatever the true
 * scatters: by integration, so without the noise of a simulation.
 */
class FewReadingsProperties {

  @ParameterizedTest
  @CsvSource({
    "2, 2",
    "2, 3",
    "2, 4",
    "2, 7",
    "2, 11",
    "2, Infinity",
    "3, 3",
    "3, 4",
    "3, 11",
    "3, Infinity",
    "4, 4",
    "4, 6",
    "4, 11",
    "4, Infinity"
  })
  void two_degrees_of_freedom_and_more_hold_it_94_to_96_times(double one, double other) {
    ExactCoverage.Range held = ExactCoverage.of(one, other);

    assertThat(held.least()).isGreaterThan(0.942);
    assertThat(held.most()).isLessThan(0.96);
  }

  /** Two readings: at least 95 %, and no more than is said of them. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.981",
    "2, 0.977",
    "3, 0.9745",
    "4, 0.9725",
    "5, 0.972",
    "11, 0.9685",
    "30, 0.9665",
    "Infinity, 0.966"
  })
  void one_degree_of_freedom_holds_it_94_times_and_up_to_98(double other, double most) {
    ExactCoverage.Range held = ExactCoverage.of(1, other);

    assertThat(held.least()).isGreaterThan(0.9435);
    assertThat(held.most()).isBetween(most - 0.002, most);
  }
}
