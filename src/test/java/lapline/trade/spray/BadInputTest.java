package lapline.trade.spray;

import static lapline.trade.measure.Estimate.of;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadCalls;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public method that takes a number refuses what is none, and what lies out of range. */
class BadInputTest {
  private static final FanProfile PARABOLA = FanProfile.parabola();
  private static final MassBalance PAINT = new MassBalance(3e-6, 0.6, 0.4);
  private static final Fan FAN = new Fan(0.2, 0.16);
  private static final Pass PASS = Pass.steady(0, 0.2, 1e-5, PARABOLA);
  private static final CoatField COAT = CoatField.evenlySpaced(PASS, 0.1, 3);
  private static final StrokePlan PLAN = new StrokePlan(PAINT, FAN, PARABOLA, 0.16, 0.45, 0.1);
  private static final Estimate GOOD = of(0.2, 0.01);
  private static final Estimate NONE = of(0, 0.01);

  private static BadCalls walk() {
    BadCalls all = new BadCalls();
    shapes(all);
    passes(all);
    readings(all);
    plans(all);
    return all;
  }

  private static void shapes(BadCalls all) {
    all.numbers("BetaProfile.new", a -> new BetaProfile(a[0]), 2)
        .numbers("FanProfile.beta", a -> FanProfile.beta(a[0]), 2)
        .and("BetaProfile.new", "β below 1", () -> new BetaProfile(0.9))
        .numbers("MeasuredProfile.new", a -> new MeasuredProfile(List.of(a[0], a[1], 1.0)), 1, 2)
        .numbers("FanProfile.measured", a -> FanProfile.measured(List.of(a[0], 1.0, 1.0)), 1)
        .and("FanProfile.measured", "nothing", () -> FanProfile.measured(List.of()))
        .and("FanProfile.measured", "one reading", () -> FanProfile.measured(List.of(1.0)))
        .and("FanProfile.measured", "no film", () -> FanProfile.measured(List.of(0.0, 0.0, 0.0)))
        .and("FanProfile.measured", "below 0", () -> FanProfile.measured(List.of(1.0, -1.0, 1.0)))
        .numbers("Ripple.ofEvenPasses", a -> Ripple.ofEvenPasses(PARABOLA, a[0]), 0.5)
        .and("Ripple.ofEvenPasses", "all overlap", () -> Ripple.ofEvenPasses(PARABOLA, 1))
        .numbers("Heel.new", a -> new Heel(a[0], a[1]), 0.1, 0.5)
        .and("Heel.new", "a fan that misses the panel", () -> new Heel(1.2, 0.5))
        .and("Heel.new", "a fan of no width", () -> new Heel(0, 0))
        .positives("Fan.new", a -> new Fan(a[0], a[1]), 0.2, 0.16)
        .and("Fan.new", "a fan of no width", () -> new Fan(0, 0.16))
        .positives("Fan.ofAngle", a -> Fan.ofAngle(a[0], a[1]), 1, 0.2)
        .and("Fan.ofAngle", "a fan of no width", () -> Fan.ofAngle(0, 0.2))
        .and("Fan.ofAngle", "a half circle", () -> Fan.ofAngle(Math.PI, 0.2))
        .numbers("Fan.widthAt", a -> FAN.widthAt(a[0]), 0.2)
        .numbers("Fan.widthAt", a -> FAN.widthAt(a[0], a[1]), 0.2, 0.1)
        .and("Fan.widthAt", "no distance", () -> FAN.widthAt(NONE))
        .positives("Fan.strokePeakAt", a -> FAN.strokePeakAt(a[0]), 0.2)
        .positives("Fan.spotPeakAt", a -> FAN.spotPeakAt(a[0]), 0.2);
  }

