package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import lapline.trade.spray.CoatField;
import lapline.trade.spray.FanProfile;
import lapline.trade.spray.Pass;
import lapline.trade.spray.Stroke;
import lapline.trade.stroke.Departure.Edge;
import lapline.trade.stroke.Departure.End;
import org.junit.jupiter.api.Test;

/** Against the sum of passes in {@code trade.spray}, and against the model with its blurred rim. */
class SharpFilmTest {
  private static final double WIDTH = 0.61;
  private static final double HEIGHT = 0.46;
  private static final double FAN = 0.23;
  private static final double STEP = 0.08;

  /** The model's fan has a blurred rim: 3 % of the film where passes overlap by half. */
  private static final double BLUR = 0.03;

  private static final List<Departure> ALL =
      List.of(
          new Departure.Arc(),
          new Departure.Ends(End.BOTH, 0.12),
          new Departure.Along(),
          new Departure.Across(),
          new Departure.Tilt(),
          new Departure.Strip(0.2),
          new Departure.Outermost(Edge.UPPER, STEP));

  private static PassPlan plan() {
    PassPlan.Coat one = PassPlan.Coat.even(0, STEP, FAN, HEIGHT, 0.005, 0.02, 0.01);
    PassPlan.Coat two = PassPlan.Coat.even(0.05, STEP, FAN, HEIGHT, 0.003, 0.02, 0.01);
    return new PassPlan(
        WIDTH, HEIGHT, List.of(one, two), Estimate.of(FAN, 0.01), Estimate.of(2, 0.1));
  }

  private static double[] chance(PassPlan plan, long seed) {
    Random random = new Random(seed);
    return random.doubles(2L * plan.passes(), -1.5, 1.5).toArray();
  }

  @Test
  void passes_where_chance_put_them_leave_what_the_sum_of_passes_leaves() {
    PassPlan plan = plan();
    StrokeModel model = new StrokeModel(plan, List.of());
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    p[StrokeModel.SHIFT] = 0.013;
    double[] chance = chance(plan, 1);
    double[] moves = HandScatter.moves(plan, chance);
    List<Pass> passes = new ArrayList<>();
    int n = 0;
    for (int coat = 0; coat < 2; coat++) {
      for (double y : plan.coats().get(coat).centrelines()) {
        double each = 57e-6 * plan.meanStep() / FAN / 2 * (1 + 0.03 * chance[plan.passes() + n]);
        double there = y + moves[n] + p[StrokeModel.SHIFT + coat];
        passes.add(new Pass(there, FAN, each, FanProfile.parabola(), Stroke.steady()));
        n++;
      }
    }
    CoatField field = new CoatField(passes);
    SharpFilm film = new SharpFilm(model, p, chance);
    for (double y = 0.01; y < HEIGHT; y += 0.037) {
      assertThat(film.at(0.2, y)).isCloseTo(field.filmAt(0.2, y), within(1e-12));
    }
  }

  @Test
  void whatever_the_hand_did_it_is_the_models_film_but_for_the_rim() {
    PassPlan plan = plan();
    StrokeModel model = new StrokeModel(plan, ALL);
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    p[StrokeModel.STEP] = 0.03;
    p[StrokeModel.FAN] = -0.02;
    p[StrokeModel.SHAPE] = 0.1;
    for (int i = model.first(); i < p.length; i++) {
      p[i] = 0.15;
    }
    double[] chance = chance(plan, 2);
    SharpFilm film = new SharpFilm(model, p, chance);
    StrokeModel.At blurred = model.moved(HandScatter.moves(plan, chance)).at(p);
    for (double x = 0.02; x < WIDTH; x += 0.11) {
      for (double y = 0.01; y < HEIGHT; y += 0.037) {
        double there = blurred.film(x, y);
        for (int k = 0; k < plan.passes(); k++) {
          there += blurred.ofPass[k] * 0.03 * chance[plan.passes() + k];
        }
        assertThat(film.at(x, y)).isCloseTo(there, within(BLUR * there));
      }
    }
  }
}
