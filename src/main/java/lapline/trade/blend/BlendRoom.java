package lapline.trade.blend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Gum;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A primer spot on its panel and the room that a blend has to fade out in before it meets the
 * panel's edge.
 *
 * <p>A coat's outline is all that lies within its reach of the primer's edge. Positions of primer
 * and panel are taken as exact; only reaches carry uncertainty. Curves are drawn with 64 pieces to
 * the quarter turn, within 0.01 % of the reach.
 *
 * @param panel its outer edge
 * @param primer the edge of the repair, inside the panel
 */
public record BlendRoom(Outline panel, Outline primer) {
  private static final int PIECES = 64;

  public BlendRoom {
    if (!panel.polygon().covers(primer.polygon())) {
      throw new MeasureException("primer", primer.area(), "an area inside the panel");
    }
  }

  /**
   * What is left between a coat and one edge of the panel.
   *
   * @param edge number of the panel's edge, from 1, counted from its first corner
   * @param from one end of that edge, {@code to} the other
   * @param left metres; negative where the coat runs over the edge
   */
  public record EdgeRoom(int edge, Corner from, Corner to, Estimate left) {}

  /**
   * Room to every edge of the panel, in the order of its corners.
   *
   * @param reach of the coat past the primer's edge, metres, 0 or more
   */
  public List<EdgeRoom> toEachEdge(Estimate reach) {
    Valid.notNegative("reach", reach.value());
    return IntStream.range(0, panel.corners().size()).mapToObj(i -> room(i, reach)).toList();
  }

  /**
   * Room to the nearest edge of the panel.
   *
   * @param reach metres, 0 or more
   */
  public EdgeRoom least(Estimate reach) {
    return toEachEdge(reach).stream()
        .min(Comparator.comparingDouble(r -> r.left().value()))
        .orElseThrow();
  }

  /** Distance from the primer's edge to the nearest edge of the panel, metres. */
  public double primerToEdge() {
    return least(Estimate.of(0, 0)).left().value();
  }

  /**
   * Edge of a coat that reaches so far past the primer, cut off at the panel.
   *
   * @param reach metres, 0 or more
   */
  public Outline coat(double reach) {
    return Outline.of(largest(covered(reach)));
  }

  /**
   * Share of the panel's area that such a coat covers, 0 to 1.
   *
   * @param reach metres, 0 or more
   */
  public double shareCovered(double reach) {
    return covered(reach).getArea() / panel.area();
  }

  private Geometry covered(double reach) {
    Valid.notNegative("reach", reach);
    return primer.polygon().buffer(reach, PIECES).intersection(panel.polygon());
  }

  /** A panel with a notch may cut a coat in pieces; the one with the primer is the largest. */
  private static Polygon largest(Geometry covered) {
    List<Polygon> pieces = new ArrayList<>();
    for (int i = 0; i < covered.getNumGeometries(); i++) {
      if (covered.getGeometryN(i) instanceof Polygon piece) {
        pieces.add(piece);
      }
    }
    return pieces.stream().max(Comparator.comparingDouble(Polygon::getArea)).orElseThrow();
  }

  private EdgeRoom room(int edge, Estimate reach) {
    List<Corner> corners = panel.corners();
    Corner from = corners.get(edge);
    Corner to = corners.get((edge + 1) % corners.size());
    Estimate away = Estimate.of(primer.polygon().distance(line(from, to)), 0);
    return new EdgeRoom(edge + 1, from, to, Gum.difference(away, reach));
  }

  private static LineString line(Corner from, Corner to) {
    return Outline.GEOMETRY.createLineString(
        new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
  }
}
