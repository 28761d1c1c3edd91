package lapline.practice;

import java.util.UUID;
import lapline.trade.measure.Verdict;

/**
 * A criterion that a scored panel did not surely meet.
 *
 * @param verdict null where it could not be judged for want of readings
 */
public record Shortfall(UUID attempt, String task, String criterion, Verdict verdict) {}
