package lapline.practice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import lapline.practice.FilmField;
import lapline.practice.FilmField.Area;
import lapline.practice.PanelOutline;
import lapline.practice.PanelOutline.Feature;
import lapline.practice.PanelOutline.Point;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class FilmFieldEstimateTest {
  private static final PanelOutline PANEL = Panels.outline(6, 5);
  private static final double U = 1e-6;

  @Test
  void an_even_film_is_mapped_even() {
    FilmField field = of((x, y) -> 57e-6);
    assertThat(field.film()).allSatisfy(f -> assertThat(f).isCloseTo(57e-6, within(0.01e-6)));
    assertThat(field.mean()).isCloseTo(57e-6, within(0.2e-6));
    assertThat(field.shareInside()).isGreaterThan(0.99);
    assertThat(field.shareHigh()).isEqualTo(1);
    assertThat(field.areas()).isEmpty();
  }

  @Test
  void a_film_that_rises_evenly_is_mapped_so_between_the_places_and_to_the_edges() {
    DoubleBinaryOperator rise = (x, y) -> 45e-6 + 20e-6 * x + 30e-6 * y;
    FilmField field = of(rise);
    eachCell(
        field, (x, y, film) -> assertThat(film).isCloseTo(rise.applyAsDouble(x, y), within(U)));
  }

  @Test
  void a_curved_film_is_met_between_places_to_within_the_gauge() {
    DoubleBinaryOperator bowl =
        (x, y) -> 60e-6 - 60e-6 * Math.pow(x - Panels.WIDTH / 2, 2) - 40e-6 * y * y;
    FilmField field = of(bowl);
    eachCell(
        field, (x, y, film) -> assertThat(film).isCloseTo(bowl.applyAsDouble(x, y), within(2 * U)));
  }

  @Test
  void three_places_give_a_flat_map_and_an_open_share() {
    FilmField field =
        FilmFieldEstimate.of(
                PANEL,
                Map.of(
                    1, Estimate.of(50e-6, U), 2, Estimate.of(56e-6, U), 3, Estimate.of(62e-6, U)),
                Panels.CLEAR)
            .field();
    assertThat(field.film()).allSatisfy(f -> assertThat(f).isCloseTo(56e-6, within(1e-12)));
    assertThat(field.shareLow()).isZero();
    assertThat(field.shareHigh()).isEqualTo(1);
    assertThat(field.shareInside()).isBetween(0.5, 0.95);
  }

  @Test
  void no_place_is_refused() {
    assertThatThrownBy(() -> FilmFieldEstimate.of(PANEL, Map.of(), Panels.CLEAR))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void the_grid_keeps_to_its_limits_and_leaves_out_what_is_no_panel() {
    PanelOutline door =
        new PanelOutline(
            1.2,
            0.4,
            List.of(new Point(0, 0), new Point(1.2, 0), new Point(1.2, 0.4)),
            PANEL.places(),
            List.of(
                new Feature(
                    "handle",
                    "aperture",
                    "Handle",
                    List.of(
                        new Point(0.9, 0.1),
                        new Point(1.1, 0.1),
                        new Point(1.1, 0.2),
                        new Point(0.9, 0.2)))));
    FilmField field = FilmFieldEstimate.of(door, film((x, y) -> 57e-6), Panels.CLEAR).field();
    assertThat(field.columns()).isEqualTo(40);
    assertThat(field.rows()).isEqualTo(13);
    long on = field.film().stream().filter(f -> !f.isNaN()).count();
    assertThat(on / 520.0).isCloseTo(0.5 - 0.02 / 0.48, within(0.03));
  }

  @Test
  void a_thin_lower_edge_is_named_with_how_much() {
    FilmField field = of((x, y) -> y < 0.1 ? 38e-6 : 57e-6);
    Area worst = field.areas().get(0);
    assertThat(worst.where()).isEqualTo("area.lower-edge");
    assertThat(worst.thin()).isTrue();
    assertThat(worst.by()).isCloseTo(12e-6, within(3e-6));
    assertThat(worst.shareOfPanel()).isBetween(0.1, 0.4);
  }

  @Test
  void areas_are_named_by_where_they_lie() {
    assertThat(first((x, y) -> x < 0.15 && y > 0.3 ? 80e-6 : 57e-6))
        .isEqualTo("area.upper-left-corner");
    assertThat(first((x, y) -> x > 0.5 ? 40e-6 : 57e-6)).isEqualTo("area.right-end");
    assertThat(first((x, y) -> Math.hypot(x - 0.3, y - 0.23) < 0.09 ? 80e-6 : 57e-6))
        .isEqualTo("area.middle");
    assertThat(first((x, y) -> Math.abs(y - 0.23) < 0.06 ? 40e-6 : 57e-6))
        .isEqualTo("area.band-across");
    assertThat(first((x, y) -> 30e-6)).isEqualTo("area.whole-panel");
  }

  @Test
  void both_ends_are_two_areas_worst_first() {
    FilmField field = of((x, y) -> x < 0.1 ? 35e-6 : x > 0.5 ? 42e-6 : 57e-6);
    assertThat(field.areas())
        .extracting(Area::where)
        .containsExactly("area.left-end", "area.right-end");
  }

  @Test
  void the_same_readings_give_the_same_field() {
    assertThat(of((x, y) -> 50e-6 + 10e-6 * x)).isEqualTo(of((x, y) -> 50e-6 + 10e-6 * x));
  }

  @Test
  void a_range_open_at_one_end_works() {
    FilmField field =
        FilmFieldEstimate.of(PANEL, film((x, y) -> 57e-6), TargetRange.atLeast(50e-6)).field();
    assertThat(field.shareInside()).isGreaterThan(0.99);
  }

  @Test
  void a_stray_far_off_counts_for_nothing_and_one_that_is_hardly_off_for_as_much_as_any() {
    FilmField slip = stray(161e-6);
    assertThat(slip.setAside()).containsExactly(8);
    assertThat(slip.places()).hasSize(30);
    assertThat(slip.counted()).hasSize(29);
    assertThat(slip.film()).allSatisfy(f -> assertThat(f).isCloseTo(57e-6, within(0.1e-6)));
    assertThat(slip.shareInside()).isGreaterThan(0.99);
    assertThat(stray(1561e-6).setAside()).containsExactly(8);
    assertThat(stray(1561e-6).film()).isEqualTo(slip.film());
    FilmField near = stray(59e-6);
    assertThat(near.setAside()).isEmpty();
    assertThat(near.film()).isEqualTo(of(at(8, 59e-6)).film());
  }

  /** Nobody says that it strays: then the film is as rough as that. */
  @Test
  void a_reading_far_off_that_some_stroke_explains_is_film_like_any_other() {
    FilmField rough = of(at(8, 161e-6));
    assertThat(rough.setAside()).isEmpty();
    assertThat(rough.areas().get(0).thin()).isFalse();
    assertThat(rough.shareInside()).isLessThan(0.9);
  }

  @Test
  void the_share_does_not_jump_while_a_reading_turns_into_a_stray() {
    double before = 1;
    for (double film = 57; film < 120; film += 0.5) {
      double share = stray(film * 1e-6).shareInside();
      assertThat(Math.abs(share - before)).as("at %.1f µm", film).isLessThan(0.03);
      before = share;
    }
  }

  private static FilmField stray(double film) {
    return FilmFieldEstimate.of(PANEL, film(at(8, film)), Set.of(8), Panels.CLEAR).field();
  }

  /** 57 µm everywhere but at one place. */
  private static DoubleBinaryOperator at(int place, double film) {
    PanelOutline.Place there = PANEL.places().get(place - 1);
    return (x, y) -> x == there.x() && y == there.y() ? film : 57e-6;
  }

  private static String first(DoubleBinaryOperator film) {
    return of(film).areas().get(0).where();
  }

  private static FilmField of(DoubleBinaryOperator film) {
    return FilmFieldEstimate.of(PANEL, film(film), Panels.CLEAR).field();
  }

  private static Map<Integer, Estimate> film(DoubleBinaryOperator film) {
    Map<Integer, Estimate> byPlace = new TreeMap<>();
    PANEL
        .places()
        .forEach(p -> byPlace.put(p.number(), Estimate.of(film.applyAsDouble(p.x(), p.y()), U)));
    return byPlace;
  }

  private interface Cell {
    void at(double x, double y, double film);
  }

  private static void eachCell(FilmField field, Cell check) {
    for (int i = 0; i < field.film().size(); i++) {
      double x = (i % field.columns() + 0.5) / field.columns() * field.width();
      double y = (i / field.columns() + 0.5) / field.rows() * field.height();
      check.at(x, y, field.film().get(i));
    }
  }
}
