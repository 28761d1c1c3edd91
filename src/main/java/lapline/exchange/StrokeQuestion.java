package lapline.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Valid;
import lapline.trade.stroke.FilmAt;
import lapline.trade.stroke.StrokeRecord;
import lapline.trade.stroke.WrittenPasses;

/**
 * A sprayed panel as a program describes it; lengths and film in metres, shares from 0 to 1.
 *
 * @param overlap what was meant
 * @param coats in the order sprayed
 * @param distances as they were measured; may be left out
 */
public record StrokeQuestion(
    Panel panel,
    Fan fan,
    Overlap overlap,
    List<Coat> coats,
    Bow distances,
    List<FilmReading> readings) {
  private static final int MOST_COATS = 6;
  private static final int MOST_READINGS = 500;
  private static final double FAN_UNCERTAINTY = 0.04;
  private static final double STEP_UNCERTAINTY = 0.003;
  private static final double FIRST_UNCERTAINTY = 0.005;

  /** Width along the strokes, height across them. */
  public record Panel(double width, double height) {}

  /** Its uncertainty may be left out: 4 % of the width. */
  public record Fan(double width, Double standardUncertainty) {
    Estimate estimate() {
      double u = standardUncertainty == null ? FAN_UNCERTAINTY * width : standardUncertainty;
      return Estimate.of(width, u);
    }
  }

  /** {@code least} may be left out: what was meant, less 0.05. */
  public record Overlap(double meant, Double least) {}

  /**
   * @param first from the upper edge down to the middle of the first pass, known to 5 mm; less than
   *     0 above it; may be left out
   * @param steps from each pass to the next, the upper one first; may be left out
   * @param standardUncertainty of one step; 3 mm where it is left out
   */
  public record Coat(Double first, List<Double> steps, Double standardUncertainty) {
    Map<Integer, Estimate> byPass() {
      Map<Integer, Estimate> byPass = new HashMap<>();
      if (first != null) {
        byPass.put(1, Estimate.of(first, FIRST_UNCERTAINTY));
      }
      for (int i = 0; steps != null && i < steps.size(); i++) {
        double u = standardUncertainty == null ? STEP_UNCERTAINTY : standardUncertainty;
        wanted("coats.steps", steps.get(i));
        byPass.put(i + 2, Estimate.of(steps.get(i), u));
      }
      return byPass;
    }
  }

  /** Distance at the ends of the strokes over that in their middle, less 1. */
  public record Bow(double bow, double standardUncertainty) {}

  /** From the lower left corner of the panel. */
  public record FilmReading(double x, double y, double film, double standardUncertainty) {}

  WrittenPasses passes() {
    wanted("panel", panel);
    wanted("fan", fan);
    wanted("overlap", overlap);
    wanted("coats", coats);
    Valid.positive("fan.width", fan.width());
    Valid.between("overlap.meant", overlap.meant(), 0, 0.95);
    Valid.between("coats", coats.size(), 1, MOST_COATS);
    coats.forEach(coat -> wanted("coats", coat));
    return new WrittenPasses(
        panel.width(),
        panel.height(),
        fan.estimate(),
        fan.width() * (1 - overlap.meant()),
        coats.stream().map(Coat::byPass).toList());
  }

  StrokeRecord record() {
    WrittenPasses passes = passes();
    double least = overlap.least() == null ? Math.max(0, overlap.meant() - 0.05) : overlap.least();
    return passes.record(
        least,
        Optional.ofNullable(distances).map(d -> Estimate.of(d.bow(), d.standardUncertainty())));
  }

  List<FilmAt> film() {
    wanted("readings", readings);
    Valid.between("readings", readings.size(), 0, MOST_READINGS);
    List<FilmAt> film = new ArrayList<>();
    for (FilmReading r : readings) {
      wanted("readings", r);
      film.add(new FilmAt(r.x(), r.y(), r.film(), r.standardUncertainty()));
    }
    return film;
  }

  private static void wanted(String member, Object given) {
    if (given == null) {
      throw new RefusedException(400, "exchange.wrong-member", member);
    }
  }
}
