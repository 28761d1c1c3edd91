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
    private static final int PARTS_TOLD_FROM = 2;

    /** An end that was searched for and is a whole number may come out so much beside it. */
    private static final double HAIR = 1e-9;

    /** Whole coats needed, 1 or more. */
    public int coats() {
      return Math.max(1, (int) Math.ceil(film.value()));
    }

    /**
     * Between these numbers of coats, parts counted, lies what hides; half of the doubt on either
     * side. Within the first two coats no part is told, for there ln(1 − C) is far from straight:
     * an end below 2 is the whole number beyond.
     *
     * <p>Simulated in the tests, at 95 %: 94 to 96 % where more than two coats are needed and the
     * readings are sure to 0.2 or 0.4 %. At least 95 % is what it states of one or two coats, since
     * "all of the second coat" is the narrowest that is said and holds every number within, and of
     * readings that are sure to 0.8 % only (up to 97 %), for more than full hiding cannot be.
     *
     * @param confidence 0.5 to 0.998
     */
    public Interval interval(double confidence) {
      Valid.between("confidence", confidence, 0.5, 0.998);
      double doubt = (1 - confidence) / 2;
      double least = readings.coatsAt(doubt);
      double most = readings.coatsAt(1 - doubt);
      return new Interval(
          least < PARTS_TOLD_FROM ? Math.floor(least + HAIR) : least,
          most < PARTS_TOLD_FROM ? Math.max(1, Math.ceil(most - HAIR)) : most);
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
