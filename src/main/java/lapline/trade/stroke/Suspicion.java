package lapline.trade.stroke;

/**
 * A fault that the readings speak for without being sure.
 *
 * @param oneReading whether only one reading speaks for it
 * @param with the film if it happened
 * @param without the film if it did not
 */
record Suspicion(
    Fault fault, double probability, boolean oneReading, StrokeFit with, StrokeFit without) {}
