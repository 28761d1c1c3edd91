package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import lapline.Samples;
import lapline.trade.climate.PotLife;
import lapline.trade.climate.Spell;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.TargetRange;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.api.Test;

/** What holds for every mix. */
class MixingProperties {
  private static final int DRAWS = 20_000;

  private static List<Double> numbers(
      RandomGenerator chance, int count, double least, double most) {
    return IntStream.range(0, count).mapToObj(i -> Samples.ofAnySize(chance, least, most)).toList();
  }

  private static MixRatio ratio(RandomGenerator chance) {
    return new MixRatio(numbers(chance, 1 + chance.nextInt(5), 0.1, 10));
  }

  @Test
  void volumes_make_the_total_and_keep_the_ratio() {
    Samples.each(
        300,
        chance -> {
          MixRatio ratio = ratio(chance);
          double total = Samples.ofAnySize(chance, 1e-5, 1e-2);
          List<Double> volumes = ratio.volumes(total);
          assertThat(volumes.stream().mapToDouble(v -> v).sum())
              .isCloseTo(total, within(total * 1e-12));
          for (int i = 0; i < volumes.size(); i++) {
            assertThat(volumes.get(i)).isCloseTo(total * ratio.share(i), within(total * 1e-12));
          }
        });
  }

  @Test
  void weights_and_volumes_are_the_same_mix_there_and_back() {
    Samples.each(
        300,
        chance -> {
          MixRatio ratio = ratio(chance);
          List<Double> densities = numbers(chance, ratio.parts().size(), 700, 1600);
          MixByWeight weighed = new MixByWeight(ratio, densities);
          MixRatio back = MixRatio.byWeight(weighed.masses(1), densities);
          double mass = weighed.masses(1).stream().mapToDouble(m -> m).sum();
          for (int i = 0; i < ratio.parts().size(); i++) {
            assertThat(back.share(i)).isCloseTo(ratio.share(i), within(1e-12));
          }
          assertThat(weighed.density()).isCloseTo(mass, within(1e-9));
          List<Double> scale = weighed.scaleReadings(1);
          assertThat(scale.get(scale.size() - 1)).isCloseTo(mass, within(1e-9));
        });
  }

  @Test
  void an_additive_is_its_share_of_what_it_is_taken_of() {
    Samples.each(
        300,
        chance -> {
          MixRatio ratio = ratio(chance);
          double share = 0.01 + 0.5 * chance.nextDouble();
          double before = ratio.parts().stream().mapToDouble(p -> p).sum();
          int last = ratio.parts().size();
          assertThat(ratio.plus(share, AdditiveOf.SUM).parts().get(last) / before)
              .isCloseTo(share, within(1e-12));
          assertThat(
                  ratio.plus(share, AdditiveOf.FIRST_PART).parts().get(last) / ratio.parts().get(0))
              .isCloseTo(share, within(1e-12));
          assertThat(ratio.plus(share, AdditiveOf.FINISHED_MIX).share(last))
              .isCloseTo(share, within(1e-12));
        });
  }

  @Test
  void an_over_pour_restores_the_ratio() {
    Samples.each(
        300,
        chance -> {
          MixRatio ratio = ratio(chance);
          MixByWeight weighed =
              new MixByWeight(ratio, numbers(chance, ratio.parts().size(), 700, 1600));
          int part = chance.nextInt(ratio.parts().size());
          double poured = weighed.masses(1).get(part) * (1 + chance.nextDouble());
          List<Double> restored = weighed.afterOverPour(1, part, poured);
          assertThat(restored.get(part)).isCloseTo(poured, within(poured * 1e-12));
          MixRatio after = MixRatio.byWeight(restored, weighed.densities());
          for (int i = 0; i < ratio.parts().size(); i++) {
            assertThat(after.share(i)).isCloseTo(ratio.share(i), within(1e-12));
          }
        });
  }

  /** Conservation: the solids of what is mixed are film, overspray and waste. */
  @Test
  void the_solids_of_the_mix_are_on_the_panel_and_beside_it() {
    Samples.each(
        300,
        chance -> {
          PaintNeed need = need(chance);
          VolumeSolids solids = new VolumeSolids(0.1 + 0.8 * chance.nextDouble());
          double film = need.area().value() * need.dryFilm().value();
          double kept =
              need.volume(solids).value()
                  * solids.share()
                  * need.transferEfficiency().value()
                  * (1 - need.otherWaste());
          assertThat(kept).isCloseTo(film, within(film * 1e-12));
        });
  }

  private static PaintNeed need(RandomGenerator chance) {
    return new PaintNeed(
        Estimate.of(0.1 + 5 * chance.nextDouble(), 0.02),
        Estimate.of(Samples.ofAnySize(chance, 10e-6, 100e-6), 0.5e-6),
        Estimate.of(0.4 + 0.4 * chance.nextDouble(), 0.02),
        0.3 * chance.nextDouble());
  }

  @Test
  void the_parts_of_the_need_are_its_volume() {
    Samples.each(
        200,
        chance -> {
          MixRatio ratio = ratio(chance);
          List<Double> solids = numbers(chance, ratio.parts().size(), 0.05, 0.9);
          PaintNeed need = need(chance);
          double all = need.parts(ratio, solids).stream().mapToDouble(v -> v).sum();
          double volume = need.volume(VolumeSolids.ofMix(ratio.parts(), solids)).value();
          assertThat(all).isCloseTo(volume, within(volume * 1e-12));
        });
  }

