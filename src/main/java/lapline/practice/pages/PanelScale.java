package lapline.practice.pages;

import java.util.List;
import lapline.pages.drawing.Point;
import lapline.practice.PanelOutline;

/** Where a spot of the panel, in metres, lies on a drawing of it, in millimetres of paper. */
record PanelScale(PanelOutline panel, double left, double top, double mmPerMetre) {

  /** The largest scale at which the panel fits the room, and is centred in its width. */
  static PanelScale fitting(
      PanelOutline panel, double left, double top, double width, double most) {
    double scale = Math.min(width / panel.width(), most / panel.height());
    double spare = width - panel.width() * scale;
    return new PanelScale(panel, left + spare / 2, top, scale);
  }

  double x(double metres) {
    return left + metres * mmPerMetre;
  }

  double y(double metres) {
    return top + (panel.height() - metres) * mmPerMetre;
  }

  Point at(double xMetres, double yMetres) {
    return new Point(x(xMetres), y(yMetres));
  }

  double width() {
    return panel.width() * mmPerMetre;
  }

  double height() {
    return panel.height() * mmPerMetre;
  }

  double bottom() {
    return top + height();
  }

  /** The panel's edge; a rectangle where the task draws no other. */
  List<Point> edge() {
    List<PanelOutline.Point> corners =
        panel.outline().isEmpty()
            ? List.of(
                new PanelOutline.Point(0, 0),
                new PanelOutline.Point(panel.width(), 0),
                new PanelOutline.Point(panel.width(), panel.height()),
                new PanelOutline.Point(0, panel.height()))
            : panel.outline();
    return ring(corners);
  }

  List<Point> ring(List<PanelOutline.Point> corners) {
    return corners.stream().map(c -> at(c.x(), c.y())).toList();
  }
}
