package lapline.trade.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import lapline.Samples;
import org.junit.jupiter.api.Test;

/** What holds for every estimate and every range, and what simulation says of it. */
class ConformanceProperties {
  private static final int DRAWS = 20_000;

  /** Three and a half standard errors of a share counted in so many draws. */
  private static final double COUNTED = 3.5 * Math.sqrt(0.25 / DRAWS);

  private static TargetRange range(RandomGenerator chance) {
    double least = 40 + 20 * chance.nextDouble();
    return switch (chance.nextInt(3)) {
      case 0 -> TargetRange.atLeast(least);
      case 1 -> TargetRange.atMost(least);
      default -> new TargetRange(least, least + 20 * chance.nextDouble());
    };
  }

  private static Estimate estimate(RandomGenerator chance) {
    double freedom = Samples.oneOf(chance, 2.0, 4.0, 9.0, Double.POSITIVE_INFINITY);
    return new Estimate(35 + 50 * chance.nextDouble(), 5 * chance.nextDouble(), freedom);
  }

  @Test
  void probability_is_the_share_of_simulated_true_values_inside() {
    Samples.each(
        25,
        chance -> {
          Estimate e = estimate(chance);
          TargetRange range = range(chance);
          long inside =
              IntStream.range(0, DRAWS).filter(i -> range.contains(trueValue(e, chance))).count();
          assertThat(Conformance.probability(e, range))
              .isCloseTo(inside / (double) DRAWS, within(COUNTED));
        });
  }

  /** Student's t as its definition has it: normal over the root of a mean of squared normals. */
  private static double trueValue(Estimate e, RandomGenerator chance) {
    double squares = 0;
    boolean few = !Double.isInfinite(e.degreesOfFreedom());
    for (int i = 0; few && i < e.degreesOfFreedom(); i++) {
      squares += Math.pow(chance.nextGaussian(), 2);
    }
    double spread = few ? Math.sqrt(squares / e.degreesOfFreedom()) : 1;
    return e.value() + e.standardUncertainty() * chance.nextGaussian() / spread;
  }

  @Test
  void a_wider_range_never_conforms_less_and_a_split_range_adds_up() {
    Samples.each(
        500,
        chance -> {
          Estimate e = estimate(chance);
          double[] x = chance.doubles(3, 30, 90).sorted().toArray();
          double left = Conformance.probability(e, new TargetRange(x[0], x[1]));
          double right = Conformance.probability(e, new TargetRange(x[1], x[2]));
          double both = Conformance.probability(e, new TargetRange(x[0], x[2]));
          assertThat(both)
              .isBetween(0.0, 1.0)
              .isGreaterThanOrEqualTo(Math.max(left, right) - 1e-12);
          assertThat(left + right).isCloseTo(both, within(1e-9));
        });
  }

  @Test
  void few_readings_never_claim_more_than_many_do() {
    Samples.each(
        300,
        chance -> {
          Estimate few = estimate(chance);
          Estimate many = Estimate.of(few.value(), few.standardUncertainty());
          TargetRange range = TargetRange.atLeast(50);
          double p = Conformance.probability(many, range);
          double q = Conformance.probability(few, range);
          assertThat(Math.abs(q - 0.5)).isLessThanOrEqualTo(Math.abs(p - 0.5) + 1e-12);
        });
  }

  @Test
  void conformance_does_not_hang_on_the_unit() {
    Samples.each(
        300,
        chance -> {
          Estimate e = estimate(chance);
          TargetRange range = range(chance);
          Estimate metres =
              new Estimate(e.value() * 1e-6, e.standardUncertainty() * 1e-6, e.degreesOfFreedom());
          assertThat(
                  Conformance.probability(
                      metres, new TargetRange(range.least() * 1e-6, range.most() * 1e-6)))
              .isCloseTo(Conformance.probability(e, range), within(1e-9));
        });
  }

