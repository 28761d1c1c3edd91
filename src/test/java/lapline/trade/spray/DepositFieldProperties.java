package lapline.trade.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import lapline.Samples;
import org.junit.jupiter.api.Test;

/** The quick field says what the plain sum says, and loses no paint. */
class DepositFieldProperties {

  private static FanProfile profile(RandomGenerator chance) {
    return switch (chance.nextInt(4)) {
      case 0 -> FanProfile.uniform();
      case 1 -> FanProfile.beta(1.2 + 3 * chance.nextDouble());
      case 2 -> FanProfile.measured(chance.doubles(6, 0, 1).map(d -> d + 0.1).boxed().toList());
      default -> new HeeledProfile(FanProfile.parabola(), new Heel(0.3 * chance.nextDouble(), 0.4));
    };
  }

  private static Stroke stroke(RandomGenerator chance) {
    return switch (chance.nextInt(4)) {
      case 0 -> Stroke.steady();
      case 1 -> Stroke.arcing(chance.nextDouble(), 0.4);
      case 2 -> Stroke.triggered(0.1 * chance.nextDouble(), 0.5 + chance.nextDouble());
      default -> Stroke.drifting(0, 1, 0.8 + chance.nextDouble(), 0.6 + chance.nextDouble());
    };
  }

  private static CoatField coat(RandomGenerator chance) {
    List<Pass> passes = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      double middle = 1.4 * chance.nextDouble() - 0.4;
      double width = 0.05 + 0.3 * chance.nextDouble();
      passes.add(
          new Pass(middle, width, 2e-5 * chance.nextDouble(), profile(chance), stroke(chance)));
    }
    return new CoatField(passes);
  }

  @Test
  void every_place_has_the_film_of_the_plain_sum() {
    Samples.each(
        60,
        chance -> {
          CoatField coat = coat(chance);
          FilmGrid grid =
              new FilmGrid(
                  -0.2 * chance.nextDouble(),
                  -0.2 * chance.nextDouble(),
                  0.1 + chance.nextDouble(),
                  0.1 + chance.nextDouble(),
                  1 + chance.nextInt(40),
                  1 + chance.nextInt(40));
          DepositField field = coat.on(grid);
          for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
              double plain = coat.filmAt(grid.x(column), grid.y(row));
              assertThat(field.at(column, row)).isCloseTo(plain, within(1e-12 * plain));
            }
          }
        });
  }

  /** A whole pass on the grid: its film times area is what its stroke laid down. */
  @Test
  void the_film_over_the_plane_is_the_paint_that_was_laid_down() {
    Samples.each(
        40,
        chance -> {
          double from = 0.1 + 0.2 * chance.nextDouble();
          double to = 0.5 + 0.4 * chance.nextDouble();
          Pass pass =
              Pass.steady(0.4 + 0.2 * chance.nextDouble(), 0.3, 2e-5, profile(chance))
                  .by(Stroke.triggered(from, to));
          double laid = 2e-5 * 0.3 * (to - from);
          double found =
              new CoatField(List.of(pass)).on(FilmGrid.ofPanel(1, 1, 1000, 1000)).volume();
          // an end within a cell counts as at its middle: two ends each way
          assertThat(found / laid).isCloseTo(1, within(1e-3 / (to - from) + 4e-3));
        });
  }

  /**
   * Flow, time and losses of a whole coat against the film of its field: two ways to one volume.
   */
  @Test
  void a_coat_holds_the_solids_that_left_the_gun_and_arrived() {
    Samples.each(
        20,
        chance -> {
          MassBalance paint = new MassBalance(2.5e-6, 0.5 + 0.4 * chance.nextDouble(), 0.4);
          double speed = 0.3 + 0.4 * chance.nextDouble();
          double spacing = 0.04 + 0.06 * chance.nextDouble();
          StrokePlan plan =
              new StrokePlan(paint, new Fan(0.2, 0.2), profile(chance), 0.2, speed, spacing);
          double stroke = 0.8;
          List<Pass> passes =
              plan.coat(0.2, 5).passes().stream()
                  .map(p -> p.by(Stroke.triggered(0.1, 0.1 + stroke)))
                  .toList();
          double onPanel = new CoatField(passes).on(FilmGrid.ofPanel(1, 1, 500, 2000)).volume();
          double sprayed = PaintUse.ofCoat(paint.flow(), 5, stroke, speed);
          PaintUse use = PaintUse.of(sprayed, 0.4, paint.transferEfficiency(), 500);
          assertThat(onPanel / use.dryOnPanel()).isCloseTo(1, within(8e-3));
        });
  }

  @Test
  void two_coats_leave_the_sum_and_order_does_not_matter() {
    Samples.each(
        20,
        chance -> {
          CoatField first = coat(chance);
          CoatField second = coat(chance);
          FilmGrid grid = FilmGrid.ofPanel(0.7, 0.6, 13, 17);
          double[] both = first.then(second).on(grid).film();
          double[] other = second.then(first).on(grid).film();
          for (int i = 0; i < both.length; i++) {
            double sum = first.on(grid).film()[i] + second.on(grid).film()[i];
            assertThat(both[i]).isCloseTo(sum, within(1e-12 * sum));
            assertThat(other[i]).isCloseTo(sum, within(1e-12 * sum));
          }
        });
  }

  @Test
  void a_pass_turned_about_its_middle_turns_its_film() {
    Samples.each(
        40,
        chance -> {
          FanProfile shape = FanProfile.beta(1 + 4 * chance.nextDouble());
          Pass pass = Pass.steady(0.5, 0.3, 1e-5, shape);
          DepositField field = new CoatField(List.of(pass)).on(FilmGrid.ofPanel(1, 1, 3, 80));
          for (int row = 0; row < 40; row++) {
            assertThat(field.at(1, row)).isCloseTo(field.at(1, 79 - row), within(1e-16));
          }
        });
  }
}
