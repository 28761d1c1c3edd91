package lapline.trade.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import lapline.Samples;
import lapline.trade.finish.AppearanceRating.Scale;
import lapline.trade.finish.CrossCut.Scheme;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import org.junit.jupiter.api.Test;

/** What holds for every finish. */
class FinishProperties {
  private static final int DRAWS = 20_000;

  /** Of films as there are: at 85° an index far beyond theirs reflects less again. */
  @Test
  void a_denser_film_shines_more_at_every_angle_and_standard_glass_has_a_hundred() {
    Samples.each(
        300,
        chance -> {
          double index = 1.3 + 0.3 * chance.nextDouble();
          for (GlossAngle angle : GlossAngle.values()) {
            double gloss = new SmoothGloss(index).gloss(angle);
            assertThat(new SmoothGloss(index + 0.01).gloss(angle)).isGreaterThan(gloss);
            assertThat(new SmoothGloss(index).reflectance(angle)).isBetween(0.0, 1.0);
            assertThat(SmoothGloss.STANDARD_GLASS.gloss(angle)).isCloseTo(100, within(1e-9));
          }
        });
  }

  @Test
  void more_detached_is_never_a_better_class_and_both_schemes_agree() {
    Samples.each(
        500,
        chance -> {
          double less = chance.nextDouble();
          double more = less + (1 - less) * chance.nextDouble();
          for (Scheme scheme : Scheme.values()) {
            CrossCut better = CrossCut.of(scheme, less);
            assertThat(CrossCut.of(scheme, more).stepsFromBest())
                .isGreaterThanOrEqualTo(better.stepsFromBest());
          }
          assertThat(CrossCut.of(Scheme.ISO_2409, less).in(Scheme.ASTM_D3359_B))
              .isEqualTo(CrossCut.of(Scheme.ASTM_D3359_B, less));
        });
  }

  @Test
  void a_thicker_film_is_never_cut_closer() {
    Samples.each(
        300,
        chance -> {
          double film = Samples.ofAnySize(chance, 5e-6, 240e-6);
          boolean soft = chance.nextBoolean();
          for (Scheme scheme : Scheme.values()) {
            double thin = CrossCut.spacing(scheme, film, soft).orElse(1);
            double thick = CrossCut.spacing(scheme, film * 1.3, soft).orElse(1);
            assertThat(thick).isGreaterThanOrEqualTo(thin);
          }
        });
  }

  @Test
  void the_order_of_raters_does_not_count_and_comparing_is_even_handed() {
    Samples.each(
        300,
        chance -> {
          List<Integer> classes =
              IntStream.range(0, 1 + chance.nextInt(6)).mapToObj(i -> chance.nextInt(6)).toList();
          List<Integer> turned =
              IntStream.range(0, classes.size())
                  .mapToObj(i -> classes.get(classes.size() - 1 - i))
                  .toList();
          AppearanceRating one = new AppearanceRating(Scale.HAZE, classes);
          AppearanceRating other = new AppearanceRating(Scale.HAZE, List.of(chance.nextInt(6)));
          assertThat(new AppearanceRating(Scale.HAZE, turned)).isEqualTo(one);
          assertThat(one.middle()).isBetween(0, 5);
          assertThat(one.betterThan(other)).isEqualTo(-other.betterThan(one));
        });
  }

  /** The stated interval of the haze index holds the true one. */
  @Test
  void haze_lies_in_its_interval_as_often_as_it_says() {
    Samples.each(
        4,
        chance -> {
          double truth = 90 - 80;
          int held = 0;
          for (int i = 0; i < DRAWS; i++) {
            Estimate haze =
                ReflectionHaze.of(
                    Estimate.of(90 + 0.5 * chance.nextGaussian(), 0.5),
                    Estimate.of(80 + 0.8 * chance.nextGaussian(), 0.8));
            double reach = Gum.coverageFactor(haze.degreesOfFreedom()) * haze.standardUncertainty();
            held += Math.abs(haze.value() - truth) <= reach ? 1 : 0;
          }
          assertThat(held / (double) DRAWS).isBetween(0.94, 0.96);
        });
  }
}
