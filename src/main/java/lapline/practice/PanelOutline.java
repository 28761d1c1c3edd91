package lapline.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The practice panel to scale: origin at its lower left corner, x along the stroke, y upwards, all
 * in metres.
 *
 * @param outline corners in order when the panel is not a rectangle; empty for width × height
 * @param places where readings are taken, numbered from 1; further ones from {@link #FURTHER} + 1
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

  /** Numbers above this are those of further places, read when the panel was measured again. */
  public static final int FURTHER = 100;

  /** As many as there are letters for. */
  public static final int MOST_FURTHER = 26;

  /** Whether a place is none of the task's own. */
  public static boolean isFurther(int place) {
    return place > FURTHER;
  }

  /** What a place is called: its number, or for a further place its letter, A first. */
  public static String nameOf(int place) {
    return isFurther(place)
        ? String.valueOf((char) ('A' + place - FURTHER - 1))
        : String.valueOf(place);
  }

  /** The same of several, one after another. */
  public static String namesOf(List<Integer> places) {
    return places.stream().map(PanelOutline::nameOf).collect(Collectors.joining(", "));
  }

  /** The places of the task's own sheet. */
  public List<Place> ownPlaces() {
    return places.stream().filter(p -> !isFurther(p.number())).toList();
  }

  /** Places read beside the task's own. */
  public List<Place> furtherPlaces() {
    return places.stream().filter(p -> isFurther(p.number())).toList();
  }

  /** The same panel with these read beside the task's own. */
  public PanelOutline withFurther(List<Place> further) {
    List<Place> all = new ArrayList<>(ownPlaces());
    all.addAll(further);
    return new PanelOutline(width, height, outline, List.copyOf(all), features);
  }

  public Optional<Place> place(int number) {
    return places.stream().filter(p -> p.number() == number).findFirst();
  }
}