  private static void passes(BadCalls all) {
    all.numbers("Stroke.triggered", a -> Stroke.triggered(a[0], a[1]), 0, 1)
        .and("Stroke.triggered", "reversed", () -> Stroke.triggered(1, 0))
        .numbers("Stroke.arcing", a -> Stroke.arcing(a[0], a[1]), 0, 1)
        .numbers("Stroke.drifting", a -> Stroke.drifting(a[0], a[1], a[2], a[3]), 0, 1, 1, 1)
        .and("Stroke.drifting", "no length", () -> Stroke.drifting(1, 1, 1, 1))
        .numbers("Pass.steady", a -> Pass.steady(a[0], a[1], a[2], PARABOLA), 0, 0.2, 1e-5)
        .and("Pass.steady", "a fan of no width", () -> Pass.steady(0, 0, 1e-5, PARABOLA))
        .numbers(
            "Pass.new", a -> new Pass(a[0], a[1], a[2], PARABOLA, Stroke.steady()), 0, 0.2, 1e-5)
        .numbers("Pass.filmAt", a -> PASS.filmAt(a[0], a[1]), 0, 0)
        .positives("CoatField.evenlySpaced", a -> CoatField.evenlySpaced(PASS, a[0], 3), 0.1)
        .and("CoatField.evenlySpaced", "no pass", () -> CoatField.evenlySpaced(PASS, 0.1, 0))
        .numbers("CoatField.filmAt", a -> COAT.filmAt(a[0], a[1]), 0, 0)
        .numbers("CoatField.over", a -> COAT.over(a[0], a[1], a[2], a[3], 2, 2), 0, 0, 1, 1)
        .and("CoatField.over", "reversed", () -> COAT.over(1, 0, 0, 1, 2, 2))
        .numbers("FilmGrid.new", a -> new FilmGrid(a[0], a[1], a[2], a[3], 2, 2), 0, 0, 1, 1)
        .and("FilmGrid.new", "reversed", () -> new FilmGrid(0, 1, 1, 0, 2, 2))
        .and("FilmGrid.new", "no column", () -> new FilmGrid(0, 0, 1, 1, 0, 2))
        .positives("FilmGrid.ofPanel", a -> FilmGrid.ofPanel(a[0], a[1], 2, 2), 1, 1)
        .and("DepositField.at", "outside", () -> COAT.on(FilmGrid.ofPanel(1, 1, 2, 2)).at(2, 0));
  }

  private static void readings(BadCalls all) {
    all.and("Overlap.of", "a fan of no width", () -> Overlap.of(GOOD, NONE))
        .and("Overlap.of", "spacing below 0", () -> Overlap.of(of(-0.1, 0), GOOD))
        .numbers("Overlap.spacing", a -> Overlap.spacing(a[0], a[1]), 0.5, 0.2)
        .and("Overlap.spacing", "all overlap", () -> Overlap.spacing(1, 0.2))
        .and("StrokeSpeed.of", "no length", () -> StrokeSpeed.of(NONE, GOOD))
        .and("StrokeSpeed.of", "no time", () -> StrokeSpeed.of(GOOD, NONE))
        .and("GunDistance.along", "no distance", () -> GunDistance.along(GOOD, NONE, GOOD))
        .numbers("Trigger.usefulShare", a -> Trigger.usefulShare(a[0], a[1], a[2]), 1, 0.1, 0.1)
        .and("TransferEfficiency.of", "no film", () -> efficiency(0))
        .and("TransferEfficiency.of", "no area", () -> efficiency(1))
        .and("TransferEfficiency.of", "nothing sprayed", () -> efficiency(2))
        .and("TransferEfficiency.of", "no density", () -> efficiency(3))
        .and("TransferEfficiency.of", "zero solids", () -> efficiency(4));
  }

  private static void efficiency(int without) {
    Estimate[] read = Collections.nCopies(5, GOOD).toArray(Estimate[]::new);
    read[without] = NONE;
    TransferEfficiency.of(read[0], read[1], read[2], read[3], read[4]);
  }

