package lapline.practice.pages;

import java.util.List;

/**
 * One coat as it was laid, for its drawing; metres.
 *
 * @param fanWidth NaN where no pattern was measured
 */
record SprayedCoat(int number, double fanWidth, List<Pass> passes) {

  /**
   * One pass.
   *
   * @param centre from the panel's lower edge
   * @param spacing from the pass before; NaN for the first and where it was not measured
   * @param start distance of the gun at the start of the stroke; NaN where not measured
   * @param middle the same in the middle
   * @param end the same at the end
   */
  record Pass(int number, double centre, double spacing, double start, double middle, double end) {}

  /** Share of a fan that the one before it covered. */
  double overlap(Pass pass) {
    return 1 - pass.spacing() / fanWidth;
  }
}
