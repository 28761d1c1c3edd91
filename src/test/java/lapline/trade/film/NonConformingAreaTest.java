package lapline.trade.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import lapline.trade.film.NonConformingArea.Place;
import lapline.trade.film.NonConformingArea.Spot;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

/**
 * SSPC-PA 2 on the magnitude of a non-conforming area: spots 1.5 m apart in eight directions, each
 * until two in a row conform, all within 1.5 m of a bad one non-conforming; from memory. Areas by
 * hand.
 */
class NonConformingAreaTest {
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);
  private static final FilmReadings GOOD = Micrometres.readings("56 57 58");
  private static final FilmReadings THIN = Micrometres.readings("38 39 40");
  private static final double CIRCLE = Math.PI * 1.5 * 1.5;

  /** In the middle of a wall of 12.5 by 8 m, as large as may be searched. */
  private static NonConformingArea wall() {
    return NonConformingArea.about(new Place(6, 4), CLEAR, 12.5, 8);
  }

  /** Reads whatever is asked for until nothing is. */
  private static NonConformingArea searched(NonConformingArea from, Predicate<Place> thin) {
    NonConformingArea search = from;
    while (!search.next().isEmpty()) {
      Spot spot = search.next().get(0);
      search = search.with(spot.direction(), thin.test(spot.at()) ? THIN : GOOD);
    }
    return search;
  }

  private static int spots(NonConformingArea search) {
    return search.read().stream().mapToInt(List::size).sum();
  }

  @Test
  void the_first_spots_lie_a_step_away_in_eight_directions() {
    List<Spot> first = wall().next();

    assertThat(first).extracting(Spot::direction).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
    assertThat(first).allSatisfy(s -> assertThat(fromMiddle(s.at())).isCloseTo(1.5, within(1e-12)));
    assertThat(first.get(0).at()).isEqualTo(new Place(7.5, 4));
    assertThat(first.get(2).at().x()).isCloseTo(6, within(1e-12));
    assertThat(first.get(2).at().y()).isCloseTo(5.5, within(1e-12));
    assertThat(first.get(3).at().x()).isCloseTo(6 - 1.5 / Math.sqrt(2), within(1e-12));
    assertThat(first.get(3).at().y()).isCloseTo(4 + 1.5 / Math.sqrt(2), within(1e-12));
  }

  private static double fromMiddle(Place at) {
    return Math.hypot(at.x() - 6, at.y() - 4);
  }

  @Test
  void a_spot_that_fails_alone_takes_sixteen_good_ones_and_its_own_circle() {
    NonConformingArea search = searched(wall(), at -> false);

    assertThat(spots(search)).isEqualTo(16);
    assertThat(search.nonConforming()).containsExactly(new Place(6, 4));
    assertThat(search.area()).isCloseTo(CIRCLE, within(1e-3));
  }

  @Test
  void one_good_spot_does_not_end_a_direction() {
    NonConformingArea search = wall().with(0, GOOD).with(0, THIN).with(0, GOOD);

    assertThat(search.next()).contains(new Spot(0, new Place(12, 4)));
    assertThat(search.with(0, GOOD).next()).extracting(Spot::direction).doesNotContain(0);
    assertThat(search.nonConforming()).containsExactly(new Place(6, 4), new Place(9, 4));
  }

  /** A band of thin film across: centres 1.5 m apart along a line, each circle of radius 1.5 m. */
  @Test
  void a_band_is_followed_to_both_its_ends() {
    NonConformingArea search =
        searched(wall(), at -> Math.abs(at.y() - 4) < 0.1 && Math.abs(at.x() - 6) < 4);

    assertThat(search.nonConforming()).hasSize(5);
    // each circle after the first adds itself less the lens of two circles a radius apart
    double lens = 1.5 * 1.5 * (2 * Math.PI / 3 - Math.sqrt(3) / 2);
    assertThat(search.area()).isCloseTo(5 * CIRCLE - 4 * lens, within(4e-3));
  }

  /** 49 µm keeps the 80 % of an acceptance at level 3, and 66 µm its 120 %. */
  @Test
  void no_allowance_is_made_for_single_spots() {
    for (String outside : List.of("49 49 49", "66 66 66")) {
      assertThat(wall().with(4, Micrometres.readings(outside)).nonConforming()).hasSize(2);
    }
    for (String limit : List.of("50 50 50", "65 65 65")) {
      assertThat(wall().with(4, Micrometres.readings(limit)).nonConforming()).hasSize(1);
    }
  }

  @Test
  void a_direction_ends_with_the_surface_and_a_corner_has_three() {
    NonConformingArea corner = NonConformingArea.about(new Place(0, 0), CLEAR, 12.5, 8);

    assertThat(corner.next()).extracting(Spot::direction).containsExactly(0, 1, 2);
    assertThat(corner.area()).isCloseTo(CIRCLE / 4, within(1e-3));
    // 8 m up there is room for 5 spots, as far up aslant for 7, 12.5 m along for 8
    assertThat(spots(searched(corner, at -> true))).isEqualTo(5 + 7 + 8);
  }

  /** Two steps to the right and two up lie on the very rim of 3 by 3 m, and two aslant. */
  @Test
  void a_spot_on_the_rim_is_on_the_surface() {
    for (Place corner : List.of(new Place(0, 0), new Place(3, 3), new Place(0, 3))) {
      NonConformingArea rim = NonConformingArea.about(corner, CLEAR, 3, 3);

      assertThat(spots(searched(rim, at -> true))).isEqualTo(2 + 2 + 2);
    }
  }

  @Test
  void a_practice_panel_has_no_room_for_a_search_and_is_all_of_it() {
    NonConformingArea panel = NonConformingArea.about(new Place(0.3, 0.2), CLEAR, 0.6, 0.4);

    assertThat(panel.next()).isEmpty();
    assertThat(panel.area()).isCloseTo(0.24, within(1e-9));
  }

  @Test
  void more_than_a_hundred_square_metres_are_not_searched() {
    assertThatThrownBy(() -> NonConformingArea.about(new Place(6, 4), CLEAR, 12.6, 8))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("width * height")
        .hasMessageContaining("100");
  }

  @Test
  void what_is_not_asked_for_is_refused() {
    NonConformingArea settled = wall().with(0, GOOD).with(0, GOOD);

    for (int direction : new int[] {0, -1, 8}) {
      assertThatThrownBy(() -> settled.with(direction, GOOD))
          .isInstanceOf(MeasureException.class)
          .hasMessageContaining("direction");
    }
    assertThatThrownBy(() -> wall().with(1, Micrometres.readings("56 57")))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("readings in a spot");
  }
}
