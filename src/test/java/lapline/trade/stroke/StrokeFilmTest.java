package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.stroke.StrokeFilm.Change;
import org.junit.jupiter.api.Test;

/** The kept film is the fitted one, and changes of it are those of the trade's arithmetic. */
class StrokeFilmTest {
  private static final PassPlan PLAN = plan();

  private static PassPlan plan() {
    PassPlan.Coat coat = PassPlan.Coat.even(0.4, 0.07, 0.23, 0.4, 0.006, 0.05, 0.02);
    return new PassPlan(
        0.6, 0.4, List.of(coat, coat), Estimate.of(0.23, 0.01), Estimate.of(2.2, 0.3));
  }

  private static StrokeFilm even() {
    StrokeModel model = new StrokeModel(PLAN, List.of());
    double[] p = new double[model.parameters()];
    p[StrokeModel.LEVEL] = Math.log(57e-6);
    return FilmNumbers.of(model, p);
  }

  @Test
  void it_is_the_models_film_whatever_departs() {
    List<Departure> all =
        List.of(
            new Departure.Arc(),
            new Departure.Tilt(),
            new Departure.Along(),
            new Departure.Across(),
            new Departure.Ends(Departure.End.LEFT, 0.12),
            new Departure.Strip(0.13),
            new Departure.Outermost(Departure.Edge.LOWER, 0.03));
    StrokeModel model = new StrokeModel(PLAN, all);
    Random chance = new Random(5);
    for (int sample = 0; sample < 20; sample++) {
      double[] p = new double[model.parameters()];
      p[StrokeModel.LEVEL] = Math.log(57e-6);
      for (int i = 1; i < p.length; i++) {
        p[i] =
            0.3 * chance.nextDouble() * (i < StrokeModel.SHIFT ? 0.3 : i < model.first() ? 0.1 : 1);
      }
      StrokeFilm film = FilmNumbers.of(model, p);
      StrokeModel.At at = model.at(p);
      for (int i = 0; i < 30; i++) {
        double x = 0.6 * chance.nextDouble();
        double y = 0.4 * chance.nextDouble();
        assertThat(film.at(x, y)).isCloseTo(at.film(x, y), within(1e-15));
      }
    }
  }

  @Test
  void no_change_changes_nothing() {
    StrokeFilm film = even();
    assertThat(film.with(film.asItWas())).isEqualTo(film);
  }

  /** Film goes as one over speed and as one over the step; common practice, and conservation. */
  @Test
  void twice_the_speed_is_half_the_film_and_half_the_step_twice() {
    StrokeFilm film = even();
    double mean = mean(film);
    assertThat(mean(film.with(new Change(film.step(), 1, 2, 0, 2))))
        .isCloseTo(mean / 2, within(1e-9));
    StrokeFilm closer = film.with(new Change(film.step() / 2, 1, 1, 0, 2));
    assertThat(mean(closer)).isCloseTo(2 * mean, within(0.01 * mean));
    assertThat(mean(film.with(new Change(film.step(), 1, 1, 0, 3))))
        .isCloseTo(1.5 * mean, within(1e-9));
  }

  /** By the course's assumption three tenths of the paint miss from twice the distance. */
  @Test
  void from_twice_the_distance_less_paint_arrives_in_a_wider_fan() {
    StrokeFilm film = even();
    StrokeFilm far = film.with(new Change(film.step(), 2, 1, 0, 2));
    assertThat(far.fanWidth()).isCloseTo(2 * film.fanWidth(), within(1e-12));
    assertThat(far.level()).isCloseTo(0.7 * film.level(), within(1e-12));
  }

  @Test
  void an_arc_takes_its_share_at_the_ends() {
    StrokeFilm film = even();
    StrokeFilm arc = film.with(new Change(film.step(), 1, 1, 0.3, 2));
    assertThat(arc.at(0.3, 0.2)).isCloseTo(film.at(0.3, 0.2), within(1e-12));
    assertThat(arc.at(0, 0.2) / film.at(0, 0.2)).isCloseTo(0.7, within(0.02));
  }

  @Test
  void what_no_hand_does_is_refused() {
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new Change(bad, 1, 1, 0, 2)).hasMessageContaining("step");
      assertThatThrownBy(() -> new Change(0.1, bad, 1, 0, 2)).hasMessageContaining("distance");
      assertThatThrownBy(() -> new Change(0.1, 1, bad, 0, 2)).hasMessageContaining("speed");
    }
    assertThatThrownBy(() -> new Change(0.1, 1, 1, 0.9, 2))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("missingAtEnds");
    assertThatThrownBy(() -> new Change(0.1, 1, 1, 0, 0)).hasMessageContaining("coats");
  }

  private static double mean(StrokeFilm film) {
    double sum = 0;
    for (int i = 0; i < 200; i++) {
      sum += film.at(0.3, 0.4 * (i + 0.5) / 200);
    }
    return sum / 200;
  }
}
