package lapline.trade.hiding;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * How many whole coats a checker card took until it no longer showed, as far as was seen; not the
 * coats that were sprayed.
 */
public sealed interface CoatsToHiding {

  /**
   * Probability that the whole number of coats needed lies in a range; empty where the card was
   * still showing and more coats might or might not have done.
   */
  OptionalDouble probabilityWithin(TargetRange range);

  /**
   * The card was seen after one coat and not after the next, so the film that hides lies between
   * them.
   *
   * @param coats the first after which nothing was seen, and nothing later; 1 or more
   */
  record Vanished(int coats) implements CoatsToHiding {
    public Vanished {
      Valid.between("coats", coats, 1, Integer.MAX_VALUE);
    }

    /**
     * Where between the two coats hiding lies, taken as even over the interval; twice the standard
     * uncertainty either way is a little more than all of it.
     */
    public Estimate film() {
      return Estimate.of(coats - 0.5, 1 / Math.sqrt(12));
    }

    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      return OptionalDouble.of(range.contains(coats) ? 1 : 0);
    }
  }

  /**
   * The contrast ratio crossed the mark of hiding.
   *
   * @param film where it did, in coats, parts of a coat counted; its uncertainty is to first order
   *     and good for a rough figure only
   * @param readings what the probabilities and the interval are read from
   */
  record Crossed(Estimate film, ContrastCurve readings) implements CoatsToHiding {

    /** Whole coats needed, 1 or more. */
    public int coats() {
      return Math.max(1, (int) Math.ceil(film.value()));
    }

    /**
     * Between these numbers of coats, parts counted, lies what hides; half of the doubt on either
     * side. Within the first coat no part is told, for there ln(1 − C) is far from straight: the
     * interval begins at 0 and ends at 1 rather than in between.
     *
     * <p>Simulated in the tests, at 95 %: 94 to 96 % where more than one coat is needed and the
     * readings are sure to 0.2 or 0.4 %; up to 97 % where they are sure to 0.8 %, for more than
     * full hiding cannot be; down to 92 % where two coats are needed and they are sure to a
     * thousandth, since the line between two coats is then the larger error, and one that more
     * coats would show but better readings do not; where one coat does, at least 95 %, for "all of
     * the first coat" is the narrowest that is said and holds every lesser number.
     *
     * @param confidence 0.5 to 0.998
     */
    public Interval interval(double confidence) {
      Valid.between("confidence", confidence, 0.5, 0.998);
      double doubt = (1 - confidence) / 2;
      double least = readings.coatsAt(doubt);
      return new Interval(least < 1 ? 0 : least, Math.max(1, readings.coatsAt(1 - doubt)));
    }

    /** n coats are needed when n hide and n − 1 do not. */
    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      return OptionalDouble.of(within(range, readings::hiddenBy));
    }
  }

  /**
   * Computed from what one film of the paint scatters and absorbs, and the film of a coat.
   *
   * @param film number of coats that hides, parts counted, normal about its value
   */
  record Computed(Estimate film) implements CoatsToHiding {

    /** Whole coats needed, 1 or more. */
    public int coats() {
      return Math.max(1, (int) Math.ceil(film.value()));
    }

    /** n coats are needed when hiding lies between n − 1 and n; everything up to 1 needs one. */
    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      return OptionalDouble.of(
          within(range, n -> Conformance.probability(film, TargetRange.atMost(n))));
    }
  }

  /**
   * A range of numbers of coats, parts counted.
   *
   * @param least 0 or more
   * @param most least or more
   */
  record Interval(double least, double most) {}

  /**
   * The card still showed after the last coat.
   *
   * @param coats how many were looked at, 1 or more; more are needed
   */
  record StillShowing(int coats) implements CoatsToHiding {
    public StillShowing {
      Valid.between("coats", coats, 1, Integer.MAX_VALUE);
    }

    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      boolean excluded = Math.floor(range.most()) <= coats;
      boolean anyMore = !range.hasMost() && range.least() <= coats + 1;
      return excluded
          ? OptionalDouble.of(0)
          : anyMore ? OptionalDouble.of(1) : OptionalDouble.empty();
    }
  }

  /** The probability of a whole number in a range from that of each number being enough. */
  private static double within(TargetRange range, DoubleUnaryOperator enough) {
    double least = Math.max(1, Math.ceil(range.least()));
    double most = Math.floor(range.most());
    if (most < least) {
      return 0;
    }
    double atMost = range.hasMost() ? enough.applyAsDouble(most) : 1;
    return Math.max(0, atMost - (least <= 1 ? 0 : enough.applyAsDouble(least - 1)));
  }
}
