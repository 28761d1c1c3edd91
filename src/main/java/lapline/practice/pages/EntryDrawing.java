package lapline.practice.pages;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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

  public record Part(String kind, String label, String corners) {}

  public record Spot(int number, double x, double y, String name) {
    /** What stands in the drawing. */
    public String label() {
      return PanelOutline.nameOf(number);
    }
  }

  public static EntryDrawing of(PanelOutline panel) {
    double height = panel.height();
    List<PanelOutline.Point> edge =
        panel.outline().isEmpty() ? box(panel.width(), height) : panel.outline();
    return new EntryDrawing(
        millimetres(panel.width()),
        millimetres(height),
        millimetres(Math.max(panel.width(), height)) / 18,
        corners(edge, height),
        panel.features().stream()
            .map(f -> new Part(f.kind(), f.label(), corners(f.corners(), height)))
            .toList(),
        panel.places().stream()
            .map(
                p ->
                    new Spot(p.number(), millimetres(p.x()), millimetres(height - p.y()), p.name()))
            .toList());
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
