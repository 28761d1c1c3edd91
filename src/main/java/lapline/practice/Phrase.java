package lapline.practice;

import java.util.List;
import lapline.trade.measure.Dimension;

/**
 * A sentence still to be written out in a person's language and units: either a message key with
 * its arguments, or a text from a content file.
 *
 * @param key message key; empty when {@code text} is already written
 * @param text words from a content file; empty when {@code key} is used
 */
public record Phrase(String key, String text, List<Arg> args) {

  /** An argument: a word, or a quantity in SI that is shown in the person's units. */
  public record Arg(String word, Double value, Double standardUncertainty, Dimension dimension) {}

  public static Phrase message(String key, Arg... args) {
    return new Phrase(key, "", List.of(args));
  }

  public static Phrase written(String text) {
    return new Phrase("", text, List.of());
  }

  public static Arg word(String word) {
    return new Arg(word, null, null, null);
  }

  public static Arg quantity(double value, Dimension dimension) {
    return new Arg(null, value, null, dimension);
  }

  public static Arg quantity(double value, double standardUncertainty, Dimension dimension) {
    return new Arg(null, value, standardUncertainty, dimension);
  }
}
