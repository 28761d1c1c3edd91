package lapline.grading.pages;

import java.util.Optional;
import lapline.practice.PanelOutline;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.UnitSystem;

/**
 * Where a defect is meant to be placed: tapped on the drawing, at a numbered place, or measured
 * from the edges.
 */
final class DefectSpot {
  private final BenchForm form;
  private final PanelOutline panel;
  private final UnitSystem units;

  DefectSpot(BenchForm form, PanelOutline panel, UnitSystem units) {
    this.form = form;
    this.panel = panel;
    this.units = units;
  }

  /** Empty when none was given, or not on the panel. */
  Optional<PanelOutline.Point> found() {
    return tapped().or(this::atPlace).or(this::measured).filter(this::onPanel);
  }

  private Optional<PanelOutline.Point> tapped() {
    return point(BenchForm.number(form.text("tap-x")), BenchForm.number(form.text("tap-y")));
  }

  private Optional<PanelOutline.Point> atPlace() {
    return BenchForm.number(form.text("place-number"))
        .flatMap(n -> panel.place(n.intValue()))
        .map(p -> new PanelOutline.Point(p.x(), p.y()));
  }

  private Optional<PanelOutline.Point> measured() {
    return point(length(form.text("from-left")), length(form.text("from-below")));
  }

  private Optional<Double> length(String typed) {
    return QuantityReader.read(typed, Dimension.LENGTH, units)
            instanceof ReadQuantity.Understood understood
        ? Optional.of(understood.si())
        : Optional.empty();
  }

  private static Optional<PanelOutline.Point> point(Optional<Double> x, Optional<Double> y) {
    return x.flatMap(right -> y.map(up -> new PanelOutline.Point(right, up)));
  }

  private boolean onPanel(PanelOutline.Point p) {
    return p.x() >= 0 && p.y() >= 0 && p.x() <= panel.width() && p.y() <= panel.height();
  }
}
