package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Little paint or thin paint: by the mix, where it was read, and by any film that can be typed. */
class AmountTest {
  private static final TargetRange TARGET = new TargetRange(50e-6, 65e-6);

  private static Optional<Double> support(double film, double solids) {
    return new Amount(Estimate.of(film, 1e-6), TARGET, Optional.of(Estimate.of(solids, 0.01)))
        .finding()
        .map(f -> f.support());
  }

  /** Gauges that were read for each other leave less than no film, and slips leave metres. */
  @ParameterizedTest
  @CsvSource({"-470e-6, 0.6", "0, 0.6", "1e-12, 0.6", "30e-6, 0.6", "1, 1.4", "90e-6, 1.4"})
  void whatever_was_typed_its_support_is_a_share(double film, double solids) {
    assertThat(support(film, solids).orElseThrow()).isBetween(0.5, 1.0);
  }

  @Test
  void film_that_is_short_by_as_much_as_the_mix_is_thin_is_the_mix() {
    Estimate film = Estimate.of(0.6 * 57.5e-6, 1e-6);
    Amount amount = new Amount(film, TARGET, Optional.of(Estimate.of(0.6, 0.01)));
    assertThat(amount.finding().orElseThrow().id()).isEqualTo(Cause.WRONG_MIX.id());
  }
}