  @Test
  void just_what_the_acceptance_range_holds_is_sure_enough() {
    Samples.each(
        300,
        chance -> {
          TargetRange range = range(chance);
          double u = Samples.ofAnySize(chance, 0.01, 5);
          double sure = 0.6 + 0.39 * chance.nextDouble();
          double value = 35 + 50 * chance.nextDouble();
          double freedom =
              chance.nextBoolean() ? 1 + 20 * chance.nextDouble() : Double.POSITIVE_INFINITY;
          Estimate estimate = new Estimate(value, u, freedom);
          boolean accepted =
              Conformance.acceptance(range, estimate, sure)
                  .filter(r -> r.contains(value))
                  .isPresent();
          assertThat(accepted).isEqualTo(Conformance.probability(estimate, range) >= sure);
        });
  }

  /** What stands behind '±' and what stands before '% likely' are one distribution. */
  @Test
  void the_expanded_uncertainty_and_the_conformance_probability_never_contradict_each_other() {
    Samples.each(
        300,
        chance -> {
          double u = Samples.ofAnySize(chance, 0.01, 5);
          double freedom =
              chance.nextInt(5) == 0 ? Double.POSITIVE_INFINITY : 1 + 20 * chance.nextDouble();
          Estimate e = new Estimate(35 + 50 * chance.nextDouble(), u, freedom);
          double half = e.expandedUncertainty();
          assertThat(
                  Conformance.probability(e, new TargetRange(e.value() - half, e.value() + half)))
              .as("%s", e)
              .isCloseTo(0.9545, within(1e-6));
        });
  }

  @Test
  void global_risks_are_the_shares_of_simulated_wrong_decisions() {
    Samples.each(
        15,
        chance -> {
          TargetRange target = range(chance);
          Estimate prior = Estimate.of(40 + 20 * chance.nextDouble(), 1 + 5 * chance.nextDouble());
          double u = 3 * chance.nextDouble();
          TargetRange accepted =
              Conformance.guarded(target, u * chance.nextDouble()).orElse(target);
          int[] wrong = new int[2];
          for (int i = 0; i < DRAWS; i++) {
            double eta = prior.value() + prior.standardUncertainty() * chance.nextGaussian();
            boolean good = target.contains(eta);
            if (good != accepted.contains(eta + u * chance.nextGaussian())) {
              wrong[good ? 1 : 0]++;
            }
          }
          GlobalRisk risk = GlobalRisk.of(prior, u, target, accepted);
          assertThat(risk.consumers()).isCloseTo(wrong[0] / (double) DRAWS, within(COUNTED));
          assertThat(risk.producers()).isCloseTo(wrong[1] / (double) DRAWS, within(COUNTED));
        });
  }

  @Test
  void propagation_agrees_with_simulation_where_the_formula_is_nearly_straight() {
    Samples.each(
        15,
        chance -> {
          Estimate a = Estimate.of(50 + 10 * chance.nextDouble(), chance.nextDouble());
          Estimate b = Estimate.of(20 + 10 * chance.nextDouble(), 0.5 * chance.nextDouble());
          double[] ratios = new double[DRAWS];
          double[] products = new double[DRAWS];
          for (int i = 0; i < DRAWS; i++) {
            double x = trueValue(a, chance);
            double y = trueValue(b, chance);
            ratios[i] = x / y;
            products[i] = x * y;
          }
          agrees(Gum.ratio(a, b), Summary.of(ratios));
          agrees(Gum.product(a, b), Summary.of(products));
        });
  }

  private static void agrees(Estimate computed, Summary simulated) {
    assertThat(computed.standardUncertainty() / simulated.standardDeviation())
        .isCloseTo(1, within(0.03));
  }

  @Test
  void degrees_of_freedom_lie_between_the_fewest_and_the_sum() {
    Samples.each(
        300,
        chance -> {
          double scale = Samples.ofAnySize(chance, 1e-100, 1e100);
          Estimate a = new Estimate(0, scale * (0.01 + chance.nextDouble()), 1 + chance.nextInt(9));
          Estimate b = new Estimate(0, scale * (0.01 + chance.nextDouble()), 1 + chance.nextInt(9));
          double few = Math.min(a.degreesOfFreedom(), b.degreesOfFreedom());
          assertThat(Gum.sum(List.of(a, b)).degreesOfFreedom())
              .isBetween(few - 1e-9, a.degreesOfFreedom() + b.degreesOfFreedom() + 1e-9);
          // those of a difference are such that its interval holds, which may take more
          assertThat(Gum.difference(a, b).degreesOfFreedom()).isGreaterThan(few - 1e-9);
        });
  }
}
