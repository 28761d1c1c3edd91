package lapline.trade.film;

import static lapline.trade.film.PlanOutcome.Rule.FEW_BELOW_NOMINAL;
import static lapline.trade.film.PlanOutcome.Rule.FEW_REPEATED;
import static lapline.trade.film.PlanOutcome.Rule.MEAN_NOT_BELOW_NOMINAL;
import static lapline.trade.film.PlanOutcome.Rule.NOMINAL_IN_SCOPE;
import static lapline.trade.film.PlanOutcome.Rule.READINGS_ENOUGH;
import static lapline.trade.film.PlanOutcome.Rule.READING_NOT_ABOVE;
import static lapline.trade.film.PlanOutcome.Rule.READING_NOT_BELOW;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.film.PlanOutcome.Check;
import lapline.trade.film.PlanOutcome.Plan;
import lapline.trade.film.PlanOutcome.Result;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Summary;
import lapline.trade.measure.Valid;

/**
 * Acceptance of a dry film by the rules of ISO 19840:2012: every single reading counts against a
 * nominal film.
 *
 * <p>Scope: written for steel roughened by blasting, and not for a nominal film under 40 µm, so
 * never for a base coat. On a smooth panel it is borrowed, without profile correction, as the
 * clearest published rule for single readings; a page that shows it has to say so. The share of
 * readings under nominal is taken strictly, below 20 %. Source: ISO 19840:2012; sampling numbers
 * and profile corrections from memory.
 *
 * @param nominal nominal dry film, metres, more than 0
 * @param most largest dry film allowed for a reading, metres; 3 × nominal where none is given
 * @param coatedArea m², more than 0, at most a million
 */
public record Iso19840(double nominal, double most, double coatedArea) {
  /** Thinnest nominal film the standard covers, metres. */
  public static final double LEAST_NOMINAL = 40e-6;

  private static final double MOST_AREA = 1e6;
  private static final double FLOOR = 0.8;
  private static final double SHARE_BELOW_NOMINAL = 0.2;

  public Iso19840 {
    Valid.positive("nominal", nominal);
    checkArea(coatedArea);
    Valid.finite("most", most);
    if (!(most > nominal)) {
      throw new MeasureException("most", most, "more than the nominal film " + nominal);
    }
  }

  /**
   * A plan for a panel of at most 1 m², the largest film at the usual three times nominal.
   *
   * @param nominal metres, more than 0
   */
  public static Iso19840 ofPanel(double nominal) {
    return new Iso19840(nominal, 3 * nominal, 1);
  }

  /**
   * Correction for a blasted profile that the gauge was not zeroed on, to be taken off readings.
   */
  public enum Profile {
    FINE(10e-6),
    MEDIUM(25e-6),
    COARSE(40e-6),
    UNKNOWN(25e-6);

    private final double correction;

    Profile(double correction) {
      this.correction = correction;
    }

    /** Metres. */
    public double correction() {
      return correction;
    }
  }

  /**
   * Fewest readings for an area.
   *
   * @param area m², more than 0, at most a million
   */
  public static int readingsWanted(double area) {
    checkArea(area);
    if (area > 100) {
      return 30 + 10 * (int) Math.ceil((area - 100) / 100);
    }
    return area <= 1 ? 5 : area <= 3 ? 10 : area <= 10 ? 15 : area <= 30 ? 20 : 30;
  }

  private static void checkArea(double area) {
    Valid.positive("area", area);
    Valid.between("area", area, 0, MOST_AREA);
  }

  /**
   * Most readings that may be repeated when the first one was bad.
   *
   * @param area m², more than 0, at most a million
   */
  public static int repeatsAllowed(double area) {
    return readingsWanted(area) / 5;
  }

  /** What the plan says of readings of which none was repeated. */
  public PlanOutcome judge(FilmReadings readings) {
    return judge(readings, 0);
  }

  /**
   * What the plan says of readings of which some stand in the place of others.
   *
   * @param readings as they count, metres
   * @param repeated how many of them were taken again, 0 to all
   */
  public PlanOutcome judge(FilmReadings readings, int repeated) {
    Valid.between("repeated", repeated, 0, readings.count());
    int repeats = repeatsAllowed(coatedArea);
    List<Check> before =
        List.of(
            Check.ofAll(
                NOMINAL_IN_SCOPE, Limits.notBelow(nominal, LEAST_NOMINAL), nominal, LEAST_NOMINAL),
            Check.ofAll(
                READINGS_ENOUGH,
                readings.count() >= readingsWanted(coatedArea),
                readings.count(),
                readingsWanted(coatedArea)),
            Check.ofAll(FEW_REPEATED, repeated <= repeats, repeated, repeats));
    List<Check> checks = Stream.concat(before.stream(), rules(readings).stream()).toList();
    return new PlanOutcome(Plan.ISO_19840, result(checks), checks);
  }

  private List<Check> rules(FilmReadings readings) {
    Summary summary = readings.summary();
    double mean = summary.mean();
    double least = summary.least();
    double share = shareBelowNominal(readings);
    double highest = summary.most();
    return List.of(
        Check.ofAll(MEAN_NOT_BELOW_NOMINAL, Limits.notBelow(mean, nominal), mean, nominal),
        new Check(
            READING_NOT_BELOW,
            Limits.notBelow(least, FLOOR * nominal),
            least,
            FLOOR * nominal,
            0,
            numberOf(least, readings)),
        Check.ofAll(FEW_BELOW_NOMINAL, share < SHARE_BELOW_NOMINAL, share, SHARE_BELOW_NOMINAL),
        new Check(
            READING_NOT_ABOVE,
            Limits.notAbove(highest, most),
            highest,
            most,
            0,
            numberOf(highest, readings)));
  }

  private static Result result(List<Check> checks) {
    if (!checks.get(0).kept()) {
      return Result.OUT_OF_SCOPE;
    }
    if (!checks.get(1).kept()) {
      return Result.TOO_FEW_READINGS;
    }
    return checks.stream().allMatch(Check::kept) ? Result.ACCEPTED : Result.REJECTED;
  }

  private static int numberOf(double reading, FilmReadings readings) {
    return readings.metres().indexOf(reading) + 1;
  }

  /** Readings from 80 % of nominal to just below it; those thinner still break their own rule. */
  private double shareBelowNominal(FilmReadings readings) {
    long thin =
        readings.metres().stream()
            .filter(m -> Limits.notBelow(m, FLOOR * nominal) && !Limits.notBelow(m, nominal))
            .count();
    return (double) thin / readings.count();
  }
}
