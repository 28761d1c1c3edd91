package lapline.trade.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import org.junit.jupiter.api.Test;

class BlendTest {
  private static final Outline PANEL = Outline.rectangle(0, 0, 0.6, 0.4);
  private static final Outline PRIMER = Outline.rectangle(0.2, 0.15, 0.3, 0.25);
  private static final BlendRoom ROOM = new BlendRoom(PANEL, PRIMER);

  private static StepOut reaches(double... metres) {
    return new StepOut(Arrays.stream(metres).mapToObj(m -> Estimate.of(m, 0.003)).toList());
  }

  @Test
  void each_coat_past_the_one_before_is_a_step() {
    StepOut blend = reaches(0.02, 0.08, 0.14);

    assertThat(blend.steps()).extracting(Estimate::value).satisfies(s -> agree(s, .02, .06, .06));
    assertThat(blend.steps().get(1).standardUncertainty())
        .isCloseTo(0.003 * Math.sqrt(2), within(1e-12));
    assertThat(blend.beyondTheOneBefore()).allSatisfy(p -> assertThat(p).isGreaterThan(0.999));
    assertThat(blend.furthestCoat()).isEqualTo(3);
  }

  private static void agree(List<? extends Double> found, double... wanted) {
    for (int i = 0; i < wanted.length; i++) {
      assertThat(found.get(i)).isCloseTo(wanted[i], within(1e-12));
    }
  }

  @Test
  void a_coat_that_stops_where_the_last_one_did_is_an_even_bet() {
    assertThat(reaches(0.05, 0.05).beyondTheOneBefore().get(0)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void a_coat_that_falls_short_is_found() {
    StepOut blend = reaches(0.02, 0.10, 0.07);

    assertThat(blend.beyondTheOneBefore().get(1)).isLessThan(0.001);
    assertThat(blend.furthest().value()).isEqualTo(0.10);
  }

  @Test
  void room_is_left_to_each_edge_by_hand() {
    List<BlendRoom.EdgeRoom> room = ROOM.toEachEdge(Estimate.of(0.12, 0.003));

    // lower, right, upper, left: 0.15, 0.30, 0.15, 0.20 from the primer, less 0.12
    assertThat(room).extracting(r -> r.left().value()).satisfies(s -> agree(s, .03, .18, .03, .08));
    assertThat(room.get(0).left().standardUncertainty()).isEqualTo(0.003);
    assertThat(ROOM.primerToEdge()).isCloseTo(0.15, within(1e-12));
  }

  @Test
  void a_coat_over_the_edge_has_less_than_no_room() {
    assertThat(ROOM.least(Estimate.of(0.17, 0)).left().value()).isCloseTo(-0.02, within(1e-12));
  }

  @Test
  void a_coat_is_the_primer_with_a_rounded_border() {
    // 0.1 × 0.1 with a border of 0.05: square, four strips, a circle in the corners
    double byHand = 0.01 + 4 * 0.1 * 0.05 + Math.PI * 0.05 * 0.05;

    assertThat(ROOM.coat(0.05).area()).isCloseTo(byHand, within(byHand * 1e-4));
    assertThat(ROOM.shareCovered(0.05)).isCloseTo(byHand / 0.24, within(1e-4));
  }

  @Test
  void a_coat_is_cut_off_at_the_panel() {
    assertThat(ROOM.shareCovered(1)).isCloseTo(1, within(1e-12));
    assertThat(ROOM.coat(1).area()).isCloseTo(0.24, within(1e-12));
  }

  @Test
  void a_panel_need_not_be_a_rectangle() {
    Outline triangle = new Outline(List.of(new Corner(0, 0), new Corner(1, 0), new Corner(0, 1)));
    BlendRoom room = new BlendRoom(triangle, Outline.rectangle(0.1, 0.1, 0.3, 0.3));

    // corner (0.3, 0.3) to the line x + y = 1
    assertThat(room.toEachEdge(Estimate.of(0, 0)).get(1).left().value())
        .isCloseTo(0.4 / Math.sqrt(2), within(1e-12));
  }

  @Test
  void a_primer_spot_outside_the_panel_is_refused() {
    assertThatThrownBy(() -> new BlendRoom(PANEL, Outline.rectangle(0.5, 0.1, 0.7, 0.2)))
        .isInstanceOf(MeasureException.class)
        .hasMessageContaining("primer");
  }

  @Test
  void an_edge_that_crosses_itself_is_refused() {
    assertThatThrownBy(
            () ->
                new Outline(
                    List.of(
                        new Corner(0, 0), new Corner(1, 1), new Corner(1, 0), new Corner(0, 1))))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void the_nearest_edge_is_named_wherever_it_is() {
    BlendRoom high = new BlendRoom(PANEL, Outline.rectangle(0.2, 0.25, 0.3, 0.37));

    assertThat(high.least(Estimate.of(0.01, 0)).edge()).isEqualTo(3);
    assertThat(high.least(Estimate.of(0.01, 0)).left().value()).isCloseTo(0.02, within(1e-12));
    assertThat(high.toEachEdge(Estimate.of(0, 0)).get(0).from()).isEqualTo(new Corner(0, 0));
    assertThat(high.toEachEdge(Estimate.of(0, 0)).get(3).to()).isEqualTo(new Corner(0, 0));
  }

  @Test
  void the_coat_that_reaches_furthest_may_be_the_first_and_of_two_it_is_the_earlier() {
    assertThat(reaches(0.1, 0.05, 0.07).furthestCoat()).isEqualTo(1);
    assertThat(reaches(0.02, 0.1, 0.1).furthestCoat()).isEqualTo(2);
    assertThat(reaches(0.05).furthestCoat()).isEqualTo(1);
    assertThat(reaches(0.05).beyondTheOneBefore()).isEmpty();
  }

  /** A panel like a U: the coat leaps the notch, and what lies beyond it is cut off. */
  @Test
  void of_a_coat_in_pieces_the_one_with_the_primer_is_drawn() {
    Outline notched =
        new Outline(
            List.of(
                new Corner(0, 0),
                new Corner(1, 0),
                new Corner(1, 1),
                new Corner(0.6, 1),
                new Corner(0.6, 0.2),
                new Corner(0.5, 0.2),
                new Corner(0.5, 1),
                new Corner(0, 1)));
    BlendRoom room = new BlendRoom(notched, Outline.rectangle(0.3, 0.7, 0.4, 0.8));

    Outline coat = room.coat(0.25);

    assertThat(coat.corners()).allSatisfy(c -> assertThat(c.x()).isLessThanOrEqualTo(0.5));
    assertThat(room.shareCovered(0.25)).isGreaterThan(coat.area() / notched.area());
  }

  @Test
  void an_outline_does_not_repeat_its_first_corner() {
    List<Corner> corners = ROOM.coat(0.02).corners();

    assertThat(corners).doesNotHaveDuplicates();
    // four corners rounded by 64 pieces each
    assertThat(corners).hasSize(4 * 64 + 4);
  }
}
