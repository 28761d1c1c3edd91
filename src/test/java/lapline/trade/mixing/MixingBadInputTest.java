package lapline.trade.mixing;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.climate.PotLife;
import lapline.trade.climate.Spell;
import lapline.trade.film.VolumeSolids;
import lapline.trade.measure.Estimate;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MixingBadInputTest {
  private static final MixRatio FOUR_ONE = MixRatio.of(4, 1);
  private static final MixByWeight WEIGHED = new MixByWeight(FOUR_ONE, List.of(1200.0, 1000.0));
  private static final Estimate ONE = Estimate.of(1, 0);

  @ParameterizedTest(name = "{0}")
  @MethodSource({"ratios", "weights", "vocs", "cards", "needs"})
  void what_no_mix_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  static Stream<BadInput> ratios() {
    return Stream.of(
            Stream.of(
                BadInput.of("MixRatio.new", "number of parts", 0, () -> new MixRatio(List.of())),
                BadInput.of("MixRatio.share", "part number", -1, () -> FOUR_ONE.share(-1)),
                BadInput.of("MixRatio.share", "part number", 2, () -> FOUR_ONE.share(2)),
                BadInput.of(
                    "MixRatio.byWeight",
                    "densities",
                    1,
                    () -> MixRatio.byWeight(List.of(1.0, 1.0), List.of(1.0))),
                BadInput.of(
                    "MixRatio.byWeight",
                    "number of parts",
                    0,
                    () -> MixRatio.byWeight(List.of(), List.of())),
                BadInput.of(
                    "MixRatio.plus", "share", 1, () -> FOUR_ONE.plus(1, AdditiveOf.FINISHED_MIX))),
            numbers("MixRatio.new", "part", p -> MixRatio.of(4, p), 0, -1),
            numbers("MixRatio.plus", "share", s -> FOUR_ONE.plus(s, AdditiveOf.SUM), 0, -0.1),
            numbers("MixRatio.volumes", "total", FOUR_ONE::volumes, 0, -1),
            numbers(
                "MixRatio.byWeight", "mass", m -> MixRatio.byWeight(List.of(m), List.of(1.0)), 0),
            numbers(
                "MixRatio.byWeight",
                "density",
                d -> MixRatio.byWeight(List.of(1.0), List.of(d)),
                0))
        .flatMap(s -> s);
  }

  static Stream<BadInput> weights() {
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "MixByWeight.new",
                    "densities",
                    1,
                    () -> new MixByWeight(FOUR_ONE, List.of(1.0))),
                BadInput.of(
                    "MixByWeight.afterOverPour",
                    "part number",
                    2,
                    () -> WEIGHED.afterOverPour(1, 2, 1e9)),
                BadInput.of("MixError.of", "amounts", 0, () -> MixError.of(FOUR_ONE, List.of())),
                BadInput.of("MixError.of", "amounts", 1, () -> MixError.of(FOUR_ONE, List.of(ONE))),
                BadInput.of(
                    "MixError.of",
                    "amount",
                    -1,
                    () -> MixError.of(FOUR_ONE, List.of(ONE, Estimate.of(-1, 0)))),
                BadInput.of(
                    "MixError.of",
                    "amount of the first part",
                    0,
                    () -> MixError.of(FOUR_ONE, List.of(Estimate.of(0, 0), ONE)))),
            numbers(
                "MixByWeight.new", "density", d -> new MixByWeight(FOUR_ONE, List.of(1.0, d)), 0),
            numbers("MixByWeight.masses", "total", WEIGHED::masses, 0, -1),
            numbers("MixByWeight.scaleReadings", "total", WEIGHED::scaleReadings, 0),
            numbers(
                "MixByWeight.afterOverPour", "poured", p -> WEIGHED.afterOverPour(1, 0, p), 1, -1),
            numbers("MixByWeight.afterOverPour", "total", t -> WEIGHED.afterOverPour(t, 0, 1), 0))
        .flatMap(s -> s);
  }

  static Stream<BadInput> vocs() {
    return Stream.of(
            Stream.of(
                BadInput.of("Voc.new", "volatiles", 0.5, () -> new Voc(0.5, 0.3, 0.3, 1e-3, 0, 0)),
                BadInput.of(
                    "Voc.new",
                    "volume less water and exempt",
                    0,
                    () -> new Voc(0.5, 0, 0, 1e-3, 1e-3, 0)),
                BadInput.of("Voc.of", "volume", 0, () -> Voc.of(List.of())),
                BadInput.of(
                    "VocPart.new", "volatileShare", 0.5, () -> new VocPart(1, 1, 0.5, 0.3, 0.3, 1)),
                BadInput.of("UsVocLimit.ofTopcoat", "stages", 0, () -> UsVocLimit.ofTopcoat(0)),
                BadInput.of(
                    "UsVocLimit.strictest", "uses", 0, () -> UsVocLimit.strictest(List.of()))),
            Stream.of(
                BadInput.of(
                    "Voc.new",
                    "volume less water and exempt",
                    0,
                    () -> new Voc(0.5, 0, 0, 1, 0.5, 0.5))),
            numbers("Voc.new", "volatiles", v -> new Voc(v, 0, 0, 1, 0, 0), -1),
            numbers("Voc.new", "water", v -> new Voc(1, v, 0, 1, 0, 0), -1),
            numbers("Voc.new", "exempt", v -> new Voc(1, 0, v, 1, 0, 0), -1),
            numbers("Voc.new", "volume", v -> new Voc(1, 0, 0, v, 0, 0), 0, -1),
            numbers("Voc.new", "waterVolume", v -> new Voc(1, 0, 0, 1, v, 0), -1),
            numbers("Voc.new", "exemptVolume", v -> new Voc(1, 0, 0, 1, 0, v), -1),
            numbers("VocPart.solventBorne", "volume", v -> VocPart.solventBorne(v, 1, 0.5), 0),
            numbers("VocPart.solventBorne", "density", v -> VocPart.solventBorne(1, v, 0.5), 0),
            numbers(
                "VocPart.solventBorne",
                "volatileShare",
                v -> VocPart.solventBorne(1, 1, v),
                -0.1,
                1.1),
            numbers("VocPart.new", "waterShare", v -> new VocPart(1, 1, 1, v, 0, 1), -0.1, 1.1),
            numbers("VocPart.new", "exemptShare", v -> new VocPart(1, 1, 1, 0, v, 1), -0.1, 1.1),
            numbers("VocPart.new", "exemptDensity", v -> new VocPart(1, 1, 1, 0, 0.1, v), 0),
            numbers("Voc.ofStages", "base", v -> Voc.ofStages(v, List.of(), 1), -1),
            numbers("Voc.ofStages", "clear", v -> Voc.ofStages(1, List.of(), v), -1),
            numbers("Voc.ofStages", "mid coat", v -> Voc.ofStages(1, List.of(v), 1), -1))
        .flatMap(s -> s);
  }

  private static ReducerBand band(double from, double to) {
    return new ReducerBand("slow", from, to, 0.1);
  }

  private static ProductCard card(ReducerBand... bands) {
    return ProductCard.of("Sheet 1", FOUR_ONE, AdditiveOf.SUM, List.of(bands), Optional.empty());
  }

  static Stream<BadInput> cards() {
    return Stream.of(
            Stream.of(
                BadInput.of("ProductCard.of", "bands", 0, MixingBadInputTest::card),
                BadInput.of("ProductCard.of", "from", 21, () -> card(band(10, 20), band(21, 30))),
                BadInput.of("ProductCard.of", "from", 19, () -> card(band(10, 20), band(19, 30))),
                BadInput.of("ProductCard.of", "from", 10, () -> card(band(20, 30), band(10, 20))),
                BadInput.of("ProductCard.of", "to", 10, () -> card(band(20, 10))),
                BadInput.of("ProductCard.of", "to", 20, () -> card(band(20, 20))),
                BadInput.of(
                    "ProductCard.of",
                    "letters of sheet",
                    0,
                    () ->
                        ProductCard.of(
                            " ",
                            FOUR_ONE,
                            AdditiveOf.SUM,
                            List.of(band(10, 20)),
                            Optional.empty())),
                BadInput.of(
                    "ReducerBand.new",
                    "letters of reducer",
                    0,
                    () -> new ReducerBand("", 10, 20, 0.1)),
                BadInput.of(
                    "PotLifeLeft.of",
                    "spells",
                    0,
                    () -> PotLifeLeft.of(new PotLife(3600, 20), List.of())),
                BadInput.of(
                    "PotLifeLeft.of",
                    "temperature",
                    61,
                    () -> PotLifeLeft.of(new PotLife(3600, 20), List.of(new Spell(60, 61))))),
            numbers("ReducerBand.new", "share", s -> new ReducerBand("slow", 10, 20, s), -0.1, 2.1),
            numbers("ProductCard.of", "from", f -> card(band(f, 20)), -41, 251),
            numbers("ProductCard.of", "to", t -> card(band(10, t)), -41, 251))
        .flatMap(s -> s);
  }

  private static PaintNeed need(double area, double film, double efficiency, double waste) {
    return new PaintNeed(
        Estimate.of(area, 0), Estimate.of(film, 0), Estimate.of(efficiency, 0), waste);
  }

  static Stream<BadInput> needs() {
    return Stream.concat(
        Stream.of(
            BadInput.of("PaintNeed.new", "area", -1, () -> need(-1, 50e-6, 0.6, 0)),
            BadInput.of("PaintNeed.new", "dryFilm", 0, () -> need(1, 0, 0.6, 0)),
            BadInput.of("PaintNeed.new", "transferEfficiency", 0, () -> need(1, 50e-6, 0, 0)),
            BadInput.of("PaintNeed.new", "transferEfficiency", 1.01, () -> need(1, 50e-6, 1.01, 0)),
            BadInput.of(
                "PaintNeed.parts",
                "solids",
                1,
                () -> need(1, 50e-6, 0.6, 0).parts(FOUR_ONE, List.of(0.5))),
            BadInput.of("VolumeSolids.new", "volume solids", 0, () -> new VolumeSolids(0)),
            BadInput.of(
                "PaintNeed.parts",
                "volume solids",
                0,
                () -> need(1, 50e-6, 0.6, 0).parts(FOUR_ONE, List.of(0.0, 0.0)))),
        numbers("PaintNeed.new", "otherWaste", w -> need(1, 50e-6, 0.6, w), -0.1, 1));
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(
        Stream.of(ratios(), weights(), vocs(), cards(), needs()).flatMap(s -> s),
        MixRatio.class,
        "MixError.new",
        "PotLifeLeft.new",
        "Reducer.new",
        "ProductCard.reducerAt");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(v -> VocPart.solventBorne(1, 1, v), 0, 1);
    isTaken(v -> new VocPart(1, 1, 1, v, 0, 1), 0, 1);
    isTaken(v -> new VocPart(1, 1, 1, 0, v, 1), 0, 1);
    isTaken(v -> new VocPart(1, 1, v, 0.3, 0.2, 1), 0.5);
    isTaken(v -> new Voc(v, 0.3, 0.2, 1, 0, 0), 0.5);
    isTaken(v -> new Voc(1, v, v, 1, v, v), 0);
    isTaken(v -> Voc.ofStages(v, List.of(v), v), 0);
    isTaken(v -> new ReducerBand("slow", 10, 20, v), 0, 2);
    isTaken(v -> card(band(-40, v)), -39.5, 250);
    isTaken(v -> need(v, 1e-9, 1, v), 0);
    isTaken(p -> WEIGHED.afterOverPour(1, 0, p), WEIGHED.masses(1).get(0));
    isTaken(a -> MixError.of(FOUR_ONE, List.of(ONE, Estimate.of(a, 0))), 0);
    isTaken(i -> FOUR_ONE.share((int) i), 0, 1);
  }
}
