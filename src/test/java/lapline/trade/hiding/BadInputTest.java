package lapline.trade.hiding;

import static lapline.trade.measure.Estimate.of;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadCalls;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public method that takes a number refuses what is none, and what lies out of range. */
class BadInputTest {
  private static final KubelkaMunk PAINT = new KubelkaMunk(0.6);
  private static final GlossSurface GLOSS = new GlossSurface(0.04, 0.5);
  private static final Estimate BARE = of(0, 0);
  private static final Estimate SOME = of(0.9, 0.003);
  private static final Estimate BELOW = of(-0.1, 0.003);
  private static final ContrastCurve CURVE = new ContrastCurve(List.of(BARE, SOME), 0.98);
  private static final CoatsToHiding.Crossed CROSSED = new CoatsToHiding.Crossed(1.5, CURVE);

  private static BadCalls walk() {
    BadCalls all = new BadCalls();
    theory(all);
    constants(all);
    coats(all);
    return all;
  }

  private static void theory(BadCalls all) {
    all.positives("KubelkaMunk.new", a -> new KubelkaMunk(a[0]), 0.6)
        .positives("KubelkaMunk.ofPair", a -> KubelkaMunk.ofPair(a[0], a[1], a[2]), 0.41, 0.58, 0.8)
        .and("KubelkaMunk.ofPair", "black lighter", () -> KubelkaMunk.ofPair(0.5, 0.3, 0.8))
        .and("KubelkaMunk.ofPair", "no such film", () -> KubelkaMunk.ofPair(0.5, 1, 0.8))
        .numbers("KubelkaMunk.overBlack", a -> PAINT.overBlack(a[0]), 1)
        .numbers("KubelkaMunk.over", a -> PAINT.over(a[0], a[1]), 0.8, 1)
        .numbers("KubelkaMunk.transmittance", a -> PAINT.transmittance(a[0]), 1)
        .numbers("KubelkaMunk.sxFrom", a -> PAINT.sxFrom(a[0]), 0.4)
        .and("KubelkaMunk.sxFrom", "as light as a thick film", () -> PAINT.sxFrom(0.6))
        .numbers("KubelkaMunk.contrast", a -> PAINT.contrast(a[0], a[1]), 0.8, 1)
        .positives("KubelkaMunk.sxAtContrast", a -> PAINT.sxAtContrast(a[0], a[1]), 0.98, 0.8)
        .and("KubelkaMunk.sxAtContrast", "all of it", () -> PAINT.sxAtContrast(1, 0.8))
        .positives("KubelkaMunk.coatsToHiding", a -> PAINT.coatsToHiding(a[0], a[1]), 0.6, 0.8)
        .numbers("GlossSurface.new", a -> new GlossSurface(a[0], a[1]), 0.04, 0.5)
        .and("GlossSurface.new", "more than all", () -> new GlossSurface(0.45, 0.6))
        .numbers("GlossSurface.takenOff", a -> GLOSS.takenOff(a[0]), 0.4)
        .and("GlossSurface.takenOff", "less than the gloss", () -> GLOSS.takenOff(0.03))
        .numbers("GlossSurface.putOn", a -> GLOSS.putOn(a[0]), 0.4);
  }

  private static TwoConstants pair(double black, double overWhite, double white, double film) {
    return new TwoConstants(
        of(black, 0.001), of(overWhite, 0.001), of(white, 0.001), of(film, 1e-7));
  }

  private static void constants(BadCalls all) {
    TwoConstants good = pair(0.42, 0.57, 0.8, 12e-6);
    all.and("TwoConstants.new", "no film", () -> pair(0.42, 0.57, 0.8, 0))
        .and("TwoConstants.new", "nothing over black", () -> pair(0, 0.57, 0.8, 12e-6))
        .and("TwoConstants.new", "black lighter", () -> pair(0.6, 0.57, 0.8, 12e-6))
        .positives("TwoConstants.filmAtContrast", a -> good.filmAtContrast(a[0]), 0.98)
        .positives("TwoConstants.spreadingAtHiding", a -> good.spreadingAtHiding(a[0]), 0.4)
        .and("TwoConstants.spreadingAtHiding", "zero solids", () -> good.spreadingAtHiding(0))
        .and("TwoConstants.coatsToHiding", "no film", () -> good.coatsToHiding(BARE));
  }

  private static void coats(BadCalls all) {
    all.and("ContrastRatio.of", "black below 0", () -> ContrastRatio.of(BELOW, SOME))
        .and("ContrastRatio.of", "no white", () -> ContrastRatio.of(SOME, BARE))
        .and("ContrastByCoat.coatsToHiding", "no coat", () -> contrast(BARE, List.of(), 0.98))
        .and("ContrastByCoat.coatsToHiding", "below 0", () -> contrast(BARE, List.of(BELOW), 0.98))
        .and("ContrastByCoat.coatsToHiding", "hidden bare", () -> contrast(SOME, one(), 0.8))
        .and("ContrastByCoat.coatsToHiding", "no mark", () -> contrast(BARE, one(), Double.NaN))
        .and("ContrastByCoat.coatsToHiding", "full mark", () -> contrast(BARE, one(), 1))
        .and("ContrastCurve.new", "no coat", () -> new ContrastCurve(List.of(BARE), 0.98))
        .numbers("ContrastCurve.new", a -> new ContrastCurve(List.of(BARE, SOME), a[0]), 0.98)
        .numbers("ContrastCurve.hiddenBy", a -> CURVE.hiddenBy(a[0]), 1)
        .positives("ContrastCurve.coatsAt", a -> CURVE.coatsAt(a[0]), 0.5)
        .numbers("Crossed.new", a -> new CoatsToHiding.Crossed(a[0], CURVE), 1.5)
        .positives("Crossed.interval", a -> CROSSED.interval(a[0]), 0.95)
        .and("SquaresSeen.coatsToHiding", "no coat", () -> SquaresSeen.coatsToHiding(List.of()))
        .and("SquaresSeen.coatsToHiding", "below 0", () -> SquaresSeen.coatsToHiding(List.of(-1)))
        .and("SquaresSeen.ofEachSquare", "none", () -> SquaresSeen.ofEachSquare(List.of(), 2))
        .and("SquaresSeen.ofEachSquare", "later", () -> SquaresSeen.ofEachSquare(List.of(3), 2))
        .and("SquaresSeen.ofEachSquare", "no coat", () -> SquaresSeen.ofEachSquare(List.of(0), 0))
        .and("Vanished.new", "no coat", () -> new CoatsToHiding.Vanished(0))
        .and("StillShowing.new", "no coat", () -> new CoatsToHiding.StillShowing(0));
  }

  private static List<Estimate> one() {
    return List.of(SOME);
  }

  private static void contrast(Estimate bare, List<Estimate> after, double mark) {
    ContrastByCoat.coatsToHiding(bare, after, mark);
  }

  static Stream<BadCalls.Case> cases() {
    return walk().cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void is_refused(BadCalls.Case given) {
    BadCalls.isRefused(given);
  }

  /** A computed film may be any estimate, and any curve one that was not reached. */
  @Test
  void no_public_method_is_left_out() {
    BadCalls all = walk();
    for (String any : List.of("NotReached.new", "Computed.new")) {
      all.and(any, "takes any", () -> {});
    }
    all.leavesNoneOut(KubelkaMunk.class, "Interval");
  }
}
