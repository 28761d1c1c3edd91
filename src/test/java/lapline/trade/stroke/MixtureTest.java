package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;

/** Worked out by hand, where the parts are so narrow that each lies inside or outside. */
class MixtureTest {
  private static final double NARROW = 1e-6;

  private static Estimate of(double far, double share) {
    Mixture mixture = new Mixture();
    mixture.add(Estimate.of(0, NARROW), 1 - share);
    mixture.add(Estimate.of(far, NARROW), share);
    return mixture.estimate();
  }

  @Test
  void one_way_alone_is_told_as_it_is() {
    Mixture mixture = new Mixture();
    mixture.add(Estimate.of(0.7, 0.01), 3);
    assertThat(mixture.estimate().value()).isCloseTo(0.7, within(1e-12));
    assertThat(mixture.estimate().standardUncertainty()).isCloseTo(0.01, within(1e-4));
  }

  @Test
  void two_ways_as_likely_have_the_spread_between_them() {
    assertThat(of(1, 0.5).value()).isCloseTo(0.5, within(1e-9));
    assertThat(of(1, 0.5).standardUncertainty()).isCloseTo(0.5, within(1e-4));
  }

  /** Mean 0.1, standard deviation 0.3: 1.96 of them end at 0.69, and a tenth lies at 1. */
  @Test
  void the_interval_reaches_to_a_way_that_has_more_than_a_twentieth_of_the_weight() {
    assertThat(of(1, 0.1).value()).isCloseTo(0.1, within(1e-9));
    assertThat(of(1, 0.1).standardUncertainty()).isCloseTo(0.9 / 1.96, within(1e-4));
  }

  /** One of a fiftieth may be missed: the deviation is that of a Bernoulli trial. */
  @Test
  void and_not_to_one_that_has_less() {
    assertThat(of(1, 0.02).standardUncertainty()).isCloseTo(Math.sqrt(0.02 * 0.98), within(1e-4));
  }

  @Test
  void parts_that_are_known_exactly_are_no_matter() {
    Mixture mixture = new Mixture();
    mixture.add(Estimate.of(2, 0), 1);
    mixture.add(Estimate.of(2, 0), 1);
    assertThat(mixture.estimate()).isEqualTo(Estimate.of(2, 0));
  }
}
