package lapline.benchmarks;

import java.util.List;
import java.util.Random;
import lapline.practice.FilmField.PlaceFilm;
import lapline.practice.PanelOutline;
import lapline.practice.fit.Hand;
import lapline.practice.fit.PanelSimulation;
import lapline.trade.spray.CoatField;
import lapline.trade.spray.MassBalance;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * The plain way to read a hand from a panel: speed, step between passes and the drift both ways,
 * fitted to the film by Levenberg and Marquardt with derivatives taken numerically. It tries one
 * kind of hand where the scorer compares all causes.
 */
final class GeneralFit {
  private static final double FAN = 0.23;
  private static final double STEP = 1e-4;
  private static final double[] BEGIN = {0.4, 0.07, 0.02, 0.02};

  private final PanelOutline panel;
  private final List<PlaceFilm> places;

  GeneralFit(PanelOutline panel, List<PlaceFilm> places) {
    this.panel = panel;
    this.places = places;
  }

  /** Speed in m/s, step in metres, drift across and along as shares. */
  double[] run() {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(BEGIN)
            .target(places.stream().mapToDouble(p -> 1e6 * p.film()).toArray())
            .model(this::film, this::derivatives)
            .maxEvaluations(500)
            .maxIterations(500)
            .build();
    return new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray();
  }

  /** Micrometres at each place. */
  private double[] film(double[] hand) {
    CoatField field = sprayed(hand).field(panel, new Random(0));
    return places.stream().mapToDouble(p -> 1e6 * field.filmAt(p.x(), p.y())).toArray();
  }

  private static PanelSimulation sprayed(double[] hand) {
    double step = Math.min(0.2, Math.max(0.03, hand[1]));
    double speed = Math.min(2, Math.max(0.1, hand[0]));
    MassBalance paint = new MassBalance(57.5e-6 / 2 * 0.4 * 0.07 / (0.45 * 0.65), 0.65, 0.45);
    return new PanelSimulation(
        new PanelSimulation.Gun(FAN, 2, paint),
        Hand.steady(step, speed).driftingAcross(hand[2]).driftingAlong(hand[3]),
        2,
        new PanelSimulation.Gauge(0, 0));
  }

  private double[][] derivatives(double[] hand) {
    double[] here = film(hand);
    double[][] rows = new double[here.length][hand.length];
    for (int j = 0; j < hand.length; j++) {
      double[] moved = hand.clone();
      moved[j] += STEP;
      double[] there = film(moved);
      for (int i = 0; i < here.length; i++) {
        rows[i][j] = (there[i] - here[i]) / STEP;
      }
    }
    return rows;
  }
}
