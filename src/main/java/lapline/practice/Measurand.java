package lapline.practice;

import java.util.List;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;

/**
 * A quantity that can be written down about a panel, as listed in {@code
 * curriculum/measurands.yaml}; not a criterion, which is a target on it.
 *
 * @param id its key in files and readings, such as {@code film-after}
 * @param label what the person sees, from the content file
 * @param hint how to take the reading, one short sentence
 * @param spoken the units it is spoken of in: what a bare number is in, and what it is shown in
 * @param between whether it lies between a coat or pass and the one before, such as a wait or a
 *     step: the first has none and is not asked for it
 * @param possible the range outside which a reading cannot be true, in SI
 * @param standardUncertainty of one reading with the usual instrument, absolute part, in SI
 * @param relativeUncertainty of one reading, as a share of its value; adds in quadrature
 * @param options for {@link Dimension#CHOICE}: what may be chosen, with the number it is kept as
 */
public record Measurand(
    String id,
    String label,
    String hint,
    SpokenUnits spoken,
    Scope scope,
    boolean between,
    double possibleLeast,
    double possibleMost,
    double standardUncertainty,
    double relativeUncertainty,
    String uncertaintySource,
    List<Option> options) {

  /** What kind of thing it measures. */
  public Dimension dimension() {
    return spoken.dimension();
  }

  /** One choice of a choice measurand; {@code value} 0 is 'as it should be'. */
  public record Option(String id, String label, double value) {}

  /** Standard uncertainty of one reading of this value, in SI. */
  public double uncertaintyAt(double value) {
    return Math.hypot(standardUncertainty, relativeUncertainty * value);
  }
}