  /** The stated interval, value ± coverage factor × u, holds the true need. */
  @Test
  void the_need_lies_in_its_interval_as_often_as_it_says() {
    Samples.each(
        5,
        chance -> {
          PaintNeed truth = need(chance);
          VolumeSolids solids = new VolumeSolids(0.45);
          double wanted = truth.volume(solids).value();
          int held = 0;
          for (int i = 0; i < DRAWS; i++) {
            PaintNeed read =
                new PaintNeed(
                    drawn(truth.area(), chance),
                    drawn(truth.dryFilm(), chance),
                    drawn(truth.transferEfficiency(), chance),
                    truth.otherWaste());
            Estimate e = read.volume(solids);
            held += covers(e, wanted) ? 1 : 0;
          }
          assertThat(held / (double) DRAWS).isBetween(0.94, 0.96);
        });
  }

  /** The stated interval of each share and ratio of a poured mix holds the true one. */
  @Test
  void errors_of_a_mix_lie_in_their_intervals_as_often_as_they_say() {
    Samples.each(
        5,
        chance -> {
          MixRatio ratio = MixRatio.of(4, 1, 1);
          List<Estimate> truth =
              List.of(Estimate.of(404, 4), Estimate.of(103, 2), Estimate.of(97, 2));
          MixError exact = MixError.of(ratio, truth);
          int[] held = new int[2];
          for (int i = 0; i < DRAWS; i++) {
            MixError read = MixError.of(ratio, truth.stream().map(a -> drawn(a, chance)).toList());
            held[0] += covers(read.shares().get(1), exact.shares().get(1).value()) ? 1 : 0;
            held[1] += covers(read.ratios().get(0), exact.ratios().get(0).value()) ? 1 : 0;
          }
          assertThat(held[0] / (double) DRAWS).isBetween(0.94, 0.96);
          assertThat(held[1] / (double) DRAWS).isBetween(0.94, 0.96);
        });
  }

  private static Estimate drawn(Estimate truth, RandomGenerator chance) {
    double read = truth.value() + truth.standardUncertainty() * chance.nextGaussian();
    return Estimate.of(read, truth.standardUncertainty());
  }

  private static boolean covers(Estimate e, double truth) {
    double reach = Gum.coverageFactor(e.degreesOfFreedom()) * e.standardUncertainty();
    return Math.abs(e.value() - truth) <= reach;
  }

  @Test
  void more_is_never_less_voc_and_water_never_counts() {
    Samples.each(
        300,
        chance -> {
          double volatiles = chance.nextDouble();
          double water = volatiles * chance.nextDouble();
          double exempt = (volatiles - water) * chance.nextDouble();
          VocPart part = new VocPart(1e-3, 1000, volatiles, water * 0.9, exempt * 0.9, 1100);
          Voc voc = Voc.of(List.of(part));
          assertThat(voc.actual()).isLessThanOrEqualTo(voc.lessWaterAndExempt() + 1e-9);
          assertThat(voc.actual()).isLessThanOrEqualTo(voc.readyToUse(EuVocLimit.TOPCOAT) + 1e-9);
          assertThat(voc.readyToUse(EuVocLimit.PRE_CLEANER))
              .isLessThanOrEqualTo(voc.readyToUse(EuVocLimit.TOPCOAT) + 1e-9);
          Voc twice = Voc.of(List.of(part, part));
          assertThat(twice.lessWaterAndExempt()).isCloseTo(voc.lessWaterAndExempt(), within(1e-9));
        });
  }

  /** Without water or exempt compounds all four figures are one. */
  @Test
  void a_plain_solvent_mix_has_one_figure_everywhere() {
    Samples.each(
        100,
        chance -> {
          Voc voc =
              Voc.of(List.of(VocPart.solventBorne(1e-3, 900 + 300 * chance.nextDouble(), 0.5)));
          for (EuVocLimit category : EuVocLimit.values()) {
            assertThat(voc.readyToUse(category)).isCloseTo(voc.actual(), within(1e-9));
          }
          assertThat(voc.lessWaterAndExempt()).isCloseTo(voc.actual(), within(1e-9));
        });
  }

  @Test
  void a_pot_life_only_runs_down_and_faster_in_the_warm() {
    Samples.each(
        200,
        chance -> {
          PotLife life = new PotLife(Samples.ofAnySize(chance, 600, 20_000), 20);
          Spell cool = new Spell(300, 10 + 10 * chance.nextDouble());
          Spell warm = new Spell(300, cool.temperature() + 5);
          PotLifeLeft first = PotLifeLeft.of(life, List.of(cool));
          PotLifeLeft both = PotLifeLeft.of(life, List.of(cool, cool));
          assertThat(both.seconds()).isLessThan(first.seconds());
          assertThat(PotLifeLeft.of(life, List.of(warm)).shareUsed())
              .isGreaterThan(first.shareUsed());
        });
  }

  @Test
  void a_card_says_one_thing_at_every_temperature_it_covers() {
    Samples.each(
        200,
        chance -> {
          double[] ends = chance.doubles(5, 0, 40).sorted().toArray();
          List<ReducerBand> bands =
              IntStream.range(0, 4)
                  .mapToObj(i -> new ReducerBand("r" + i, ends[i], ends[i + 1], 0.1))
                  .toList();
          ProductCard card =
              ProductCard.of(
                  "s", MixRatio.of(4, 1), AdditiveOf.SUM, bands, java.util.Optional.empty());
          double t = 40 * chance.nextDouble();
          ProductCard.Reducer found = card.reducerAt(Estimate.of(t, 0.3));
          assertThat(found.band().isPresent()).isEqualTo(t >= ends[0] && t <= ends[4]);
          found
              .band()
              .ifPresent(
                  b -> {
                    assertThat(t).isBetween(b.from(), b.to());
                    assertThat(found.sureness())
                        .isCloseTo(
                            Conformance.probability(
                                Estimate.of(t, 0.3), new TargetRange(b.from(), b.to())),
                            within(1e-12));
                  });
        });
  }
}
