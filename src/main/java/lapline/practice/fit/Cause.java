package lapline.practice.fit;

import lapline.trade.stroke.Fault;

/** What a hand, a gun or a mix may do wrong that shows in the film of a panel. */
enum Cause {
  /** Stripes along the strokes: the step between passes is too large for the fan. */
  SPACING_WIDE("spacing-wide"),
  /** One strip along the strokes thin or thick: one step was wider or narrower than the others. */
  SPACING_UNEVEN("spacing-uneven"),
  /** Thin along the lower or upper edge: first or last pass too far in. */
  EDGES_THIN("edges-thin"),
  /** Thick along the lower or upper edge: banded too heavily. */
  EDGES_HEAVY("edges-heavy"),
  /** Thin at both ends of the stroke, rounded: the gun swings about the wrist. */
  ARCING("arcing"),
  /** Thin just at the ends: the trigger is let go before the panel ends. */
  TRIGGER_EARLY("trigger-early"),
  /** Thick just at the ends: the hand slows down or stops there. */
  LINGERING("lingering"),
  /** One side of each pass heavy: the gun is heeled about the stroke. */
  TILT("tilt"),
  /** Thicker towards one end of the stroke. */
  DRIFT_ALONG("drift-along"),
  /** Thicker from the first pass to the last, or the other way. */
  DRIFT_ACROSS("drift-across"),
  /** Even, and more than wanted. */
  TOO_MUCH("too-much"),
  /** Even, and less than wanted. */
  TOO_LITTLE("too-little"),
  /** The mix had more or less solids in it than the sheet asks for. */
  WRONG_MIX("wrong-mix");

  private final String id;

  Cause(String id) {
    this.id = id;
  }

  /** Stable key, for counting and for the messages {@code cause.<id>…}. */
  String id() {
    return id;
  }

  static Cause of(Fault fault) {
    return switch (fault) {
      case ARCING -> ARCING;
      case LINGERING -> LINGERING;
      case TRIGGER_EARLY -> TRIGGER_EARLY;
      case DRIFT_ALONG -> DRIFT_ALONG;
      case DRIFT_ACROSS -> DRIFT_ACROSS;
      case TILT -> TILT;
      case EDGES_THIN -> EDGES_THIN;
      case EDGES_HEAVY -> EDGES_HEAVY;
      case STEPS_WIDE -> SPACING_WIDE;
      case ONE_STEP, STEPS_UNEVEN -> SPACING_UNEVEN;
    };
  }

  String key() {
    return "cause." + id;
  }
}
