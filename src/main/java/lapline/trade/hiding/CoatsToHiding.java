package lapline.trade.hiding;

import java.util.OptionalDouble;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.apache.commons.statistics.distribution.NormalDistribution;

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

    /** Where between the two coats hiding lies, taken as even over the interval. */
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
   * @param film where it did, in coats, parts of a coat counted
   */
  record Crossed(Estimate film) implements CoatsToHiding {

    public int coats() {
      return Math.max(1, (int) Math.ceil(film.value()));
    }

    /** n coats are needed when hiding lies between n − 1 and n; everything up to 1 needs one. */
    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      double least = Math.max(1, Math.ceil(range.least()));
      double most = Math.floor(range.most());
      double below = least <= 1 ? 0 : upTo(least - 1);
      return OptionalDouble.of(most < least ? 0 : Math.max(0, upTo(most) - below));
    }

    private double upTo(double coats) {
      if (film.standardUncertainty() == 0 || Double.isInfinite(coats)) {
        return film.value() <= coats ? 1 : 0;
      }
      return NormalDistribution.of(film.value(), film.standardUncertainty())
          .cumulativeProbability(coats);
    }
  }

  /**
   * The card still showed after the last coat.
   *
   * @param coats how many were looked at; more are needed
   */
  record StillShowing(int coats) implements CoatsToHiding {

    @Override
    public OptionalDouble probabilityWithin(TargetRange range) {
      boolean excluded = Math.floor(range.most()) <= coats;
      boolean anyMore = !range.hasMost() && range.least() <= coats + 1;
      return excluded
          ? OptionalDouble.of(0)
          : anyMore ? OptionalDouble.of(1) : OptionalDouble.empty();
    }
  }
}
