package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lapline.practice.fit.FilmPattern.Meaning;

/**
 * The patterns that wrong technique leaves on one panel, from the deposit model: every form of
 * every cause that this panel and these passes could show.
 */
final class FilmPatterns {
  /** A deposit pattern smaller than this share of the mean film cannot be seen on a panel. */
  private static final double VISIBLE = 0.03;

  /** Wrist or elbow to panel; course assumption, the shape hardly depends on it. */
  private static final double REACH = 0.6;

  /** Steps between passes that are tried where they were not written down, in fan widths. */
  private static final double[] STEPS = {0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1};

  private final double width;
  private final double height;
  private final Technique technique;
  private final List<FilmPattern> found = new ArrayList<>();

  private FilmPatterns(double width, double height, Technique technique) {
    this.width = width;
    this.height = height;
    this.technique = technique;
  }

  static List<FilmPattern> on(double width, double height, Technique technique) {
    FilmPatterns patterns = new FilmPatterns(width, height, technique);
    patterns.drifts();
    patterns.arcing();
    patterns.strokeEnds();
    patterns.panelEdges();
    patterns.oneStep();
    patterns.writtenSteps();
    patterns.everyStep();
    return List.copyOf(patterns.found);
  }

  private void drifts() {
    found.add(
        FilmPattern.of(
            new Meaning(Cause.DRIFT_ALONG, ".right"),
            new Meaning(Cause.DRIFT_ALONG, ".left"),
            (x, y) -> x / width,
            0));
    found.add(
        FilmPattern.of(
            new Meaning(Cause.DRIFT_ACROSS, ".upper"),
            new Meaning(Cause.DRIFT_ACROSS, ".lower"),
            (x, y) -> y / height,
            0));
  }

  /** cos³ of the angle from the wrist, which stays opposite the middle of the stroke. */
  private void arcing() {
    double ends = cosCubed(width / 2);
    Shape middleThick = (x, y) -> (cosCubed(x - width / 2) - ends) / (1 - ends);
    found.add(FilmPattern.of(new Meaning(Cause.ARCING, ""), null, middleThick, 0).upTo(0.7));
  }

  private static double cosCubed(double along) {
    double cos = REACH / Math.hypot(REACH, along);
    return cos * cos * cos;
  }

  private void strokeEnds() {
    for (double share : new double[] {0.15, 0.25}) {
      double length = share * width;
      DoubleUnaryOperator fade = d -> d < length ? (1 - d / length) * (1 - d / length) : 0;
      end(".both", (x, y) -> fade.applyAsDouble(Math.min(x, width - x)));
      end(".left", (x, y) -> fade.applyAsDouble(x));
      end(".right", (x, y) -> fade.applyAsDouble(width - x));
    }
  }

  private void end(String form, Shape shape) {
    found.add(
        FilmPattern.of(
            new Meaning(Cause.LINGERING, form), new Meaning(Cause.TRIGGER_EARLY, form), shape, 1));
  }

  /** A stroke too few or too many along an edge, on it or a quarter of a fan beyond. */
  private void panelEdges() {
    for (double beyond : new double[] {0, 0.25}) {
      double out = beyond * technique.fanWidth();
      Shape lower = strokeAt(-out);
      Shape upper = strokeAt(height + out);
      edge(".lower", lower);
      edge(".upper", upper);
      found.add(
          new FilmPattern(
              new Meaning(Cause.EDGES_HEAVY, ".both"),
              new Meaning(Cause.EDGES_THIN, ".both"),
              List.of(lower, upper),
              1,
              1,
              Double.NaN));
    }
  }

  private void edge(String form, Shape shape) {
    found.add(
        FilmPattern.of(
            new Meaning(Cause.EDGES_HEAVY, form), new Meaning(Cause.EDGES_THIN, form), shape, 1));
  }

  /** One stroke's worth more or less somewhere between: one step too narrow or too wide. */
  private void oneStep() {
    double fan = technique.fanWidth();
    for (double y0 = fan / 3; y0 <= height - fan / 3; y0 += fan / 8) {
      found.add(
          FilmPattern.of(
                  new Meaning(Cause.SPACING_UNEVEN, ".thick"),
                  new Meaning(Cause.SPACING_UNEVEN, ".thin"),
                  strokeAt(y0),
                  1)
              .at(y0));
    }
  }

  private Shape strokeAt(double y0) {
    double fan = technique.fanWidth();
    double peak = Deposit.UPRIGHT.stroke(0);
    return (x, y) -> Deposit.UPRIGHT.stroke(2 * (y - y0) / fan) / peak;
  }

  /** The steps as written down against even ones, first pass on the lower or the upper edge. */
  private void writtenSteps() {
    if (technique.gaps().size() < 3) {
      return;
    }
    WrittenSteps upwards = new WrittenSteps(technique);
    double size = upwards.size(height);
    if (size < VISIBLE) {
      return;
    }
    Meaning uneven = new Meaning(Cause.SPACING_UNEVEN, ".written");
    Shape fromBelow = (x, y) -> upwards.at(y) / size;
    Shape fromAbove = (x, y) -> upwards.at(height - y) / size;
    found.add(FilmPattern.of(uneven, null, fromBelow, 0).upTo(2 * size));
    found.add(FilmPattern.of(uneven, null, fromAbove, 0).upTo(2 * size));
  }

  private void everyStep() {
    if (technique.spacingKnown()) {
      everyStep(technique.spacing(), 0);
    }
    for (double step : STEPS) {
      everyStep(step * technique.fanWidth(), 1);
    }
  }

  private void everyStep(double spacing, int searched) {
    ripple(spacing, searched);
    // which edge the first pass lay on is picked as well
    tilt(spacing, searched + 1, 0);
    tilt(spacing, searched + 1, height);
  }

  /** The ripple's first harmonic, at any phase: where the first pass lay is not known. */
  private void ripple(double spacing, int searched) {
    double size = Deposit.UPRIGHT.ripple(spacing, technique.fanWidth());
    if (size >= VISIBLE) {
      double turn = 2 * Math.PI / spacing;
      found.add(
          new FilmPattern(
              new Meaning(Cause.SPACING_WIDE, ""),
              null,
              List.of((x, y) -> Math.cos(turn * y), (x, y) -> Math.sin(turn * y)),
              searched,
              1.6 * size,
              spacing));
    }
  }

  /**
   * Heeled passes against upright ones, the first centred on the edge at {@code first}. Where the
   * passes overlap much, heel cannot be seen in the film at all.
   */
  private void tilt(double spacing, int searched, double first) {
    double fan = technique.fanWidth();
    double size = heelSize(spacing, fan);
    if (size < VISIBLE) {
      return;
    }
    Shape shape =
        (x, y) ->
            (Deposit.HEELED.passes(y - first, spacing, fan)
                    - Deposit.UPRIGHT.passes(y - first, spacing, fan))
                / size;
    found.add(
        FilmPattern.of(
                new Meaning(Cause.TILT, ".lower"),
                new Meaning(Cause.TILT, ".upper"),
                shape,
                searched)
            .upTo(2.5 * size)
            .at(spacing));
  }

  private static double heelSize(double spacing, double fan) {
    double least = 0;
    double most = 0;
    for (int i = 0; i < 16; i++) {
      double y = spacing * i / 16;
      double d = Deposit.HEELED.passes(y, spacing, fan) - Deposit.UPRIGHT.passes(y, spacing, fan);
      least = Math.min(least, d);
      most = Math.max(most, d);
    }
    return most - least;
  }
}
