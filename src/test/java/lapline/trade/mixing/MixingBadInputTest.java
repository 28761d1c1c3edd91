package lapline.trade.mixing;

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
                BadInput.of("MixRatio", "number of parts", 0, () -> new MixRatio(List.of())),
                BadInput.of("share", "part number", -1, () -> FOUR_ONE.share(-1)),
                BadInput.of("share", "part number", 2, () -> FOUR_ONE.share(2)),
                BadInput.of(
                    "byWeight",
                    "densities",
                    1,
                    () -> MixRatio.byWeight(List.of(1.0, 1.0), List.of(1.0))),
                BadInput.of(
                    "byWeight",
                    "number of parts",
                    0,
                    () -> MixRatio.byWeight(List.of(), List.of())),
                BadInput.of("plus", "share", 1, () -> FOUR_ONE.plus(1, AdditiveOf.FINISHED_MIX))),
            numbers("MixRatio", "part", p -> MixRatio.of(4, p), 0, -1),
            numbers("plus", "share", s -> FOUR_ONE.plus(s, AdditiveOf.SUM), 0, -0.1),
            numbers("volumes", "total", FOUR_ONE::volumes, 0, -1),
            numbers("byWeight", "mass", m -> MixRatio.byWeight(List.of(m), List.of(1.0)), 0),
            numbers("byWeight", "density", d -> MixRatio.byWeight(List.of(1.0), List.of(d)), 0))
        .flatMap(s -> s);
  }

  static Stream<BadInput> weights() {
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "MixByWeight", "densities", 1, () -> new MixByWeight(FOUR_ONE, List.of(1.0))),
                BadInput.of(
                    "afterOverPour", "part number", 2, () -> WEIGHED.afterOverPour(1, 2, 1e9)),
                BadInput.of("MixError", "amounts", 0, () -> MixError.of(FOUR_ONE, List.of())),
                BadInput.of("MixError", "amounts", 1, () -> MixError.of(FOUR_ONE, List.of(ONE))),
                BadInput.of(
                    "MixError",
                    "amount",
                    -1,
                    () -> MixError.of(FOUR_ONE, List.of(ONE, Estimate.of(-1, 0)))),
                BadInput.of(
                    "MixError",
                    "amount of the first part",
                    0,
                    () -> MixError.of(FOUR_ONE, List.of(Estimate.of(0, 0), ONE)))),
            numbers("MixByWeight", "density", d -> new MixByWeight(FOUR_ONE, List.of(1.0, d)), 0),
            numbers("masses", "total", WEIGHED::masses, 0, -1),
            numbers("scaleReadings", "total", WEIGHED::scaleReadings, 0),
            numbers("afterOverPour", "poured", p -> WEIGHED.afterOverPour(1, 0, p), 1, -1),
            numbers("afterOverPour", "total", t -> WEIGHED.afterOverPour(t, 0, 1), 0))
        .flatMap(s -> s);
  }

  static Stream<BadInput> vocs() {
    return Stream.of(
            Stream.of(
                BadInput.of("Voc", "volatiles", 0.5, () -> new Voc(0.5, 0.3, 0.3, 1e-3, 0, 0)),
                BadInput.of(
                    "Voc",
                    "volume less water and exempt",
                    0,
                    () -> new Voc(0.5, 0, 0, 1e-3, 1e-3, 0)),
                BadInput.of("Voc.of", "volume", 0, () -> Voc.of(List.of())),
                BadInput.of(
                    "VocPart", "volatileShare", 0.5, () -> new VocPart(1, 1, 0.5, 0.3, 0.3, 1)),
                BadInput.of("ofTopcoat", "stages", 0, () -> UsVocLimit.ofTopcoat(0)),
                BadInput.of("strictest", "uses", 0, () -> UsVocLimit.strictest(List.of()))),
            numbers("Voc", "volatiles", v -> new Voc(v, 0, 0, 1, 0, 0), -1),
            numbers("Voc", "water", v -> new Voc(1, v, 0, 1, 0, 0), -1),
            numbers("Voc", "exempt", v -> new Voc(1, 0, v, 1, 0, 0), -1),
            numbers("Voc", "volume", v -> new Voc(1, 0, 0, v, 0, 0), 0, -1),
            numbers("Voc", "waterVolume", v -> new Voc(1, 0, 0, 1, v, 0), -1),
            numbers("Voc", "exemptVolume", v -> new Voc(1, 0, 0, 1, 0, v), -1),
            numbers("VocPart", "volume", v -> VocPart.solventBorne(v, 1, 0.5), 0),
            numbers("VocPart", "density", v -> VocPart.solventBorne(1, v, 0.5), 0),
            numbers("VocPart", "volatileShare", v -> VocPart.solventBorne(1, 1, v), -0.1, 1.1),
            numbers("VocPart", "waterShare", v -> new VocPart(1, 1, 1, v, 0, 1), -0.1, 1.1),
            numbers("VocPart", "exemptShare", v -> new VocPart(1, 1, 1, 0, v, 1), -0.1, 1.1),
            numbers("VocPart", "exemptDensity", v -> new VocPart(1, 1, 1, 0, 0.1, v), 0),
            numbers("ofStages", "base", v -> Voc.ofStages(v, List.of(), 1), -1),
            numbers("ofStages", "clear", v -> Voc.ofStages(1, List.of(), v), -1),
            numbers("ofStages", "mid coat", v -> Voc.ofStages(1, List.of(v), 1), -1))
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
                BadInput.of("card", "bands", 0, MixingBadInputTest::card),
                BadInput.of("card with a gap", "from", 21, () -> card(band(10, 20), band(21, 30))),
                BadInput.of("card overlapping", "from", 19, () -> card(band(10, 20), band(19, 30))),
                BadInput.of("card unsorted", "from", 10, () -> card(band(20, 30), band(10, 20))),
                BadInput.of("band reversed", "to", 10, () -> card(band(20, 10))),
                BadInput.of("band without width", "to", 20, () -> card(band(20, 20))),
                BadInput.of(
                    "card without a sheet",
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
                    "band without a reducer",
                    "letters of reducer",
                    0,
                    () -> new ReducerBand("", 10, 20, 0.1)),
                BadInput.of(
                    "PotLifeLeft",
                    "spells",
                    0,
                    () -> PotLifeLeft.of(new PotLife(3600, 20), List.of())),
                BadInput.of(
                    "PotLifeLeft",
                    "temperature",
                    61,
                    () -> PotLifeLeft.of(new PotLife(3600, 20), List.of(new Spell(60, 61))))),
            numbers("band", "share", s -> new ReducerBand("slow", 10, 20, s), -0.1, 2.1),
            numbers("band", "from", f -> card(band(f, 20)), -41, 251),
            numbers("band", "to", t -> card(band(10, t)), -41, 251))
        .flatMap(s -> s);
  }

  private static PaintNeed need(double area, double film, double efficiency, double waste) {
    return new PaintNeed(
        Estimate.of(area, 0), Estimate.of(film, 0), Estimate.of(efficiency, 0), waste);
  }

  static Stream<BadInput> needs() {
    return Stream.concat(
        Stream.of(
            BadInput.of("PaintNeed", "area", -1, () -> need(-1, 50e-6, 0.6, 0)),
            BadInput.of("PaintNeed", "dryFilm", 0, () -> need(1, 0, 0.6, 0)),
            BadInput.of("PaintNeed", "transferEfficiency", 0, () -> need(1, 50e-6, 0, 0)),
            BadInput.of("PaintNeed", "transferEfficiency", 1.01, () -> need(1, 50e-6, 1.01, 0)),
            BadInput.of(
                "parts", "solids", 1, () -> need(1, 50e-6, 0.6, 0).parts(FOUR_ONE, List.of(0.5))),
            BadInput.of("zero solids", "volume solids", 0, () -> new VolumeSolids(0)),
            BadInput.of(
                "parts of no solids",
                "volume solids",
                0,
                () -> need(1, 50e-6, 0.6, 0).parts(FOUR_ONE, List.of(0.0, 0.0)))),
        numbers("PaintNeed", "otherWaste", w -> need(1, 50e-6, 0.6, w), -0.1, 1));
  }
}
