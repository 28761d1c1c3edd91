package lapline.trade.film;

import static lapline.trade.film.PlanOutcome.Rule.AREAS_ENOUGH;
import static lapline.trade.film.PlanOutcome.Rule.AREA_NOT_ABOVE;
import static lapline.trade.film.PlanOutcome.Rule.AREA_NOT_BELOW;
import static lapline.trade.film.PlanOutcome.Rule.SPOTS_ENOUGH;
import static lapline.trade.film.PlanOutcome.Rule.SPOT_NOT_ABOVE;
import static lapline.trade.film.PlanOutcome.Rule.SPOT_NOT_BELOW;
import static lapline.trade.film.PlanOutcome.Rule.SPOT_READINGS_ENOUGH;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.film.PlanOutcome.Check;
import lapline.trade.film.PlanOutcome.Plan;
import lapline.trade.film.PlanOutcome.Result;
import lapline.trade.film.PlanOutcome.Rule;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * Acceptance of a dry film by SSPC-PA 2: readings make spots, spots make areas, and only means are
 * judged.
 *
 * <p>Scope: films on ferrous and non-ferrous metal read with a type 1 or type 2 gauge. A spot is
 * the mean of at least three readings within a 4 cm circle, an area the mean of five spots over 10
 * m² or part of it; a practice panel is one such part. The area's mean has no allowance at levels 1
 * to 4. Source: SSPC-PA 2, 2015 with editorial revisions of 2018; the levels' factors from memory
 * of its Table 1.
 *
 * @param specified least and most dry film, metres, more than 0; the upper end may be open
 * @param level how strictly; {@link RestrictionLevel#LEVEL_3} where none is specified
 * @param coatedArea whole coated surface, m², more than 0, at most a million
 */
public record SspcPa2(TargetRange specified, RestrictionLevel level, double coatedArea) {
  static final int READINGS_IN_A_SPOT = 3;
  static final int SPOTS_IN_AN_AREA = 5;
  static final double AREA = 10;
  private static final double MOST_AREA = 1e6;

  public SspcPa2 {
    Valid.positive("specified least", specified.least());
    areasToMeasure(coatedArea);
  }

  /** A plan for a panel under 10 m², at the level that applies where none is specified. */
  public static SspcPa2 ofPanel(TargetRange specified) {
    return new SspcPa2(specified, RestrictionLevel.LEVEL_3, 1);
  }

  /**
   * Range to use where one value alone is specified: ± 20 % of it (from memory).
   *
   * @param value metres, more than 0
   */
  public static TargetRange aroundOneValue(double value) {
    Valid.positive("value", value);
    return new TargetRange(0.8 * value, 1.2 * value);
  }

  /**
   * Areas of 10 m² to measure: each one below 30 m², three up to 100 m², one more for each further
   * 100 m² or part of it.
   *
   * @param coatedArea m², more than 0, at most a million
   */
  public static int areasToMeasure(double coatedArea) {
    Valid.positive("coatedArea", coatedArea);
    Valid.between("coatedArea", coatedArea, 0, MOST_AREA);
    if (coatedArea <= 3 * AREA) {
      return (int) Math.ceil(coatedArea / AREA);
    }
    return 3 + (int) Math.max(0, Math.ceil(coatedArea / (10 * AREA) - 1));
  }

  /**
   * What the plan says of readings; none at all are too few.
   *
   * @param areas each with its spots, each spot with its gauge readings in metres. A reading that
   *     is unusually high or low and could not be repeated is left out beforehand.
   */
  public PlanOutcome judge(List<List<FilmReadings>> areas) {
    List<Check> sampling = sampling(areas);
    if (sampling.stream().anyMatch(c -> !c.kept())) {
      return new PlanOutcome(Plan.SSPC_PA_2, Result.TOO_FEW_READINGS, sampling);
    }
    List<Check> checks = new ArrayList<>(sampling);
    checks.add(lowest(SPOT_NOT_BELOW, spots(areas), level.spotLeast(specified.least())));
    checks.add(highest(SPOT_NOT_ABOVE, spots(areas), level.spotMost(specified.most())));
    checks.add(lowest(AREA_NOT_BELOW, means(areas), specified.least()));
    checks.add(highest(AREA_NOT_ABOVE, means(areas), level.areaMost(specified.most())));
    boolean kept = checks.stream().allMatch(Check::kept);
    return new PlanOutcome(Plan.SSPC_PA_2, kept ? Result.ACCEPTED : Result.REJECTED, checks);
  }

  private List<Check> sampling(List<List<FilmReadings>> areas) {
    int wanted = areasToMeasure(coatedArea);
    List<Check> checks = new ArrayList<>();
    checks.add(Check.ofAll(AREAS_ENOUGH, areas.size() >= wanted, areas.size(), wanted));
    int fewestSpots = areas.stream().mapToInt(List::size).min().orElse(0);
    checks.add(
        Check.ofAll(SPOTS_ENOUGH, fewestSpots >= SPOTS_IN_AN_AREA, fewestSpots, SPOTS_IN_AN_AREA));
    int fewest = areas.stream().flatMap(List::stream).mapToInt(FilmReadings::count).min().orElse(0);
    checks.add(
        Check.ofAll(
            SPOT_READINGS_ENOUGH, fewest >= READINGS_IN_A_SPOT, fewest, READINGS_IN_A_SPOT));
    return checks;
  }

  /** A mean film with where it was found. */
  private record Mean(double film, int area, int spot) {}

  private static List<Mean> spots(List<List<FilmReadings>> areas) {
    List<Mean> found = new ArrayList<>();
    for (int a = 0; a < areas.size(); a++) {
      for (int s = 0; s < areas.get(a).size(); s++) {
        found.add(new Mean(areas.get(a).get(s).mean(), a + 1, s + 1));
      }
    }
    return found;
  }

  private static List<Mean> means(List<List<FilmReadings>> areas) {
    List<Mean> found = new ArrayList<>();
    for (int a = 0; a < areas.size(); a++) {
      double mean = areas.get(a).stream().mapToDouble(FilmReadings::mean).average().orElseThrow();
      found.add(new Mean(mean, a + 1, 0));
    }
    return found;
  }

  private static Check lowest(Rule rule, List<Mean> means, double limit) {
    Mean low = means.stream().reduce((a, b) -> b.film() < a.film() ? b : a).orElseThrow();
    boolean kept = Limits.notBelow(low.film(), limit);
    return new Check(rule, kept, low.film(), limit, low.area(), low.spot());
  }

  private static Check highest(Rule rule, List<Mean> means, double limit) {
    Mean high = means.stream().reduce((a, b) -> b.film() > a.film() ? b : a).orElseThrow();
    boolean kept = Limits.notAbove(high.film(), limit);
    return new Check(rule, kept, high.film(), limit, high.area(), high.spot());
  }
}
