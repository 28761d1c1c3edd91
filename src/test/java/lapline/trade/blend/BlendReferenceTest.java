package lapline.trade.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lapline.trade.measure.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The geometry of a blend against closed forms of geometry; no standard has figures of blends. */
class BlendReferenceTest {

  private static Outline outline(String corners) {
    return new Outline(
        Arrays.stream(corners.split(" "))
            .map(c -> c.split(";"))
            .map(c -> new Corner(Double.parseDouble(c[0]), Double.parseDouble(c[1])))
            .toList());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "steiner.csv", useHeadersInDisplayName = true)
  void a_coat_covers_what_lies_within_its_reach(String corners, double reach, double area) {
    BlendRoom room = new BlendRoom(Outline.rectangle(0, 0, 3, 3), outline(corners));

    double close = 1.01e-4 * Math.PI * reach * reach;
    assertThat(room.coat(reach).area()).isCloseTo(area, within(close));
    assertThat(room.shareCovered(reach)).isCloseTo(area / 9, within(close / 9));
  }

  /**
   * A coat that runs over a straight edge loses a strip and two half segments of a circle: w (r −
   * d) + r² arccos(d / r) − d √(r² − d²), the segment as in any handbook of mathematics.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.11, 0.15, 0.25})
  void an_edge_cuts_a_strip_and_two_half_segments_off(double r) {
    double d = 0.1;
    double w = 0.2;
    BlendRoom room =
        new BlendRoom(Outline.rectangle(0, 0, 2, 2), Outline.rectangle(0.8, d, 0.8 + w, d + 0.1));

    double whole = w * 0.1 + 2 * (w + 0.1) * r + Math.PI * r * r;
    double cut = w * (r - d) + r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d);
    assertThat(room.coat(r).area()).isCloseTo(whole - cut, within(1.01e-4 * Math.PI * r * r));
  }

  /** Hesse's normal form: a corner at (0.3, 0.3) from the line 3 x + 4 y = 12 is 9.9 / 5 away. */
  @Test
  void room_to_a_slanting_edge_is_the_distance_of_a_point_from_a_line() {
    Outline triangle = new Outline(List.of(new Corner(0, 0), new Corner(4, 0), new Corner(0, 3)));
    BlendRoom room = new BlendRoom(triangle, Outline.rectangle(0.1, 0.1, 0.3, 0.3));

    assertThat(room.toEachEdge(Estimate.of(0, 0)).get(1).left().value())
        .isCloseTo(9.9 / 5, within(1e-12));
  }
}
