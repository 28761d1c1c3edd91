package lapline.content.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;

/**
 * A quantity as an author or a question gives it, or asks for it.
 *
 * @param si in the SI unit of its dimension
 * @param unit the unit it is written in
 */
public record Quantity(double si, Unit unit) {
  private static final int DECIMALS = 2;
  private static final char NO_BREAK = '\u00a0';

  /** The quantity in the unit that a person of this system reads it in. */
  public static Quantity in(UnitSystem system, double si, Dimension dimension) {
    return new Quantity(si, Unit.preferred(dimension, system));
  }

  public Dimension dimension() {
    return unit.dimension();
  }

  /** The figures that a person reads or types in front of the unit. */
  public double figures() {
    return unit.fromSi(si);
  }

  /** With its unit, at sensible precision: '27 µm', '2 h', '3'. */
  public String written() {
    for (UnitSystem system : UnitSystem.values()) {
      boolean clockwork = dimension() == Dimension.DURATION;
      if (!clockwork && unit == Unit.preferred(dimension(), system)) {
        return QuantityWriter.write(si, dimension(), system);
      }
    }
    BigDecimal rounded = new BigDecimal(figures()).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    String number = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    return unit.symbol().isEmpty() ? number : number + NO_BREAK + unit.symbol();
  }
}
