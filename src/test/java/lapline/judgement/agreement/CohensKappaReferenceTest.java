package lapline.judgement.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Agreement beyond chance, against worked examples from elsewhere. */
class CohensKappaReferenceTest {

  private static CohensKappa of(long[][] counts) {
    return CohensKappa.of(counts).orElseThrow();
  }

  /**
   * Cohen 1960's own example of 200 cases in three classes, as the help page of cohen.kappa in the
   * R package psych gives it: "Cohen reports .492"; 29/59 exactly. Variance and interval as psych
   * computes them, after Fleiss, Cohen &amp; Everitt 1969.
   */
  @Test
  void cohens_own_example_comes_out_with_its_interval() {
    CohensKappa k = of(new long[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}});
    assertThat(k.cases()).isEqualTo(200);
    assertThat(k.observed()).isCloseTo(0.70, within(1e-12));
    assertThat(k.expected()).isCloseTo(0.41, within(1e-12));
    assertThat(k.kappa()).isCloseTo(29 / 59.0, within(1e-12)).isCloseTo(0.492, within(5e-4));
    assertThat(k.standardError() * k.standardError()).isCloseTo(0.00260119, within(5e-9));
    assertThat(k.least()).isCloseTo(0.391564, within(5.1e-7));
    assertThat(k.most()).isCloseTo(0.591487, within(5.1e-7));
  }

  /**
   * Two readers who say yes or no: 20, 5, 10, 15 is a worked example of public encyclopaedias (from
   * memory), the rest are exact fractions worked out by hand here.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 5, 10, 15, 0.4",
    "25, 10, 5, 20, 0.5",
    "10, 0, 0, 10, 1",
    "0, 10, 10, 0, -1",
    "10, 10, 10, 10, 0"
  })
  void two_by_two_comes_out_as_worked_by_hand(long a, long b, long c, long d, double kappa) {
    assertThat(of(new long[][] {{a, b}, {c, d}}).kappa()).isCloseTo(kappa, within(1e-12));
  }

  @Test
  void who_is_first_and_how_the_classes_are_ordered_makes_no_difference() {
    CohensKappa k = of(new long[][] {{20, 5}, {10, 15}});
    assertThat(of(new long[][] {{20, 10}, {5, 15}})).isEqualTo(k);
    CohensKappa turned = of(new long[][] {{15, 10}, {5, 20}});
    assertThat(turned.kappa()).isCloseTo(k.kappa(), within(1e-12));
    assertThat(turned.standardError()).isCloseTo(k.standardError(), within(1e-12));
  }

  @Test
  void full_agreement_has_no_error_and_no_interval_leaves_the_scale() {
    CohensKappa full = of(new long[][] {{10, 0}, {0, 10}});
    assertThat(full.standardError()).isZero();
    CohensKappa few = of(new long[][] {{3, 1}, {0, 1}});
    assertThat(few.most()).isEqualTo(1);
    assertThat(few.least()).isGreaterThanOrEqualTo(-1);
    assertThat(of(new long[][] {{0, 3}, {2, 0}}).least()).isGreaterThanOrEqualTo(-1);
  }

  @Test
  void where_all_lies_in_one_class_nothing_can_be_said() {
    assertThat(CohensKappa.of(new long[][] {{12, 0}, {0, 0}})).isEmpty();
    assertThat(CohensKappa.of(new long[][] {{0, 0}, {0, 0}})).isEmpty();
    assertThat(of(new long[][] {{12, 0}, {3, 0}}).kappa()).as("one says yes to all").isZero();
  }

  @Test
  void what_is_no_square_of_counts_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CohensKappa.of(new long[][] {{1, 2, 3}, {4, 5, 6}}))
        .withMessageContaining("2 rows of [3, 3]");
    assertThatIllegalArgumentException().isThrownBy(() -> CohensKappa.of(new long[][] {{4}}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CohensKappa.of(new long[][] {{1, -2}, {3, 4}}))
        .withMessageContaining("-2");
  }
}
