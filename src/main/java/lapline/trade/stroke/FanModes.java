package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import lapline.trade.measure.Estimate;

/**
 * How else the fan may have been: a wider one over passes that lie a little otherwise may leave
 * nearly the same film, and where the passes have settled about one width the other is out of
 * sight. So they are settled anew about a fan that is much narrower and one that is much wider;
 * what comes back to the same width is the same again.
 *
 * <p>By simulation, 70 % overlap in two coats, 54 to 108 places: the mean square of the overlap's
 * error is 6 to 12 % less with them. With 36 places, where draws begin about them, 2 % more to 3 %
 * less, and rather more of it is stated.
 */
final class FanModes {
  /** How far off, in standard uncertainties of the fan that was written down. */
  private static final double AWAY = 4;

  /** Widths that differ by less than this, in standard uncertainties, are the same one. */
  private static final double SAME = 0.7;

  /** Share of what a blurred rim leaves unsure, as squares; chosen by simulation of five tasks. */
  private static final double BLURRED = 0.4;

  private FanModes() {}

  /**
   * All {@link StrokeFit#settled()}, and what the first of them is about other fans.
   *
   * @param fits the likely ones of one plan, the likeliest first
   */
  static List<StrokeFit> settled(List<StrokeFit> fits) {
    StrokeFit first = fits.get(0);
    return with(fits.stream().map(StrokeFit::settled).toList(), first::settledAbout);
  }

  /** {@link StrokeFit#sharp()} first, then what it is about other fans. */
  private static List<StrokeFit> sharp(StrokeFit fit) {
    return with(List.of(fit.sharp()), fit::sharpAbout);
  }

  private static List<StrokeFit> with(List<StrokeFit> fits, DoubleFunction<StrokeFit> about) {
    StrokeFit first = fits.get(0);
    double off = AWAY * Priors.standardDeviations(first.model())[StrokeModel.FAN];
    double same = SAME * first.uncertainty(StrokeModel.FAN);
    List<StrokeFit> modes = new ArrayList<>(fits);
    for (double far : new double[] {-off, off}) {
      StrokeFit other = about.apply(fan(first) + far);
      if (modes.stream().allMatch(m -> Math.abs(fan(m) - fan(other)) > same)) {
        modes.add(other);
      }
    }
    return modes;
  }

  private static double fan(StrokeFit of) {
    return of.parameters()[StrokeModel.FAN];
  }

  /**
   * 1 − step / fan width of the passes over the panel: the median by a fan with a sharp rim. Over
   * what the passes may have strayed the film of a sharp rim is no straight line, so that it is not
   * as sure as it says; a blurred one is surer than it says.
   */
  static Estimate overlap(StrokeFit fit) {
    FittedOverlap first = new FittedOverlap(fit.sharp());
    double leans = first.median() - first.likeliest().value();
    double blurred = new FittedOverlap(fit.settled()).likeliest().standardUncertainty();
    Mixture mixture = new Mixture();
    for (StrokeFit mode : sharp(fit)) {
      double weight = Math.exp(mode.logEvidence() - fit.sharp().logEvidence());
      Estimate likeliest = new FittedOverlap(mode).likeliest();
      double unsure = between(blurred, likeliest.standardUncertainty());
      mixture.add(Estimate.of(likeliest.value() + leans, unsure), weight);
    }
    return mixture.estimate();
  }

  private static double between(double blurred, double sharp) {
    return Math.sqrt(BLURRED * blurred * blurred + (1 - BLURRED) * sharp * sharp);
  }
}
