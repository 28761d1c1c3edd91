package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class VocReferenceTest {

  /** 4 : 1 : 1 of clear, hardener and reducer, 6 L. */
  private static Voc clear() {
    return Voc.of(
        List.of(
            VocPart.solventBorne(4e-3, 1250, 0.42),
            VocPart.solventBorne(1e-3, 1050, 0.30),
            VocPart.solventBorne(1e-3, 880, 1)));
  }

  /** Computed from the formula; 40 CFR 59.104(a). Tolerance: 0.0001 g/L. */
  @Test
  void a_solvent_borne_mix_gives_off_its_volatile_shares() {
    assertThat(clear().lessWaterAndExempt()).isCloseTo(549.1667, within(1e-4));
    // 1 lb per US gallon is 119.826427 g/L
    assertThat(clear().lessWaterAndExempt() / 119.826427).isCloseTo(4.5830, within(1e-4));
    assertThat(clear().actual()).isCloseTo(549.1667, within(1e-4));
  }

  @Test
  void the_same_mix_keeps_the_american_primer_limit_and_breaks_the_european_topcoat_limit() {
    assertThat(UsVocLimit.PRIMER_SURFACER.range().contains(clear().lessWaterAndExempt())).isTrue();
    assertThat(EuVocLimit.TOPCOAT.range().contains(clear().readyToUse(EuVocLimit.TOPCOAT)))
        .isFalse();
  }

  /** Computed from the formula: 1 L at 1000 g/L, 55 % volatile, 200 g exempt at 791 g/L. */
  @Test
  void exempt_solvent_is_taken_off_above_and_below_the_line() {
    Voc voc = Voc.of(List.of(new VocPart(1e-3, 1000, 0.55, 0, 0.2, 791)));

    assertThat(voc.lessWaterAndExempt()).isCloseTo(468.4433, within(1e-4));
    assertThat(voc.actual()).isCloseTo(350.0, within(1e-9));
    // European law exempts nothing: all 550 g in the litre
    assertThat(voc.readyToUse(EuVocLimit.TOPCOAT)).isCloseTo(550, within(1e-9));
  }

  /** By hand: 1 L at 1030 g/L, 80 % volatile, 68 % water: 123.6 g organic, 0.702508 L water. */
  @Test
  void water_leaves_the_litre_but_for_european_cleaners() {
    Voc voc = Voc.of(List.of(new VocPart(1e-3, 1030, 0.80, 0.68, 0, 1)));
    double water = 1.030 * 0.68 / 0.997;

    assertThat(voc.lessWaterAndExempt()).isCloseTo(123.6 / (1 - water), within(1e-9));
    assertThat(voc.actual()).isCloseTo(123.6, within(1e-9));
    assertThat(voc.readyToUse(EuVocLimit.TOPCOAT)).isCloseTo(123.6 / (1 - water), within(1e-9));
    assertThat(voc.readyToUse(EuVocLimit.PRE_CLEANER)).isCloseTo(123.6, within(1e-9));
  }

  /** Computed from the formula, 40 CFR 59.104(a)(2): base 760, clear 420. */
  @Test
  void clear_counts_twice_in_a_two_stage_topcoat_and_each_mid_coat_once() {
    assertThat(Voc.ofStages(760, List.of(), 420)).isCloseTo(533.3333, within(1e-4));
    // three stages by hand: (760 + 500 + 2 · 420) / 4
    assertThat(Voc.ofStages(760, List.of(500.0), 420)).isCloseTo(525, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "voc-limits-us.csv", useHeadersInDisplayName = true)
  void american_limits_are_those_of_the_rule(UsVocLimit category, double grams, double pounds) {
    assertThat(category.limit()).isEqualTo(grams);
    assertThat(category.range().contains(grams)).isTrue();
    assertThat(category.range().contains(grams + 0.01)).isFalse();
    assertThat(category.poundsPerGallon())
        .isCloseTo(grams / 119.826427, within(1e-6))
        .isCloseTo(pounds, within(0.06));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "voc-limits-eu.csv", useHeadersInDisplayName = true)
  void european_limits_are_those_of_the_directive(
      EuVocLimit category, char letter, double grams, boolean waterLeftOut) {
    assertThat(category.limit()).isEqualTo(grams);
    assertThat(category.range().contains(grams)).isTrue();
    assertThat(category.range().contains(grams + 0.01)).isFalse();
    assertThat(category.subcategory()).isEqualTo(letter);
    assertThat(category.waterLeftOut()).isEqualTo(waterLeftOut);
  }

  @Test
  void a_topcoat_of_three_stages_has_another_limit_than_one_of_two() {
    assertThat(UsVocLimit.ofTopcoat(1)).isEqualTo(UsVocLimit.SINGLE_OR_TWO_STAGE_TOPCOAT);
    assertThat(UsVocLimit.ofTopcoat(2)).isEqualTo(UsVocLimit.SINGLE_OR_TWO_STAGE_TOPCOAT);
    assertThat(UsVocLimit.ofTopcoat(3)).isEqualTo(UsVocLimit.TOPCOAT_OF_MORE_STAGES);
  }

  /** 40 CFR 59 Subpart B: one mix for several uses keeps the most restrictive limit. */
  @Test
  void a_mix_of_two_uses_keeps_the_lower_limit() {
    assertThat(UsVocLimit.strictest(List.of(UsVocLimit.PRIMER_SURFACER, UsVocLimit.PRIMER_SEALER)))
        .isEqualTo(UsVocLimit.PRIMER_SEALER);
  }

  /** 0.1 and 0.2 add up to a little more than 0.3 in binary numbers, and on no sheet. */
  @Test
  void shares_that_make_all_of_the_volatiles_leave_nothing_organic() {
    Voc water = Voc.of(List.of(new VocPart(1e-3, 1000, 0.3, 0.1, 0.2, 800)));

    assertThat(water.actual()).isCloseTo(0, within(1e-9));
  }
}
