package lapline.demo;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import lapline.practice.Cell;
import lapline.practice.Measurand;
import lapline.practice.Measurands;
import lapline.practice.PanelCells;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;

/**
 * Invents what an apprentice writes down about a panel, as typed, in their own units. What it comes
 * to is for the scorer to say. Measurands without a habit are left out.
 */
final class InventedPanel {
  private final PanelDay day;
  private final Map<String, Habit> habits = new HashMap<>();
  private final int coats;

  InventedPanel(PanelDay day) {
    this.day = day;
    GunHabits gun = new GunHabits(day);
    CoatHabits coat = new CoatHabits(day);
    this.coats = coat.coats();
    habits.putAll(SurfaceHabits.preparing(day));
    habits.putAll(SurfaceHabits.masking(day));
    habits.putAll(gun.setting());
    habits.putAll(gun.strokes());
    habits.putAll(coat.all());
    habits.putAll(new FilmHabits(day, gun, coats).all());
  }

  Map<String, String> typed(Measurands measurands, UnitSystem units) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (Cell cell : PanelCells.of(day.task(), measurands)) {
      Habit habit = habits.get(cell.measurand());
      if (habit != null && cell.coat() <= coats) {
        OptionalDouble value = habit.at(cell);
        Measurand measurand = measurands.require(cell.measurand());
        value.ifPresent(si -> typed.put(cell.key(), text(measurand, si, units)));
      }
    }
    return typed;
  }

  private static String text(Measurand measurand, double si, UnitSystem units) {
    if (measurand.dimension() == Dimension.CHOICE) {
      return measurand.options().stream()
          .filter(o -> o.value() == si)
          .map(Measurand.Option::label)
          .findFirst()
          .orElse("");
    }
    double read = Instruments.read(measurand, si, units);
    return QuantityWriter.number(read, measurand.spoken(), units);
  }
}
