package lapline.trade.mixing;

import java.util.Collection;
import java.util.Comparator;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * American national limits of automobile refinish coatings, less water and exempt compounds.
 *
 * <p>Source: 40 CFR 59 Subpart B, table 1 (63 FR 48806, 11 September 1998), from memory; only its
 * figures in g/L bind. States and districts may ask for less, and in whichever unit they do: a
 * state table seen has 575 and 625 for 580 and 630. Not for aerosols, lacquer topcoats or touch-up.
 */
public enum UsVocLimit {
  PRETREATMENT_WASH_PRIMER(780),
  PRIMER_SURFACER(580),
  PRIMER_SEALER(550),
  SINGLE_OR_TWO_STAGE_TOPCOAT(600),
  TOPCOAT_OF_MORE_STAGES(630),
  MULTI_COLOURED_TOPCOAT(680),
  SPECIALTY(840);

  /** Exact: the pound over the US gallon. */
  private static final double POUND_PER_GALLON = 0.45359237 / 3.785411784e-3;

  private final double limit;

  UsVocLimit(double limit) {
    this.limit = limit;
  }

  /** Highest content, kg/m³, which is g/L; itself allowed. */
  public double limit() {
    return limit;
  }

  /** The limit as a range for a {@link Voc#lessWaterAndExempt}, kg/m³. */
  public TargetRange range() {
    return TargetRange.atMost(limit);
  }

  /** The limit in pounds per US gallon, for information only. */
  public double poundsPerGallon() {
    return limit / POUND_PER_GALLON;
  }

  /**
   * The limit of a topcoat's average by {@link Voc#ofStages}.
   *
   * @param stages coats of different products, 1 or more
   */
  public static UsVocLimit ofTopcoat(int stages) {
    Valid.between("stages", stages, 1, Integer.MAX_VALUE);
    return stages <= 2 ? SINGLE_OR_TWO_STAGE_TOPCOAT : TOPCOAT_OF_MORE_STAGES;
  }

  /**
   * The limit of a mix that is sold for several uses: the lowest of them.
   *
   * @param uses at least one
   */
  public static UsVocLimit strictest(Collection<UsVocLimit> uses) {
    return uses.stream()
        .min(Comparator.comparingDouble(UsVocLimit::limit))
        .orElseThrow(() -> new MeasureException("uses", 0, "1 or more"));
  }
}
