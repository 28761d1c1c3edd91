package lapline.practice.pages;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.pages.drawing.Point;
import lapline.practice.PanelOutline;

/**
 * The panel beside the fields, in millimetres with y downwards as SVG has it: outline, features and
 * the numbered places, each of which can be lit.
 *
 * @param figure height of a place's number, so that it reads the same on any panel
 */
public record EntryDrawing(
    double width,
    double height,
    double figure,
    String outline,
    List<Part> parts,
    List<Spot> spots) {

  /** Radius of a place's circle, in heights of its number. */
  private static final double CIRCLE = 0.95;

  public record Part(String kind, String label, String corners) {}

  /**
   * @param letterX where its number or letter stands, which is beside the place where that is taken
   */
  public record Spot(int number, double x, double y, double letterX, double letterY, String name) {
    public boolean isBeside() {
      return letterX != x || letterY != y;
    }

    /** What stands in the drawing. */
    public String label() {
      return PanelOutline.nameOf(number);
    }
  }

  public static EntryDrawing of(PanelOutline panel) {
    return of(
        panel,
        panel.places().stream().map(PanelOutline.Place::number).collect(toUnmodifiableSet()));
  }

  /**
   * @param read the places that are read; of further ones no other stands in the drawing
   */
  static EntryDrawing of(PanelOutline panel, Set<Integer> read) {
    double height = panel.height();
    List<PanelOutline.Point> edge =
        panel.outline().isEmpty() ? box(panel.width(), height) : panel.outline();
    return new EntryDrawing(
        millimetres(panel.width()),
        millimetres(height),
        figure(panel),
        corners(edge, height),
        panel.features().stream()
            .map(f -> new Part(f.kind(), f.label(), corners(f.corners(), height)))
            .toList(),
        spots(
            panel.places().stream()
                .filter(p -> !PanelOutline.isFurther(p.number()) || read.contains(p.number()))
                .toList(),
            panel));
  }

  private static double figure(PanelOutline panel) {
    return millimetres(Math.max(panel.width(), panel.height())) / 18;
  }

  private static List<Spot> spots(List<PanelOutline.Place> places, PanelOutline panel) {
    double figure = figure(panel);
    SpotLetters room =
        new SpotLetters(
            CIRCLE * figure, millimetres(panel.width()), millimetres(panel.height()), figure);
    List<Spot> spots = new ArrayList<>();
    for (PanelOutline.Place p : ownFirst(places)) {
      Point at = new Point(millimetres(p.x()), millimetres(panel.height() - p.y()));
      Point letter = PanelOutline.isFurther(p.number()) ? room.letter(at) : room.number(at);
      spots.add(new Spot(p.number(), at.x(), at.y(), letter.x(), letter.y(), p.name()));
    }
    return spots;
  }

  private static List<PanelOutline.Place> ownFirst(List<PanelOutline.Place> places) {
    return places.stream()
        .sorted(Comparator.comparing(p -> PanelOutline.isFurther(p.number())))
        .toList();
  }

  /** Radius of a place's circle. */
  public double circle() {
    return CIRCLE * figure;
  }

  /** The drawing's frame with room for the edge's stroke and the numbers near it. */
  public String viewBox() {
    return String.format(
        Locale.ROOT,
        "%.1f %.1f %.1f %.1f",
        -figure,
        -figure,
        width + 2 * figure,
        height + 2 * figure);
  }

  private static List<PanelOutline.Point> box(double width, double height) {
    return List.of(
        new PanelOutline.Point(0, 0),
        new PanelOutline.Point(width, 0),
        new PanelOutline.Point(width, height),
        new PanelOutline.Point(0, height));
  }

  private static String corners(List<PanelOutline.Point> points, double height) {
    return points.stream()
        .map(
            p ->
                String.format(
                    Locale.ROOT, "%.1f,%.1f", millimetres(p.x()), millimetres(height - p.y())))
        .collect(Collectors.joining(" "));
  }

  private static double millimetres(double metres) {
    return metres * 1000;
  }
}
