package lapline.trade.measure;

import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import lapline.trade.BadInput;
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
                BadInput.of("summary", "count", 0, Summary::of),
                BadInput.of("range", "least", 70, () -> new TargetRange(70, 50)),
                BadInput.of("range", "least", Double.NaN, () -> TargetRange.atLeast(Double.NaN)),
                BadInput.of("range", "least", INFINITE, () -> TargetRange.atLeast(INFINITE)),
                BadInput.of("range", "least", -INFINITE, () -> TargetRange.atMost(-INFINITE)),
                BadInput.of("range", "least", -INFINITE, () -> TargetRange.atMost(Double.NaN)),
                BadInput.of(
                    "mixed units",
                    "us",
                    Double.NaN,
                    () -> new SpokenUnits(Unit.MILLIMETRE, Unit.MIL))),
            numbers("estimate", "value", v -> Estimate.of(v, 1)),
            numbers("estimate", "standardUncertainty", u -> Estimate.of(1, u), -1),
            Stream.of(Double.NaN, 0.0, -1.0)
                .map(
                    f ->
                        BadInput.of(
                            "estimate", "degreesOfFreedom", f, () -> new Estimate(1, 1, f))),
            numbers("summary", "values", v -> Summary.of(1, v)),
            numbers("verdict", "conformance", Verdict::of, -0.01, 1.01))
        .flatMap(s -> s);
  }

  static Stream<BadInput> propagation() {
    List<Gum.Part> two = List.of(new Gum.Part(1, ONE), new Gum.Part(1, ONE));
    return Stream.of(
            Stream.of(
                BadInput.of("ratio", "divisor", 0, () -> Gum.ratio(ONE, Estimate.of(0, 1))),
                BadInput.of("mean", "count", 0, () -> Gum.mean(new double[0], 1)),
                BadInput.of(
                    "linear",
                    "coefficients.length",
                    1,
                    () -> Gum.linear(new double[] {1}, List.of(ONE, ONE))),
                BadInput.of(
                    "correlated",
                    "correlations.length",
                    1,
                    () -> Gum.combine(1, two, new double[][] {{1}})),
                BadInput.of(
                    "correlated",
                    "correlations[i].length",
                    1,
                    () -> Gum.combine(1, two, new double[][] {{1}, {1}})),
                BadInput.of(
                    "correlated",
                    "correlations[i][i]",
                    0.9,
                    () -> Gum.combine(1, two, new double[][] {{0.9, 0}, {0, 1}})),
                BadInput.of(
                    "correlated",
                    "correlations[j][i]",
                    0.4,
                    () -> Gum.combine(1, two, new double[][] {{1, 0.5}, {0.4, 1}}))),
            Stream.of(Double.NaN, 0.0, -1.0)
                .map(
                    f ->
                        BadInput.of(
                            "coverage", "degreesOfFreedom", f, () -> Gum.coverageFactor(f))),
            numbers("part", "sensitivity", s -> new Gum.Part(s, ONE)),
            numbers("combine", "value", v -> Gum.combine(v, List.of())),
            numbers("scale", "factor", f -> Gum.scale(f, ONE)),
            numbers(
                "difference", "correlations[i][j]", r -> Gum.difference(ONE, ONE, r), -1.1, 1.1),
            numbers("mean", "values", v -> Gum.mean(new double[] {1, v}, 1)),
            numbers("mean", "instrument", u -> Gum.mean(new double[] {1}, u), -1),
            numbers("rectangular", "halfWidth", Gum::rectangular, -1),
            numbers("triangular", "halfWidth", Gum::triangular, -1),
            numbers("resolution", "step", Gum::resolution, -1))
        .flatMap(s -> s);
  }

  static Stream<BadInput> conformance() {
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "capability",
                    "width of the range",
                    INFINITE,
                    () -> Conformance.capability(TargetRange.atLeast(50), 1)),
                BadInput.of(
                    "posterior", "prior u", 0, () -> Conformance.posterior(Estimate.of(1, 0), ONE)),
                BadInput.of(
                    "posterior",
                    "reading u",
                    0,
                    () -> Conformance.posterior(ONE, Estimate.of(1, 0))),
                BadInput.of(
                    "global risk",
                    "prior u",
                    0,
                    () -> GlobalRisk.of(Estimate.of(60, 0), 1, FILM, FILM))),
            numbers("guard band", "standardUncertainty", u -> Conformance.guardBand(u, 0.95), -1),
            numbers("guard band", "sure", s -> Conformance.guardBand(1, s), 0, 1),
            numbers("guarded", "band", b -> Conformance.guarded(FILM, b)),
            numbers(
                "acceptance",
                "standardUncertainty",
                u -> Conformance.acceptance(FILM, u, 0.95),
                -1),
            numbers("acceptance", "sure", s -> Conformance.acceptance(FILM, 1, s), 0.49, 1),
            numbers("capability", "standardUncertainty", u -> Conformance.capability(FILM, u), 0),
            numbers(
                "global risk",
                "standardUncertainty",
                u -> GlobalRisk.of(Estimate.of(60, 5), u, FILM, FILM),
                -1))
        .flatMap(s -> s);
  }

  static Stream<BadInput> checks() {
    return Stream.of(
            numbers("finite", "x", v -> Valid.finite("x", v)),
            numbers("positive", "x", v -> Valid.positive("x", v), 0, -1),
            numbers("not negative", "x", v -> Valid.notNegative("x", v), -1e-300),
            numbers("between", "x", v -> Valid.between("x", v, 1, 2), 0.99, 2.01),
            numbers("share", "x", v -> Valid.share("x", v), 0, 1.01))
        .flatMap(s -> s);
  }

  static Stream<BadInput> studies() {
    DoubleFunction<?> hole =
        bad -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3, bad}}});
    return Stream.of(
            Stream.of(
                BadInput.of("study", "panels", 0, () -> GaugeStudy.of(new double[0][][])),
                BadInput.of(
                    "study", "panels", 1, () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}})),
                BadInput.of(
                    "study",
                    "people",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}}, {{3, 4}}})),
                BadInput.of("study", "people", 0, () -> GaugeStudy.of(new double[][][] {{}, {}})),
                BadInput.of(
                    "study",
                    "repeats",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1}, {2}}, {{3}, {4}}})),
                BadInput.of(
                    "study with a person missing",
                    "people",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}}})),
                BadInput.of(
                    "study with a repeat missing",
                    "repeats",
                    1,
                    () -> GaugeStudy.of(new double[][][] {{{1, 2}, {3, 4}}, {{1, 2}, {3}}})),
                BadInput.of(
                    "two-sided", "readings", 1, () -> ToleranceFactor.twoSided(1, 0.9, 0.9)),
                BadInput.of(
                    "one-sided", "readings", 1, () -> ToleranceFactor.oneSided(1, 0.9, 0.9))),
            numbers("study", "values", hole),
            numbers("two-sided", "share", s -> ToleranceFactor.twoSided(5, s, 0.9), 0, 1),
            numbers("two-sided", "confidence", c -> ToleranceFactor.twoSided(5, 0.9, c), 0, 1),
            numbers("one-sided", "share", s -> ToleranceFactor.oneSided(5, s, 0.9), 0, 0.49, 1),
            numbers("one-sided", "confidence", c -> ToleranceFactor.oneSided(5, 0.9, c), 0.49, 1))
        .flatMap(s -> s);
  }
}
