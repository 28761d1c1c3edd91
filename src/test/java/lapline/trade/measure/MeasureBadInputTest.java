package lapline.trade.measure;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MeasureBadInputTest {
  private static final double INFINITE = Double.POSITIVE_INFINITY;
  private static final TargetRange FILM = new TargetRange(50, 70);
  private static final Estimate ONE = Estimate.of(1, 1);

  @ParameterizedTest(name = "{0}")
  @MethodSource({"estimates", "propagation", "conformance", "studies", "checks"})
  void what_no_measurement_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  static Stream<BadInput> estimates() {
    return Stream.of(
            Stream.of(
                BadInput.of("Summary.of", "count", 0, Summary::of),
                BadInput.of("TargetRange.new", "least", 70, () -> new TargetRange(70, 50)),
                BadInput.of(
                    "TargetRange.atLeast",
                    "least",
                    Double.NaN,
                    () -> TargetRange.atLeast(Double.NaN)),
                BadInput.of(
                    "TargetRange.atLeast", "least", INFINITE, () -> TargetRange.atLeast(INFINITE)),
                BadInput.of(
                    "TargetRange.atMost", "least", -INFINITE, () -> TargetRange.atMost(-INFINITE)),
                BadInput.of(
                    "TargetRange.atMost", "least", -INFINITE, () -> TargetRange.atMost(Double.NaN)),
                BadInput.of(
                    "SpokenUnits.new",
                    "us",
                    Double.NaN,
                    () -> new SpokenUnits(Unit.MILLIMETRE, Unit.MIL))),
            numbers("Estimate.of", "value", v -> Estimate.of(v, 1)),
            numbers("Estimate.new", "standardUncertainty", u -> Estimate.of(1, u), -1),
            Stream.of(Double.NaN, 0.0, -1.0)
                .map(
                    f ->
                        BadInput.of(
                            "Estimate.new", "degreesOfFreedom", f, () -> new Estimate(1, 1, f))),
            Stream.of(Double.NaN, 0.0, -1.0)
                .map(
                    f ->
                        BadInput.of(
                            "Estimate.of", "degreesOfFreedom", f, () -> Estimate.of(1, 1, f))),
            numbers("Verdict.perCent", "conformance", Verdict.MET::perCent, -0.01, 1.01),
            numbers("Summary.of", "values", v -> Summary.of(1, v)),
            numbers("Verdict.of", "conformance", Verdict::of, -0.01, 1.01))
        .flatMap(s -> s);
  }

  static Stream<BadInput> propagation() {
    List<Gum.Part> two = List.of(new Gum.Part(1, ONE), new Gum.Part(1, ONE));
    return Stream.of(
            Stream.of(
                BadInput.of("Gum.ratio", "divisor", 0, () -> Gum.ratio(ONE, Estimate.of(0, 1))),
                BadInput.of("Gum.mean", "count", 0, () -> Gum.mean(new double[0], 1)),
                BadInput.of(
                    "Gum.linear",
                    "coefficients.length",
                    1,
                    () -> Gum.linear(new double[] {1}, List.of(ONE, ONE))),
                BadInput.of(
                    "Gum.combine",
                    "correlations.length",
                    1,
                    () -> Gum.combine(1, two, new double[][] {{1}})),
                BadInput.of(
                    "Gum.combine",
                    "correlations[i].length",
                    1,
                    () -> Gum.combine(1, two, new double[][] {{1}, {1}})),
                BadInput.of(
                    "Gum.combine",
                    "correlations[i][i]",
                    0.9,
                    () -> Gum.combine(1, two, new double[][] {{0.9, 0}, {0, 1}})),
                BadInput.of(
                    "Gum.combine",
                    "correlations[j][i]",
                    0.4,
                    () -> Gum.combine(1, two, new double[][] {{1, 0.5}, {0.4, 1}}))),
            Stream.of(Double.NaN, 0.0, -1.0)
                .map(
                    f ->
                        BadInput.of(
                            "Gum.coverageFactor",
                            "degreesOfFreedom",
                            f,
                            () -> Gum.coverageFactor(f))),
            numbers("Part.new", "sensitivity", s -> new Gum.Part(s, ONE)),
            numbers("Gum.combine", "value", v -> Gum.combine(v, List.of())),
            numbers("Gum.scale", "factor", f -> Gum.scale(f, ONE)),
            numbers(
                "Gum.difference",
                "correlations[i][j]",
                r -> Gum.difference(ONE, ONE, r),
                -1.1,
                1.1),
            numbers("Gum.mean", "values", v -> Gum.mean(new double[] {1, v}, 1)),
            numbers("Gum.mean", "instrument", u -> Gum.mean(new double[] {1}, u), -1),
            numbers("Gum.mean", "value", m -> Gum.mean(m, 1, 3, 1)),
            numbers("Gum.mean", "spread", s -> Gum.mean(1, s, 3, 1), -1),
            numbers("Gum.mean", "instrument", u -> Gum.mean(1, 1, 3, u), -1),
            Stream.of(BadInput.of("Gum.mean", "readings", 0, () -> Gum.mean(1, 1, 0, 1))),
            numbers("Gum.rectangular", "halfWidth", Gum::rectangular, -1),
            numbers("Gum.triangular", "halfWidth", Gum::triangular, -1),
            numbers("Gum.resolution", "step", Gum::resolution, -1))
        .flatMap(s -> s);
  }

  static Stream<BadInput> conformance() {
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "Conformance.capability",
                    "width of the range",
                    INFINITE,
                    () -> Conformance.capability(TargetRange.atLeast(50), 1)),
                BadInput.of(
                    "Conformance.posterior",
                    "prior u",
                    0,
                    () -> Conformance.posterior(Estimate.of(1, 0), ONE)),
                BadInput.of(
                    "Conformance.posterior",
                    "reading u",
                    0,
                    () -> Conformance.posterior(ONE, Estimate.of(1, 0))),
                BadInput.of(
                    "GlobalRisk.of",
                    "prior u",
                    0,
                    () -> GlobalRisk.of(Estimate.of(60, 0), 1, FILM, FILM))),
            numbers("Conformance.guardBand", "sure", s -> Conformance.guardBand(ONE, s), 0, 1),
            numbers("Conformance.guarded", "band", b -> Conformance.guarded(FILM, b)),
            numbers(
                "Conformance.acceptance",
                "sure",
                s -> Conformance.acceptance(FILM, ONE, s),
                0.49,
                1),
            numbers(
                "Conformance.capability",
                "standardUncertainty",
                u -> Conformance.capability(FILM, u),
                0),
            numbers(
                "GlobalRisk.of",
                "standardUncertainty",
                u -> GlobalRisk.of(Estimate.of(60, 5), u, FILM, FILM),
                -1))
        .flatMap(s -> s);
  }

  static Stream<BadInput> checks() {
    return Stream.of(
            numbers("Valid.finite", "x", v -> Valid.finite("x", v)),
            numbers("Valid.positive", "x", v -> Valid.positive("x", v), 0, -1),
            numbers("Valid.notNegative", "x", v -> Valid.notNegative("x", v), -1e-300),
            numbers("Valid.between", "x", v -> Valid.between("x", v, 1, 2), 0.99, 2.01),
            numbers("Valid.share", "x", v -> Valid.share("x", v), 0, 1.01))
        .flatMap(s -> s);
  }

  static Stream<BadInput> studies() {
    DoubleFunction<?> hole =
        bad -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3, bad}}});
    return Stream.of(
            Stream.of(
                BadInput.of("GaugeStudy.of", "panels", 0, () -> GaugeStudy.of(new double[0][][])),
                BadInput.of(
                    "GaugeStudy.of",
                    "panels",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}})),
                BadInput.of(
                    "GaugeStudy.of",
                    "people",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}}, {{3, 4}}})),
                BadInput.of(
                    "GaugeStudy.of", "people", 0, () -> GaugeStudy.of(new double[][][] {{}, {}})),
                BadInput.of(
                    "GaugeStudy.of",
                    "repeats",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1}, {2}}, {{3}, {4}}})),
                BadInput.of(
                    "GaugeStudy.of",
                    "people",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}}})),
                BadInput.of(
                    "GaugeStudy.of",
                    "repeats",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3}}})),
                BadInput.of(
                    "ToleranceFactor.twoSided",
                    "readings",
                    1,
                    () -> ToleranceFactor.twoSided(1, 0.9, 0.9)),
                BadInput.of(
                    "ToleranceFactor.oneSided",
                    "readings",
                    1,
                    () -> ToleranceFactor.oneSided(1, 0.9, 0.9))),
            numbers("GaugeStudy.of", "values", hole),
            numbers(
                "ToleranceFactor.twoSided",
                "share",
                s -> ToleranceFactor.twoSided(5, s, 0.9),
                0,
                1),
            numbers(
                "ToleranceFactor.twoSided",
                "confidence",
                c -> ToleranceFactor.twoSided(5, 0.9, c),
                0,
                1),
            numbers(
                "ToleranceFactor.oneSided",
                "share",
                s -> ToleranceFactor.oneSided(5, s, 0.9),
                0,
                0.49,
                1),
            numbers(
                "ToleranceFactor.oneSided",
                "confidence",
                c -> ToleranceFactor.oneSided(5, 0.9, c),
                0.49,
                1))
        .flatMap(s -> s);
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(
        Stream.of(estimates(), propagation(), conformance(), studies(), checks()).flatMap(s -> s),
        Gum.class,
        "Conformance.consumersRisk",
        "Conformance.probability",
        "Conformance.producersRisk",
        "GaugeStudy.new",
        "GlobalRisk.new",
        "Gum.product",
        "Gum.sum",
        "MeasureException.new",
        "NotUnderstood.new",
        "QuantityWriter.inField",
        "QuantityWriter.number",
        "QuantityWriter.typed",
        "QuantityWriter.write",
        "Summary.new",
        "TargetRange.contains",
        "TargetRange.outsideBy",
        "Understood.new",
        "Unit.fromSi",
        "Unit.stepFromSi",
        "Unit.toSi");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(v -> Valid.between("x", v, 1, 2), 1, 2);
    isTaken(v -> Valid.share("x", v), Double.MIN_VALUE, 1);
    isTaken(v -> Valid.notNegative("x", v), 0);
    isTaken(Verdict::of, 0, 1);
    isTaken(u -> Estimate.of(1, u), 0);
    isTaken(Gum::rectangular, 0);
    isTaken(Gum::triangular, 0);
    isTaken(Gum::resolution, 0);
    isTaken(Gum::coverageFactor, 1, INFINITE);
    isTaken(r -> Gum.difference(ONE, ONE, r), -1, 1);
    isTaken(s -> Conformance.acceptance(FILM, Estimate.of(60, 0), s), 0.5);
    isTaken(u -> Conformance.guardBand(Estimate.of(60, u), 0.95), 0);
    isTaken(v -> new TargetRange(v, v), 1);
    isTaken(v -> new TargetRange(-v, v), INFINITE);
    isTaken(n -> ToleranceFactor.twoSided((int) n, 0.9, 0.9), 2);
    isTaken(s -> ToleranceFactor.oneSided(3, s, 0.9), 0.5);
  }
}