  private static void plans(BadCalls all) {
    all.positives("MassBalance.new", a -> new MassBalance(a[0], a[1], a[2]), 3e-6, 0.6, 0.4)
        .and("MassBalance.new", "zero solids", () -> new MassBalance(3e-6, 0.6, 0))
        .positives("MassBalance.meanDryFilm", a -> PAINT.meanDryFilm(a[0], a[1]), 0.4, 0.1)
        .positives("MassBalance.meanWetFilm", a -> PAINT.meanWetFilm(a[0], a[1]), 0.4, 0.1)
        .positives("MassBalance.strokeDryFilm", a -> PAINT.strokeDryFilm(a[0], a[1]), 0.4, 0.1)
        .and("MassBalance.strokeDryFilm", "no width", () -> PAINT.strokeDryFilm(0.4, 0))
        .positives("MassBalance.speedFor", a -> PAINT.speedFor(a[0], a[1]), 5e-5, 0.1)
        .numbers("PaintUse.new", a -> new PaintUse(a[0], a[1], a[2], a[3]), 5e-4, 0.4, 1e-4, 500)
        .and("PaintUse.new", "more than sprayed", () -> new PaintUse(5e-4, 0.4, 3e-4, 500))
        .numbers("PaintUse.of", a -> PaintUse.of(a[0], a[1], a[2], a[3]), 5e-4, 0.4, 0.6, 500)
        .and("PaintUse.of", "zero solids", () -> PaintUse.of(5e-4, 0, 0.6, 500))
        .positives("PaintUse.ofCoat", a -> PaintUse.ofCoat(a[0], 6, a[1], a[2]), 3e-6, 1, 0.4)
        .and("PaintUse.ofCoat", "no pass", () -> PaintUse.ofCoat(3e-6, 0, 1, 0.4))
        .positives(
            "TransferLoss.measured",
            a -> TransferLoss.measured(a[0], a[1], a[2], a[3]),
            0.15,
            0.6,
            0.3,
            0.4)
        .and("TransferLoss.measured", "reversed", () -> TransferLoss.measured(0.3, 0.6, 0.2, 0.4))
        .and("TransferLoss.new", "reversed", () -> new TransferLoss(0.3, 0.4, 0.6, null))
        .numbers("TransferLoss.new", a -> new TransferLoss(a[0], a[1], a[2], null), 0.3, 0, 0.6)
        .positives("TransferLoss.arriving", a -> TransferLoss.assumed().arriving(a[0]), 1.5)
        .positives(
            "StrokePlan.new",
            a -> new StrokePlan(PAINT, FAN, PARABOLA, a[0], a[1], a[2]),
            0.16,
            0.45,
            0.1)
        .numbers("StrokePlan.coat", a -> PLAN.coat(a[0], 3), 0)
        .positives("Distance.new", a -> new PlanChange.Distance(a[0], TransferLoss.assumed()), 0.2)
        .positives("Speed.new", a -> new PlanChange.Speed(a[0]), 0.4)
        .numbers("ToOverlap.new", a -> new PlanChange.ToOverlap(a[0]), 0.4)
        .positives("FluidPressure.new", a -> new PlanChange.FluidPressure(a[0], a[1]), 5e4, 1e5)
        .and("FluidPressure.new", "far off", () -> new PlanChange.FluidPressure(5e4, 5e5));
  }

  static Stream<BadCalls.Case> cases() {
    return walk().cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void is_refused(BadCalls.Case given) {
    BadCalls.isRefused(given);
  }

  /** Results, and questions that any number has an answer to, are not asked. */
  @Test
  void no_public_method_is_left_out() {
    BadCalls all = walk();
    for (String any :
        List.of(
            "BetaProfile.at",
            "MeasuredProfile.at",
            "HeeledProfile.at",
            "TransferEfficiency.isPossible",
            "CoatField.new")) {
      all.and(any, "has an answer to any number", () -> {});
    }
    all.leavesNoneOut(Fan.class, "Ripple", "PlanEffect", "GunDistance");
  }
}
