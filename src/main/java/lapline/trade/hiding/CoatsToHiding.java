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
   * The contrast ratio crossed the mark of hiding, or would with at most one coat more.
   *
   * @param at where it did, in coats, parts of a coat counted; 0 or more
   * @param readings what the probabilities and the interval are read from
   */
  record Crossed(double at, ContrastCurve readings) implements CoatsToHiding {
    private static final int PARTS_TOLD_FROM = 2;

    /** An end that was searched for and is a whole number may come out so much beside it. */
    private static final double HAIR = 1e-6;

    /** What 'value ± expanded uncertainty' is meant to hold. */
    private static final double EXPANDED = 0.9545;

    public Crossed {
      Valid.notNegative("at", at);
    }

    /** Whole coats needed, 1 or more. */
    public int coats() {
      return Math.max(1, (int) Math.ceil(at));
    }

    /**
     * The number of coats with a ± that reaches over the farther end of {@link #interval}, so that
     * it holds what hides at least as often: 95 to 98 times in 100 of simulated cards where parts
     * of a coat are told, more where whole coats only.
     */
    public Estimate film() {
      Interval holds = interval(EXPANDED);
      return Estimate.of(at, Math.max(at - holds.least(), holds.most() - at) / 2);
    }

    /**
     * Between these numbers of coats, parts counted, lies what hides; half of the doubt on either
     * side. No part is told where ln(1 − C) is far from straight, or nobody looked: an end below 2
     * coats, or beyond the last that was looked at, is the whole number beyond it. Where that last
     * coat did hide, the next one is the most that is told.
     *
     * <p>Simulated in the tests, at 95 %: 94 to 96 % where parts are told and the readings are sure
     * to 0.2 or 0.4 %. At least 95 % is what it states of whole coats, since "all of the second
     * coat" is the narrowest that is said and holds every number within, and of readings that are
     * sure to 0.8 % only (up to 97 %), for more than full hiding cannot be.
     *
     * @param confidence 0.5 to 0.998
     */
    public Interval interval(double confidence) {
      Valid.between("confidence", confidence, 0.5, 0.998);
      double doubt = (1 - confidence) / 2;
      double least = readings.coatsAt(doubt);
      double most = readings.coatsAt(1 - doubt);
      return new Interval(
          isPartTold(least) ? least : Math.floor(least + HAIR),
          isPartTold(most) ? most : wholeUp(most));
    }

    private boolean isPartTold(double coats) {
      return coats >= PARTS_TOLD_FROM && coats <= readings.last();
    }

    private double wholeUp(double most) {
      double whole = Math.max(1, Math.ceil(most - HAIR));
      return at > readings.last() ? whole : Math.min(whole, readings.last() + 1.0);
    }

    /** n coats are needed when n hide and n − 1 do not. */
    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      return OptionalDouble.of(within(range, readings::hiddenBy));
    }
  }

  /**
   * The contrast ratio was below the mark after the last coat, and so far that no line to a
   * crossing can be drawn on.
   *
   * @param readings what the probabilities are read from: a reading just below the mark may have
   *     been one above it
   */
  record NotReached(ContrastCurve readings) implements CoatsToHiding {

    /** How many were looked at; more are needed, as far as was read. */
    public int coats() {
      return readings.last();
    }

    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      return withinSeen(range, coats(), readings::hiddenBy);
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
      return withinSeen(range, coats, n -> 0);
    }
  }

  /** Nothing is said of numbers beyond those looked at, but that all of them together are left. */
  private static OptionalDouble withinSeen(
      TargetRange range, int coats, DoubleUnaryOperator enough) {
    boolean seen = Math.floor(range.most()) <= coats;
    boolean anyMore = !range.hasMost() && range.least() <= coats + 1;
    return seen || anyMore ? OptionalDouble.of(within(range, enough)) : OptionalDouble.empty();
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
