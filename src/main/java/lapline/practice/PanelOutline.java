package lapline.practice;

import java.util.List;
import java.util.Optional;

/**
 * The practice panel to scale: origin at its lower left corner, x along the stroke, y upwards, all
 * in metres.
 *
 * @param outline corners in order when the panel is not a rectangle; empty for width × height
 * @param places where readings are taken, numbered from 1
 * @param features drawn and named parts: a primer spot, an aperture, a taped edge
 */
public record PanelOutline(
    double width, double height, List<Point> outline, List<Place> places, List<Feature> features) {

  public record Point(double x, double y) {}

  /** A numbered reading place; {@code name} is optional, for places better named than numbered. */
  public record Place(int number, double x, double y, String name) {}

  /**
   * A part of the panel: {@code kind} is {@code spot}, {@code aperture}, {@code edge} or {@code
   * area}.
   */
  public record Feature(String id, String kind, String label, List<Point> corners) {}

  public Optional<Place> place(int number) {
    return places.stream().filter(p -> p.number() == number).findFirst();
  }
}
