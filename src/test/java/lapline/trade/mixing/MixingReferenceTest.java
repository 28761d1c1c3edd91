package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MixingReferenceTest {

  private static List<Double> numbers(String text, double scale) {
    return Arrays.stream(text.split(" ")).map(t -> Double.parseDouble(t) * scale).toList();
  }

  private static void agree(List<Double> found, List<Double> printed) {
    assertThat(found).hasSameSizeAs(printed);
    for (int i = 0; i < found.size(); i++) {
      assertThat(found.get(i)).isCloseTo(printed.get(i), within(1e-4));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "mixes.csv", useHeadersInDisplayName = true)
  void parts_become_volumes_and_masses(
      String parts,
      double additive,
      double total,
      String densities,
      String volumes,
      String masses,
      String scale) {
    MixRatio named = new MixRatio(numbers(parts, 1));
    MixRatio ratio = additive > 0 ? named.plus(additive, AdditiveOf.SUM) : named;
    MixByWeight byWeight = new MixByWeight(ratio, numbers(densities, 1));

    agree(ratio.volumes(total), numbers(volumes, 1));
    agree(byWeight.masses(total), numbers(masses, 1));
    agree(byWeight.scaleReadings(total), numbers(scale, 1));
  }

  /** Computed from the formula; 40 CFR 59.104(a). Tolerance: 0.0001 g/L. */
  @Test
  void a_solvent_borne_mix_gives_off_its_volatile_shares() {
    Voc voc =
        Voc.ofSolventBorne(
            List.of(
                new Voc.Part(4e-3, 1250, 0.42),
                new Voc.Part(1e-3, 1050, 0.30),
                new Voc.Part(1e-3, 880, 1)));

    assertThat(voc.lessWaterAndExempt()).isCloseTo(549.1667, within(1e-4));
    // 1 lb per US gallon is 119.826427 g/L
    assertThat(voc.lessWaterAndExempt() / 119.826427).isCloseTo(4.5830, within(1e-4));
  }

  /** Computed from the formula: 1 L at 1000 g/L, 55 % volatile, 200 g exempt at 791 g/L. */
  @Test
  void exempt_solvent_is_taken_off_above_and_below_the_line() {
    Voc voc = new Voc(0.550, 0, 0.200, 1e-3, 0, 0.200 / 791);

    assertThat(voc.lessWaterAndExempt()).isCloseTo(468.4433, within(1e-4));
    assertThat(voc.actual()).isCloseTo(350.0, within(1e-9));
  }

  /** Computed from the formula: base 760, clear 420. */
  @Test
  void clear_counts_twice_in_a_two_stage_topcoat() {
    assertThat(Voc.ofStages(760, List.of(), 420)).isCloseTo(533.3333, within(1e-4));
  }
}
