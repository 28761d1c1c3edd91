package lapline.practice;

import lapline.trade.measure.Estimate;

/**
 * One value of a measurand with its place on the record.
 *
 * @param value in the SI unit of the measurand's dimension
 * @param standardUncertainty of this one reading, in the same unit
 * @param typed what the person wrote, kept as it was
 */
public record Reading(Cell cell, double value, double standardUncertainty, String typed) {

  public Estimate estimate() {
    return Estimate.of(value, standardUncertainty);
  }
}
