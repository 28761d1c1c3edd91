package lapline.trade.film;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * How far a film that failed SSPC-PA 2 reaches: spots are read every 1.5 m in eight directions from
 * the one that failed, each direction until two in a row conform or the surface ends. All within
 * 1.5 m of a spot that does not conform is non-conforming. For up to 100 m²; of more, the standard
 * has every 10 m² of the shift measured instead ({@link SuspectShift}).
 *
 * <p>A spot conforms inside the specified range itself; the 80 and 120 % that an acceptance allows
 * single spots do not hold here. Source: SSPC-PA 2, on the magnitude of a non-conforming area, from
 * memory.
 *
 * @param specified least and most dry film, metres, more than 0; the upper end may be open
 * @param width of the surface coated in one shift, laid out flat, metres, more than 0
 * @param height of it, metres, more than 0; both together at most 100 m²
 * @param failed the spot that failed, on the surface
 * @param read the readings of each further spot, outwards, for each of the eight directions
 */
public record NonConformingArea(
    TargetRange specified,
    double width,
    double height,
    Place failed,
    List<List<FilmReadings>> read) {
  private static final int DIRECTIONS = 8;
  private static final int IN_A_ROW = 2;
  private static final double STEP = 1.5;
  private static final double MOST_AREA = 100;

  /** Takes up rounding only. */
  private static final double HAIR = 1e-9;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Pieces to a quarter circle: 1e-4 of the area. */
  private static final int PIECES = 64;

  public NonConformingArea {
    Valid.positive("specified least", specified.least());
    Valid.positive("width", width);
    Valid.positive("height", height);
    Valid.between("width * height", width * height, 0, MOST_AREA);
    Valid.between("failed x", failed.x, 0, width);
    Valid.between("failed y", failed.y, 0, height);
    Valid.between("directions", read.size(), DIRECTIONS, DIRECTIONS);
    read = read.stream().map(List::copyOf).toList();
    for (FilmReadings spot : read.stream().flatMap(List::stream).toList()) {
      Valid.between("readings in a spot", spot.count(), SspcPa2.READINGS_IN_A_SPOT, 10_000);
    }
  }

  /**
   * A place on the surface, metres from its lower left.
   *
   * @param x to the right, finite
   * @param y upwards, finite
   */
  public record Place(double x, double y) {
    public Place {
      Valid.finite("x", x);
      Valid.finite("y", y);
    }
  }

  /**
   * A spot that is to be read next.
   *
   * @param direction 0 to the right, then every eighth of a turn anticlockwise up to 7
   */
  public record Spot(int direction, Place at) {}

  /** The search at its beginning: one spot failed, no other was read for it. */
  public static NonConformingArea about(
      Place failed, TargetRange specified, double width, double height) {
    return new NonConformingArea(
        specified, width, height, failed, Collections.nCopies(DIRECTIONS, List.of()));
  }

  /** The next spot of each direction that is not settled; none where the extent is known. */
  public List<Spot> next() {
    return IntStream.range(0, DIRECTIONS).mapToObj(this::next).flatMap(Optional::stream).toList();
  }

  private Optional<Spot> next(int direction) {
    List<FilmReadings> outwards = read.get(direction);
    Place at = place(direction, outwards.size() + 1);
    boolean ended = endsConforming(outwards) || !isOnSurface(at);
    return ended ? Optional.empty() : Optional.of(new Spot(direction, at));
  }

  private boolean endsConforming(List<FilmReadings> outwards) {
    int count = outwards.size();
    return count >= IN_A_ROW
        && outwards.subList(count - IN_A_ROW, count).stream().allMatch(this::conforms);
  }

  private boolean conforms(FilmReadings spot) {
    return Limits.notBelow(spot.mean(), specified.least())
        && Limits.notAbove(spot.mean(), specified.most());
  }

  private Place place(int direction, int number) {
    double turn = 2 * Math.PI * direction / DIRECTIONS;
    return new Place(
        failed.x + number * STEP * Math.cos(turn), failed.y + number * STEP * Math.sin(turn));
  }

  private boolean isOnSurface(Place at) {
    return at.x >= -HAIR && at.x <= width + HAIR && at.y >= -HAIR && at.y <= height + HAIR;
  }

  /**
   * The search with one more spot read.
   *
   * @param direction one of those that {@link #next} still asks for
   * @param spot three or more readings within 4 cm
   * @throws MeasureException for any other direction, or fewer readings
   */
  public NonConformingArea with(int direction, FilmReadings spot) {
    if (direction < 0 || direction >= DIRECTIONS || next(direction).isEmpty()) {
      throw new MeasureException("direction", direction, "one in which a spot is still to be read");
    }
    List<List<FilmReadings>> more = new ArrayList<>(read);
    more.set(direction, Stream.concat(read.get(direction).stream(), Stream.of(spot)).toList());
    return new NonConformingArea(specified, width, height, failed, more);
  }

  /** The spots that do not conform, the one that failed first. */
  public List<Place> nonConforming() {
    List<Place> found = new ArrayList<>();
    found.add(failed);
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      for (int i = 0; i < read.get(direction).size(); i++) {
        if (!conforms(read.get(direction).get(i))) {
          found.add(place(direction, i + 1));
        }
      }
    }
    return found;
  }

  /**
   * The part of the surface that is non-conforming as far as spots were read, m²; within 1e-4 of
   * it.
   */
  public double area() {
    List<Geometry> near = nonConforming().stream().map(NonConformingArea::around).toList();
    Geometry surface = GEOMETRY.toGeometry(new Envelope(0, width, 0, height));
    return UnaryUnionOp.union(near).intersection(surface).getArea();
  }

  private static Geometry around(Place spot) {
    return GEOMETRY.createPoint(new Coordinate(spot.x, spot.y)).buffer(STEP, PIECES);
  }
}
