package lapline.practice;

import java.util.List;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.SpokenUnits;

/**
 * A sentence still to be written out in a person's language and units: either a message key with
 * its arguments, or a text from a content file.
 *
 * @param key message key; empty when {@code text} is already written
 * @param text words from a content file; empty when {@code key} is used
 */
public record Phrase(String key, String text, List<Arg> args) {

  /**
   * An argument: a word, or a quantity in SI that is shown in the person's units.
   *
   * @param degreesOfFreedom of the uncertainty; null where it is taken as known
   * @param spoken the units it is spoken of in; null for the usual ones of the dimension
   * @param end which end of a range the quantity is; null for a value
   */
  public record Arg(
      String word,
      Double value,
      Double standardUncertainty,
      Double degreesOfFreedom,
      Dimension dimension,
      SpokenUnits spoken,
      End end) {

    public Arg {
      spoken = spoken == null && dimension != null ? SpokenUnits.usual(dimension) : spoken;
    }

    /** The quantity with its uncertainty; only where it has one. */
    public Estimate estimate() {
      return Estimate.of(value, standardUncertainty, degreesOfFreedom);
    }
  }

  /** An end of a range: what is wanted at the least, or at the most. */
  public enum End {
    LEAST,
    MOST
  }

  public static Phrase message(String key, Arg... args) {
    return new Phrase(key, "", List.of(args));
  }

  public static Phrase written(String text) {
    return new Phrase("", text, List.of());
  }

  public static Arg word(String word) {
    return new Arg(word, null, null, null, null, null, null);
  }

  public static Arg quantity(double value, Dimension dimension) {
    return new Arg(null, value, null, null, dimension, null, null);
  }

  public static Arg quantity(Estimate estimate, Dimension dimension) {
    return quantity(estimate, SpokenUnits.usual(dimension));
  }

  public static Arg quantity(Estimate estimate, SpokenUnits spoken) {
    return new Arg(
        null,
        estimate.value(),
        estimate.standardUncertainty(),
        estimate.keptDegreesOfFreedom(),
        spoken.dimension(),
        spoken,
        null);
  }

  /** An end of a range, shown with the figures that decide. */
  public static Arg limit(double value, End end, SpokenUnits spoken) {
    return new Arg(null, value, null, null, spoken.dimension(), spoken, end);
  }
}
