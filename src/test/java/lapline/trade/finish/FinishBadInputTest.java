package lapline.trade.finish;

import static lapline.trade.BadInput.isTaken;
import static lapline.trade.BadInput.numbers;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadInput;
import lapline.trade.finish.AppearanceRating.Scale;
import lapline.trade.finish.CrossCut.Scheme;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
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
                    "SandingSequence.new",
                    "sanding steps",
                    0,
                    () -> SandingSequence.ofGrades(List.of())),
                BadInput.of(
                    "SandingFault.of",
                    "mostNumbers",
                    0,
                    () -> SandingFault.of(sanding, NextLayer.SURFACER, 0)),
                BadInput.of("CrossCut.new", "number", -1, () -> new CrossCut(Scheme.ISO_2409, -1)),
                BadInput.of("CrossCut.new", "number", 6, () -> new CrossCut(Scheme.ISO_2409, 6)),
                BadInput.of(
                    "AppearanceRating.new",
                    "classes",
                    0,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of())),
                BadInput.of(
                    "AppearanceRating.new",
                    "class",
                    0,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of(0))),
                BadInput.of(
                    "AppearanceRating.new",
                    "class",
                    11,
                    () -> new AppearanceRating(Scale.ORANGE_PEEL, List.of(7, 11))),
                BadInput.of(
                    "AppearanceRating.new",
                    "class",
                    6,
                    () -> new AppearanceRating(Scale.HAZE, List.of(6))),
                BadInput.of(
                    "AppearanceRating.betterThan",
                    "scale",
                    Double.NaN,
                    () -> peel.betterThan(haze)),
                BadInput.of(
                    "ReflectionHaze.of",
                    "glossAt60",
                    70,
                    () -> ReflectionHaze.of(Estimate.of(70, 1), Estimate.of(60, 1))),
                BadInput.of(
                    "ReflectionHaze.of",
                    "glossAt20",
                    -1,
                    () -> ReflectionHaze.of(Estimate.of(90, 1), Estimate.of(-1, 1)))),
            numbers("GlossAngle.bestFor", "glossAt60", GlossAngle::bestFor, -1),
            numbers("SmoothGloss.new", "index", SmoothGloss::new, 0.99, 3.01),
            numbers("Abrasive.require", "grade", Abrasive::require, 450, 0, 3000),
            numbers(
                "SandingSequence.ofGrades",
                "grade",
                g -> SandingSequence.ofGrades(List.of(g)),
                450),
            numbers("CrossCut.of", "detached", d -> CrossCut.of(Scheme.ISO_2409, d), -0.1, 1.1),
            numbers(
                "CrossCut.spacing",
                "film",
                f -> CrossCut.spacing(Scheme.ISO_2409, f, false),
                0,
                -1),
            numbers("CrossCut.cuts", "spacing", s -> CrossCut.cuts(Scheme.ISO_2409, s), 0, -1))
        .flatMap(s -> s);
  }

  @Test
  void no_public_method_that_takes_a_number_is_left_out() {
    BadInput.leavesNoneOut(all(), Abrasive.class, "Abrasive.ofGrade", "Step.new");
  }

  @Test
  void the_ends_of_the_ranges_are_taken() {
    isTaken(GlossAngle::bestFor, 0);
    isTaken(SmoothGloss::new, 1, 3);
    isTaken(d -> CrossCut.of(Scheme.ISO_2409, d), 0, 1);
    isTaken(n -> new CrossCut(Scheme.ISO_2409, (int) n), 0, 5);
    isTaken(c -> new AppearanceRating(Scale.ORANGE_PEEL, List.of((int) c)), 1, 10);
    isTaken(c -> new AppearanceRating(Scale.HAZE, List.of((int) c)), 0, 5);
    isTaken(Abrasive::require, 80, 2500);
  }
}
