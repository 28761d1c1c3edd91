package lapline.trade.finish;

import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.finish.AppearanceRating.Scale;
import lapline.trade.finish.CrossCut.Scheme;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FinishBadInputTest {

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void what_no_finish_can_be_is_refused_by_name(BadInput bad) {
    bad.isRefused();
  }

  static Stream<BadInput> all() {
    SandingSequence sanding = SandingSequence.ofGrades(List.of(240.0, 400.0));
    AppearanceRating peel = new AppearanceRating(Scale.ORANGE_PEEL, List.of(7));
    AppearanceRating haze = new AppearanceRating(Scale.HAZE, List.of(1));
    return Stream.of(
            Stream.of(
                BadInput.of(
                    "sanding", "sanding steps", 0, () -> SandingSequence.ofGrades(List.of())),
                BadInput.of(
                    "faults",
                    "mostNumbers",
                    0,
                    () -> SandingFault.of(sanding, NextLayer.SURFACER, 0)),
                BadInput.of("class", "number", -1, () -> new CrossCut(Scheme.ISO_2409, -1)),
                BadInput.of("class", "number", 6, () -> new CrossCut(Scheme.ISO_2409, 6)),
                BadInput.of(
                    "rating",
                    "classes",
                    0,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of())),
                BadInput.of(
                    "rating",
                    "class",
                    0,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of(0))),
                BadInput.of(
                    "rating",
                    "class",
                    11,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of(7, 11))),
                BadInput.of(
                    "rating", "class", 6, () -> new AppearanceRating(Scale.HAZE, List.of(6))),
                BadInput.of("mixed scales", "scale", Double.NaN, () -> peel.betterThan(haze)),
                BadInput.of(
                    "haze",
                    "glossAt60",
                    70,
                    () -> ReflectionHaze.of(Estimate.of(70, 1), Estimate.of(60, 1))),
                BadInput.of(
                    "haze",
                    "glossAt20",
                    -1,
                    () -> ReflectionHaze.of(Estimate.of(90, 1), Estimate.of(-1, 1)))),
            numbers("gloss angle", "glossAt60", GlossAngle::bestFor, -1),
            numbers("smooth gloss", "index", SmoothGloss::new, 0.99, 3.01),
            numbers("grade", "grade", Abrasive::require, 450, 0, 3000),
            numbers("grades", "grade", g -> SandingSequence.ofGrades(List.of(g)), 450),
            numbers("detached", "detached", d -> CrossCut.of(Scheme.ISO_2409, d), -0.1, 1.1),
            numbers("spacing", "film", f -> CrossCut.spacing(Scheme.ISO_2409, f, false), 0, -1),
            numbers("cuts", "spacing", s -> CrossCut.cuts(Scheme.ISO_2409, s), 0, -1))
        .flatMap(s -> s);
  }
}
