package lapline.demo;

import java.util.OptionalDouble;
import lapline.practice.Cell;

/** What an invented apprentice writes down for one measurand: a value in SI, or nothing. */
@FunctionalInterface
interface Habit {
  OptionalDouble at(Cell cell);

  static Habit of(java.util.function.ToDoubleFunction<Cell> value) {
    return cell -> OptionalDouble.of(value.applyAsDouble(cell));
  }
}
