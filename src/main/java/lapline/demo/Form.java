package lapline.demo;

import java.util.random.RandomGenerator;

/**
 * How well an invented apprentice works on one day.
 *
 * @param slip 0 for a steady hand to 1 for the first panel ever
 * @param fault what they do wrong, the more the larger {@code slip} is
 */
record Form(double slip, Fault fault) {

  /**
   * The form after so many panels of a kind: errors fade with practice, with good and bad days.
   *
   * @param start slip on the first panel, 0 to 1
   * @param panels done before
   */
  static Form after(double start, int panels, Fault fault, RandomGenerator chance) {
    double usual = start * Math.exp(-panels / 2.2);
    double day = 0.03 * Math.abs(chance.nextGaussian());
    return new Form(Math.min(1, usual + day), fault);
  }

  /** How strongly a fault shows; 0 for a fault that this person does not have. */
  double of(Fault asked) {
    return asked == fault ? slip : 0.15 * slip;
  }
}
