package lapline.trade.stroke;

/** What a hand or a gun may do wrong that shows in the film of a panel. */
public enum Fault {
  /** Thin at both ends of the stroke, rounded: the gun swings about the wrist. */
  ARCING,
  /** Thick right at the ends: the hand slows down or stops there. */
  LINGERING,
  /** Thin right at the ends: the trigger is let go before the panel ends. */
  TRIGGER_EARLY,
  /** Thicker towards one end of the stroke. */
  DRIFT_ALONG,
  /** Thicker towards the upper or the lower edge. */
  DRIFT_ACROSS,
  /** One side of each pass heavy: the gun is heeled about the stroke. */
  TILT,
  /** Thin along the lower or upper edge: a pass too few there. */
  EDGES_THIN,
  /** Thick along an edge: a pass too many there. */
  EDGES_HEAVY,
  /** One step wider or narrower than it was written down or meant to be. */
  ONE_STEP,
  /** Stripes along the strokes: all steps too wide for the fan. */
  STEPS_WIDE,
  /** Stripes along the strokes: the steps were as uneven as they were written down. */
  STEPS_UNEVEN;

  /** How many are departures from the passes as they were meant, and compete with each other. */
  static final int DEPARTURES = STEPS_WIDE.ordinal();
}
