package lapline.board;

import java.util.UUID;
import lapline.trade.measure.Dimension;

/**
 * A cause on one panel and how far it put the panel out.
 *
 * @param size in SI, 0 or more; null where it was not measured
 * @param standardUncertainty of the size; null with it
 * @param dimension of the size; null with it
 */
public record FoundSize(
    UUID attempt, String finding, Double size, Double standardUncertainty, Dimension dimension) {}
