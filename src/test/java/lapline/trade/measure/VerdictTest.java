package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A probability is told in such whole per cent that the number reads as its verdict. */
class VerdictTest {

  @ParameterizedTest
  @CsvSource({
    "0.946, DOUBTFUL, 94",
    "0.9499999, DOUBTFUL, 94",
    "0.95, MET, 95",
    "0.9549, MET, 95",
    "0.999, MET, 100",
    "0.054, DOUBTFUL, 6",
    "0.0500001, DOUBTFUL, 6",
    "0.05, MISSED, 5",
    "0.0451, MISSED, 5",
    "0.004, MISSED, 0",
    "0.774, DOUBTFUL, 77"
  })
  void the_number_agrees_with_the_verdict(double conformance, Verdict verdict, int perCent) {
    assertThat(Verdict.of(conformance)).isEqualTo(verdict);
    assertThat(verdict.perCent(conformance)).isEqualTo(perCent);
  }

  @Test
  void whoever_reads_only_the_number_comes_to_the_same_verdict() {
    Samples.each(
        1000,
        chance -> {
          double conformance = chance.nextDouble();
          Verdict verdict = Verdict.of(conformance);
          int told = verdict.perCent(conformance);
          assertThat(told / 100.0).isBetween(conformance - 0.011, conformance + 0.011);
          assertThat(told >= 95 ? Verdict.MET : told <= 5 ? Verdict.MISSED : Verdict.DOUBTFUL)
              .isEqualTo(verdict);
        });
  }
}
