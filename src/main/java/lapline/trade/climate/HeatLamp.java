package lapline.trade.climate;

import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * What was written down of a panel under a heat lamp: how far the lamp stood and what the panel's
 * thermometer said when. It claims what the readings show and no more.
 *
 * <p>What it cannot claim: how warm the panel was where no thermometer was, or between readings;
 * and no temperature is worked out of distance and power, for a lamp as wide as the panel follows
 * no simple law of distance. Cautions against burns, fire and solvent vapour stand on the page that
 * asks for the record.
 *
 * @param distance from lamp to panel, metres, 0.05 to 3
 * @param readings of the panel's surface, at least one, times rising
 */
public record HeatLamp(double distance, List<Reading> readings) {

  /**
   * One look at the panel's thermometer.
   *
   * @param at seconds since the lamp was switched on, 0 or more
   * @param panel surface temperature, °C, −40 to 250
   */
  public record Reading(double at, double panel) {

    public Reading {
      Valid.notNegative("at", at);
      Valid.between("panel", panel, -40, 250);
    }
  }

  /**
   * @throws MeasureException when there is no reading, or one is not later than the one before
   */
  public HeatLamp {
    Valid.between("distance", distance, 0.05, 3);
    if (readings.isEmpty()) {
      throw new MeasureException("readings", 0, "1 or more");
    }
    readings = List.copyOf(readings);
    for (int i = 1; i < readings.size(); i++) {
      double before = readings.get(i - 1).at;
      if (!(readings.get(i).at > before)) {
        throw new MeasureException(
            "at", readings.get(i).at, "later than the reading before, " + before);
      }
    }
  }

  /** Seconds from the first reading to the last; 0 for one reading, which shows a moment only. */
  public double watched() {
    return readings.get(readings.size() - 1).at - readings.get(0).at;
  }

  /** The warmest that was read, °C; the panel may have been warmer between and beside. */
  public double warmestRead() {
    return readings.stream().mapToDouble(Reading::panel).max().orElseThrow();
  }

  /**
   * For how long the panel was at a wanted temperature, seconds: from the stretches between two
   * readings that both reached it, to those of which at least one did. Holds as long as the panel
   * did not cool and warm again between two readings, so often-read records say more.
   *
   * @param wanted °C, −40 to 250
   */
  public TargetRange timeAt(double wanted) {
    Valid.between("wanted", wanted, -40, 250);
    double surely = 0;
    double perhaps = 0;
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      surely += Math.min(from.panel, to.panel) >= wanted ? to.at - from.at : 0;
      perhaps += Math.max(from.panel, to.panel) >= wanted ? to.at - from.at : 0;
    }
    return new TargetRange(surely, perhaps);
  }

  /**
   * Whether lamp and panel stayed within the product's sheet, as far as it was read.
   *
   * @param distances that the sheet or the lamp's manual allows, metres
   * @param mostPanel highest temperature allowed, °C, −40 to 250
   */
  public boolean within(TargetRange distances, double mostPanel) {
    Valid.between("mostPanel", mostPanel, -40, 250);
    return distances.contains(distance) && warmestRead() <= mostPanel;
  }
}
