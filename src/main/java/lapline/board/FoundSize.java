package lapline.board;

import java.util.UUID;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/**
 * A cause on one panel and how far it put the panel out.
 *
 * @param size in SI, 0 or more; null where it was not measured
 * @param standardUncertainty of the size; null with it
 * @param degreesOfFreedom of the uncertainty; null where it is taken as known
 * @param dimension of the size; null with it
 */
public record FoundSize(
    UUID attempt,
    String finding,
    Double size,
    Double standardUncertainty,
    Double degreesOfFreedom,
    Dimension dimension) {

  /** The size with its uncertainty; null where it was not measured. */
  Estimate estimate() {
    return size == null ? null : Estimate.of(size, standardUncertainty, degreesOfFreedom);
  }
}
