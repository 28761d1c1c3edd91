package lapline.trade.blend;

import java.util.Collection;
import lapline.trade.measure.MeasureException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * A body line or crease that a panel's clear may stop at. Clear fades out nowhere on an open face;
 * it runs to the panel's edges or to such a break.
 *
 * @param from one end, on or beyond the panel's edge
 * @param to the other end, on or beyond the panel's edge, somewhere else
 */
public record PanelBreak(Corner from, Corner to) {

  /**
   * @throws MeasureException when both ends are the same place
   */
  public PanelBreak {
    if (from.equals(to)) {
      throw new MeasureException("length of the break", 0, "more than 0");
    }
  }

  /**
   * The clear on one side of a break.
   *
   * @param area outline of what is cleared
   * @param share of the panel's area, 0 to 1
   * @param coversColour whether all colour lies under it; where it does not, the clear has to go to
   *     the panel's edge
   */
  public record Clear(Outline area, double share, boolean coversColour) {}

  /**
   * The clear from this break over the side on which the repair lies.
   *
   * @param room the panel and the repair
   * @param colour outline of the last colour coat
   * @throws MeasureException when the break does not part the panel in two, or runs through the
   *     repair
   */
  public Clear clear(BlendRoom room, Outline colour) {
    Collection<Polygon> sides = sides(room.panel().polygon());
    if (sides.size() < 2) {
      throw new MeasureException("sides of the break", sides.size(), "2 or more");
    }
    Polygon side =
        sides.stream()
            .filter(s -> holds(s, room.primer().polygon()))
            .findFirst()
            .orElseThrow(
                () -> new MeasureException("distance from break to repair", 0, "more than 0"));
    return new Clear(
        Outline.of(side), side.getArea() / room.panel().area(), holds(side, colour.polygon()));
  }

  /** All of one inside the other but what rounding cuts off, a hundredth of a square millimetre. */
  private static boolean holds(Polygon side, Polygon part) {
    return part.difference(side).getArea() <= 1e-8;
  }

  private Collection<Polygon> sides(Polygon panel) {
    LineString line =
        Outline.GEOMETRY.createLineString(
            new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
    Geometry lines = panel.getExteriorRing().union(line);
    Polygonizer parted = new Polygonizer();
    parted.add(lines);
    @SuppressWarnings("unchecked")
    Collection<Polygon> polygons = parted.getPolygons();
    return polygons;
  }
}
