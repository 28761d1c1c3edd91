package lapline.trade.climate;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * A while at one temperature: of a cup on the bench, of a panel under a lamp.
 *
 * @param seconds how long, 0 or more
 * @param temperature °C, −40 to 250
 */
public record Spell(double seconds, double temperature) {

  public Spell {
    Valid.notNegative("seconds", seconds);
    Valid.between("temperature", temperature, -40, 250);
  }

  /**
   * The share of something that takes its time which these spells together have used up: Σ spell /
   * whole time at its temperature. 1 is all of it; more than 1 is over.
   *
   * <p>Supposes that the rate hangs on the temperature alone and not on how far it has come, which
   * is why the answer is never better than the rule that gives the whole time.
   *
   * @param spells at least one
   * @param wholeTime seconds that all of it takes at a temperature in °C; its answers more than 0
   * @throws MeasureException when there is no spell, or the whole time is none
   */
  public static double shareUsed(List<Spell> spells, DoubleUnaryOperator wholeTime) {
    if (spells.isEmpty()) {
      throw new MeasureException("spells", 0, "1 or more");
    }
    return spells.stream()
        .mapToDouble(
            s -> s.seconds / Valid.positive("wholeTime", wholeTime.applyAsDouble(s.temperature)))
        .sum();
  }
}
