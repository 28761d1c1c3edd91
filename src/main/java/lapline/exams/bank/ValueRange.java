package lapline.exams.bank;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import lapline.content.units.Quantity;
import lapline.trade.measure.Unit;

/**
 * The values that a question may be drawn with, such as 60 to 90 by 5 µm.
 *
 * @param from in {@code unit}
 * @param step in {@code unit}, more than 0
 * @param steps how many steps lead from the first to the last value; 0 for a single value
 */
public record ValueRange(double from, double step, int steps, Unit unit) {

  public Quantity draw(RandomGenerator chance) {
    return at(chance.nextInt(steps + 1));
  }

  /** Every value, in order. */
  public List<Quantity> all() {
    return IntStream.rangeClosed(0, steps).mapToObj(this::at).toList();
  }

  private Quantity at(int number) {
    return new Quantity(unit.toSi(from + number * step), unit);
  }
}
