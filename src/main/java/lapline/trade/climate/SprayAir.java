package lapline.trade.climate;

import java.util.Comparator;
import java.util.List;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;
import lapline.trade.measure.Verdict;

/**
 * Limits of air and panel within which may be sprayed, and how surely they are kept.
 *
 * @param air temperature of the air, °C
 * @param panel temperature of the surface, °C
 * @param mostHumidity relative humidity, as a share, more than 0, at most 1
 * @param leastMargin panel temperature less dew point, K, 0 or more
 */
public record SprayAir(
    TargetRange air, TargetRange panel, double mostHumidity, double leastMargin) {

  /**
   * Usual limits of coating work: air and surface 10 to 35 °C, humidity up to 85 %, 3 K above the
   * dew point (the margin by ISO 8502-4:2017; the others common in specifications, no single
   * source). A product's sheet goes before them.
   */
  public static final SprayAir USUAL =
      new SprayAir(new TargetRange(10, 35), new TargetRange(10, 35), 0.85, 3);

  public SprayAir {
    Valid.share("mostHumidity", mostHumidity);
    Valid.notNegative("leastMargin", leastMargin);
  }

  /** What is limited. */
  public enum Limit {
    AIR,
    PANEL,
    HUMIDITY,
    DEW_MARGIN
  }

  /**
   * One limit against what was read.
   *
   * @param found °C, a share, or K above the dew point
   * @param range in which the true value should lie, in the same unit
   * @param probability that it does, 0 to 1 (JCGM 106:2012, 7.4)
   */
  public record Check(Limit limit, Estimate found, TargetRange range, double probability) {

    /** Met, doubtful or missed. */
    public Verdict verdict() {
      return Verdict.of(probability);
    }
  }

  /**
   * All four limits, in the order of {@link Limit}.
   *
   * @param airRead °C, −45 to 60
   * @param panelRead °C, −45 to 100
   * @param humidity share, more than 0, at most 1
   * @throws MeasureException when one lies outside these
   */
  public List<Check> checks(Estimate airRead, Estimate panelRead, Estimate humidity) {
    return List.of(
        check(Limit.AIR, airRead, air),
        check(Limit.PANEL, panelRead, panel),
        check(Limit.HUMIDITY, humidity, TargetRange.atMost(mostHumidity)),
        check(
            Limit.DEW_MARGIN,
            DewPoint.margin(panelRead, airRead, humidity),
            TargetRange.atLeast(leastMargin)));
  }

  /** The limit kept least surely: what to mend first. Arguments as for {@link #checks}. */
  public Check leastSure(Estimate airRead, Estimate panelRead, Estimate humidity) {
    return checks(airRead, panelRead, humidity).stream()
        .min(Comparator.comparingDouble(Check::probability))
        .orElseThrow();
  }

  private static Check check(Limit limit, Estimate found, TargetRange range) {
    return new Check(limit, found, range, Conformance.probability(found, range));
  }
}
