package lapline.lessons;

import java.util.List;
import lapline.content.units.PerSystem;
import lapline.trade.measure.UnitSystem;

/**
 * How one step of the trade is done and where it goes wrong, with checks inside; read from {@code
 * lesson.md} in the unit's folder.
 *
 * @param unit id of its unit
 * @param version short hash of the file as it is written, so one for both systems of units
 * @param minutes how long it takes to read and answer
 * @param texts the same lesson in metric and in US units
 */
public record Lesson(
    String unit, String title, String version, int minutes, PerSystem<LessonText> texts) {

  /** What it says to people who think in this system. */
  public LessonText in(UnitSystem system) {
    return texts.in(system);
  }

  /** The checks, which are the same in both systems but for their wording; here in metric. */
  public List<Check> checks() {
    return in(UnitSystem.METRIC).checks();
  }
}
