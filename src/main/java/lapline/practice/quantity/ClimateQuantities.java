package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.input;

import java.util.List;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelScore.Working;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.climate.DewPoint;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;

/** Whether the panel was warm enough to stay dry. */
final class ClimateQuantities {
  private ClimateQuantities() {}

  /** Panel temperature less the dew point of the air. */
  static Optional<Measured> dewMargin(MeasuredPanel panel) {
    Recorded recorded = new Recorded(panel.entry());
    Optional<Estimate> metal = recorded.once("panel-temperature");
    Optional<Estimate> air = recorded.once("air-temperature");
    Optional<Estimate> humidity = recorded.once("humidity").filter(h -> h.value() > 0);
    if (metal.isEmpty() || air.isEmpty() || humidity.isEmpty()) {
      return Optional.empty();
    }
    Estimate margin = DewPoint.margin(metal.get(), air.get(), humidity.get());
    return Measured.of(
        List.of(Value.of(Cell.panel("dew-margin"), margin)),
        new Working(
            "formula.dew-margin",
            "source.wmo-8",
            List.of(
                input("panel-temperature", metal.get(), Dimension.TEMPERATURE),
                input("air-temperature", air.get(), Dimension.TEMPERATURE),
                input("humidity", humidity.get(), Dimension.SHARE),
                input(
                    "dew-point", DewPoint.of(air.get(), humidity.get()), Dimension.TEMPERATURE))));
  }
}
