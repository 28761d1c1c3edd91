package lapline.trade.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lapline.trade.measure.MeasureException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The closed edge of a panel or of a primer spot, drawn through its corners.
 *
 * @param corners in order round the edge, at least 3, the first not repeated; the edge must not
 *     cross itself
 */
public record Outline(List<Corner> corners) {
  static final GeometryFactory GEOMETRY = new GeometryFactory();

  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new MeasureException("corners", corners.size(), "3 or more");
    }
    if (!polygon(corners).isValid()) {
      throw new MeasureException(
          "corners", corners.size(), "in order round an edge that does not cross itself");
    }
  }

  /** A rectangle by its sides, metres; left below right and lower below upper. */
  public static Outline rectangle(double left, double lower, double right, double upper) {
    return new Outline(
        List.of(
            new Corner(left, lower),
            new Corner(right, lower),
            new Corner(right, upper),
            new Corner(left, upper)));
  }

  /** Area inside, m². */
  public double area() {
    return polygon().getArea();
  }

  Polygon polygon() {
    return polygon(corners);
  }

  static Outline of(Polygon polygon) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      corners.add(new Corner(ring[i].x, ring[i].y));
    }
    return new Outline(corners);
  }

  private static Polygon polygon(List<Corner> corners) {
    return GEOMETRY.createPolygon(
        Stream.concat(corners.stream(), Stream.of(corners.get(0)))
            .map(c -> new Coordinate(c.x(), c.y()))
            .toArray(Coordinate[]::new));
  }
}
