package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import lapline.trade.spray.CoatField;
import lapline.trade.spray.FanProfile;
import lapline.trade.spray.Pass;
import lapline.trade.spray.Stroke;
import lapline.trade.stroke.Departure.End;
import org.junit.jupiter.api.Test;

/**
 * The model agrees with the sum of passes in {@code trade.spray}, and its slopes with differences.
 */
class StrokeModelTest {
  private static final double WIDTH = 0.61;
  private static final double HEIGHT = 0.46;
  private static final double FAN = 0.23;
  private static final double STEP = 0.115;

  /** The model's fan has a blurred rim: 3 % of the film where passes overlap by half. */
  private static final double BLUR = 0.03 * 57e-6;

  /** Next to sharp it is 1 % of the film. */
  private static final double SHARP = 0.01 * 57e-6;

  private static final List<Departure> ALL =
      List.of(
          new Departure.Arc(),
          new Departure.Ends(End.BOTH, 0.12),
          new Departure.Along(),
          new Departure.Across(),
          new Departure.Tilt(),
          new Departure.Strip(0.2));

  private static PassPlan plan(double beta) {
    PassPlan.Coat one = PassPlan.Coat.even(0, STEP, FAN, HEIGHT, 0.005, 0.02, 0.01);
    PassPlan.Coat two = PassPlan.Coat.even(0.05, STEP, FAN, HEIGHT, 0.005, 0.02, 0.01);
    return new PassPlan(
        WIDTH, HEIGHT, List.of(one, two), Estimate.of(FAN, 0.01), Estimate.of(beta, 0.1));
  }

  @Test
  void even_passes_leave_what_the_sum_of_passes_leaves() {
    PassPlan plan = plan(2);
    StrokeModel model = new StrokeModel(plan, List.of());
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    double each = 57e-6 * STEP / FAN / 2;
    CoatField field = field(plan, each, Stroke.steady());
    for (double y = 0.01; y < HEIGHT; y += 0.037) {
      assertThat(model.at(p).film(0.2, y)).isCloseTo(field.filmAt(0.2, y), within(BLUR));
      assertThat(model.sharp().at(p).film(0.2, y)).isCloseTo(field.filmAt(0.2, y), within(SHARP));
    }
  }

  @Test
  void an_arc_widens_the_fan_and_loses_film_as_the_sum_of_passes_does() {
    PassPlan plan = plan(2);
    StrokeModel model = new StrokeModel(plan, List.of(new Departure.Arc()));
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    p[model.first()] = 0.3;
    double farther = Math.pow(0.7, -1 / 2.5);
    Stroke arc =
        new Stroke() {
          @Override
          public double distance(double x) {
            double out = 2 * x / WIDTH - 1;
            return Math.sqrt(1 + (farther * farther - 1) * out * out);
          }

          @Override
          public double deposit(double x) {
            return Math.pow(distance(x), -2.5);
          }
        };
    CoatField field = field(plan, 57e-6 * STEP / FAN / 2, arc);
    for (double x = 0.01; x < WIDTH; x += 0.05) {
      assertThat(model.at(p).film(x, 0.2)).isCloseTo(field.filmAt(x, 0.2), within(BLUR));
    }
  }

  private static CoatField field(PassPlan plan, double each, Stroke stroke) {
    return new CoatField(
        plan.coats().stream()
            .flatMap(c -> c.centrelines().stream())
            .map(y -> new Pass(y, FAN, each, FanProfile.parabola(), stroke))
            .toList());
  }

  @Test
  void slopes_are_those_of_small_differences() {
    for (double beta : new double[] {1.6, 2, 3}) {
      slopesAreThoseOfSmallDifferences(new StrokeModel(plan(beta), ALL));
      slopesAreThoseOfSmallDifferences(new StrokeModel(plan(beta), ALL).sharp());
    }
  }

  private static void slopesAreThoseOfSmallDifferences(StrokeModel model) {
    Random chance = new Random(4);
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    for (int i = 1; i < p.length; i++) {
      p[i] = 0.02 * chance.nextDouble();
    }
    p[model.first()] = 0.2;
    for (int place = 0; place < 40; place++) {
      double x = WIDTH * chance.nextDouble();
      double y = HEIGHT * chance.nextDouble();
      StrokeModel.At at = model.at(p);
      double film = at.film(x, y);
      for (int i = 0; i < p.length; i++) {
        double[] up = p.clone();
        double[] down = p.clone();
        double h = 1e-6;
        up[i] += h;
        down[i] -= h;
        double slope = (model.at(up).film(x, y) - model.at(down).film(x, y)) / (2 * h);
        assertThat(at.slopes[i])
            .as("parameter %d at beta %s, %s, %s", i, model.plan().beta(), x, y)
            .isCloseTo(slope, within(film * 1e-3));
      }
    }
  }

  @Test
  void the_slope_by_one_pass_is_that_of_its_height() {
    PassPlan plan = plan(2);
    StrokeModel model = new StrokeModel(plan, List.of());
    double[] p = new double[model.parameters()];
    StrokeModel.At at = model.at(p);
    double film = at.film(0.3, 0.21);
    double sum = 0;
    double all = 0;
    for (int i = 0; i < plan.passes(); i++) {
      sum += at.byHeight[i];
      all += at.ofPass[i];
    }
    assertThat(all).isCloseTo(film, within(1e-12));
    assertThat(sum)
        .isCloseTo(at.slopes[StrokeModel.SHIFT] + at.slopes[StrokeModel.SHIFT + 1], within(1e-9));
  }
}
