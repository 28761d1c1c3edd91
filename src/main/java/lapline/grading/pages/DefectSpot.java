package lapline.grading.pages;

import java.util.Optional;
import lapline.practice.PanelOutline;
import lapline.practice.pages.PhraseWriter;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityReader;
import lapline.trade.measure.ReadQuantity;
import lapline.trade.measure.UnitSystem;

/**
 * Where a defect is meant to be placed: tapped on the drawing, at a numbered place, or measured
 * from the edges.
 */
final class DefectSpot {
  /** A finger beside the drawn edge means the edge; further off it means nothing. */
  private static final double BESIDE = 1.0 / 15;

  private static final String LEFT = "from-left";
  private static final String BELOW = "from-below";

  private final BenchForm form;
  private final PanelOutline panel;
  private final PhraseWriter words;
  private final UnitSystem units;

  DefectSpot(BenchForm form, PanelOutline panel, PhraseWriter words, UnitSystem units) {
    this.form = form;
    this.panel = panel;
    this.words = words;
    this.units = units;
  }

  /** What is wrong, in words, and the field it is about. */
  public record Wrong(String field, String says) {}

  /** Empty when none was given, or not on the panel. */
  Optional<PanelOutline.Point> found() {
    return tapped().or(this::atPlace).or(this::measured);
  }

  /** Why none is found; empty when one is. */
  Optional<Wrong> wrong() {
    if (found().isPresent()) {
      return Optional.empty();
    }
    if (form.text(LEFT).isEmpty() && form.text(BELOW).isEmpty()) {
      return Optional.of(new Wrong("place-number", words.say("grading.bench.spot-missing")));
    }
    return wrong(LEFT, panel.width()).or(() -> wrong(BELOW, panel.height()));
  }

  private Optional<Wrong> wrong(String field, double most) {
    String typed = form.text(field);
    Optional<Double> length = length(typed);
    if (length.filter(l -> l >= 0 && l <= most).isPresent()) {
      return Optional.empty();
    }
    String why = typed.isEmpty() ? ".empty" : length.isEmpty() ? ".no-length" : ".off";
    String key = "grading.bench.wrong-" + field + why;
    return Optional.of(
        new Wrong(field, words.say(key, typed, words.quantity(most, Dimension.LENGTH))));
  }

  private Optional<PanelOutline.Point> tapped() {
    double slack = BESIDE * Math.max(panel.width(), panel.height());
    return BenchForm.number(form.text("tap-x"))
        .flatMap(x -> onto(x, panel.width(), slack))
        .flatMap(
            x ->
                BenchForm.number(form.text("tap-y"))
                    .flatMap(y -> onto(y, panel.height(), slack))
                    .map(y -> new PanelOutline.Point(x, y)));
  }

  /** A tapped distance to the millimetre, which is finer than any finger. */
  private static Optional<Double> onto(double tapped, double most, double slack) {
    return tapped < -slack || tapped > most + slack
        ? Optional.empty()
        : Optional.of(Math.max(0, Math.min(most, Math.round(tapped * 1000) / 1000.0)));
  }

  private Optional<PanelOutline.Point> atPlace() {
    return BenchForm.number(form.text("place-number"))
        .flatMap(n -> panel.place(n.intValue()))
        .map(p -> new PanelOutline.Point(p.x(), p.y()));
  }

  private Optional<PanelOutline.Point> measured() {
    return length(form.text(LEFT))
        .flatMap(x -> length(form.text(BELOW)).map(y -> new PanelOutline.Point(x, y)))
        .filter(this::onPanel);
  }

  private Optional<Double> length(String typed) {
    return QuantityReader.read(typed, Dimension.LENGTH, units)
            instanceof ReadQuantity.Understood understood
        ? Optional.of(understood.si())
        : Optional.empty();
  }

  private boolean onPanel(PanelOutline.Point p) {
    return p.x() >= 0 && p.y() >= 0 && p.x() <= panel.width() && p.y() <= panel.height();
  }
}
