package lapline.practice.fit;

import java.util.Arrays;
import java.util.List;
import lapline.practice.fit.FilmPattern.Meaning;

/**
 * One cause in its best form, as fitted to a panel beside the causes that were already in.
 *
 * @param shapes of all that is in the fit: the level first, this pattern's last
 * @param atPlaces the pattern's own shapes at the reading places
 * @param badness its BIC, up to what all rivals share
 * @param support its weight among the rivals, 0 to 1
 */
record Contender(
    Meaning meaning,
    FilmPattern pattern,
    List<Shape> shapes,
    FilmRegression fit,
    double[][] atPlaces,
    double badness,
    double support) {

  Cause cause() {
    return meaning.cause();
  }

  Contender supported(double newSupport) {
    return new Contender(meaning, pattern, shapes, fit, atPlaces, badness, newSupport);
  }

  PatternSize size() {
    return PatternSize.of(atPlaces, amounts(fit, atPlaces.length), fit);
  }

  /** The value of each shape at a point. */
  double[] termsAt(double x, double y) {
    return shapes.stream().mapToDouble(s -> s.at(x, y)).toArray();
  }

  double filmAt(double x, double y) {
    return sum(fit.coefficients(), termsAt(x, y));
  }

  static double sum(double[] coefficients, double[] terms) {
    double sum = 0;
    for (int i = 0; i < terms.length; i++) {
      sum += coefficients[i] * terms[i];
    }
    return sum;
  }

  /** The last so many of the coefficients, which are the pattern's own. */
  static double[] amounts(FilmRegression fit, int count) {
    double[] all = fit.coefficients();
    return Arrays.copyOfRange(all, all.length - count, all.length);
  }
}
