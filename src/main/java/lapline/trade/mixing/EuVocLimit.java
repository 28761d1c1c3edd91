package lapline.trade.mixing;

import lapline.trade.measure.TargetRange;

/**
 * European limits of vehicle refinishing products, ready to use.
 *
 * <p>Source: Directive 2004/42/CE, Annex II, table B, in force from 1 January 2007. A letter of the
 * table is a subcategory; a workshop's own country may ask for less.
 */
public enum EuVocLimit {
  PREPARATORY('a', 850),
  PRE_CLEANER('a', 200),
  BODY_FILLER('b', 250),
  SURFACER('c', 540),
  WASH_PRIMER('c', 780),
  TOPCOAT('d', 420),
  SPECIAL_FINISH('e', 840);

  private final char subcategory;
  private final double limit;

  EuVocLimit(char subcategory, double limit) {
    this.subcategory = subcategory;
    this.limit = limit;
  }

  /** The table's letter, a to e. */
  public char subcategory() {
    return subcategory;
  }

  /** Highest content, kg/m³, which is g/L; itself allowed. */
  public double limit() {
    return limit;
  }

  /** The limit as a range for a {@link Voc#readyToUse} of this category, kg/m³. */
  public TargetRange range() {
    return TargetRange.atMost(limit);
  }

  /**
   * Whether water is taken out of the litre first: for all but preparatory and cleaning products.
   */
  public boolean waterLeftOut() {
    return subcategory != 'a';
  }
}
