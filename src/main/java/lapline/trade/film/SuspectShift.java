package lapline.trade.film;

import java.util.List;
import lapline.trade.film.PlanOutcome.Result;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * How far a film that failed SSPC-PA 2 reaches where more than 100 m² were coated: every 10 m² of
 * the shift in which it was coated is measured as an area of its own, and those that fail are
 * non-conforming. Smaller surfaces are searched from the spot that failed ({@link
 * NonConformingArea}).
 *
 * <p>Source: SSPC-PA 2, on the magnitude of a non-conforming area, from memory.
 *
 * @param specified least and most dry film, metres, more than 0; the upper end may be open
 * @param level how strictly, as in the plan that failed
 * @param coatedArea of that shift, m², more than 0, at most a million
 */
public record SuspectShift(TargetRange specified, RestrictionLevel level, double coatedArea) {

  public SuspectShift {
    Valid.positive("specified least", specified.least());
    SspcPa2.areasToMeasure(coatedArea);
  }

  /** How many areas of 10 m² have to be measured: all of them, the last one being what is left. */
  public int areas() {
    return (int) Math.ceil(coatedArea / SspcPa2.AREA);
  }

  /**
   * What the plan says of each area.
   *
   * @param readings of all areas, each with its spots, each spot with its gauge readings in metres
   * @return in the same order
   * @throws MeasureException when there are not as many areas as the shift has
   */
  public List<PlanOutcome> judge(List<List<FilmReadings>> readings) {
    if (readings.size() != areas()) {
      throw new MeasureException("areas", readings.size(), "all " + areas() + " of the shift");
    }
    SspcPa2 alone = new SspcPa2(specified, level, SspcPa2.AREA);
    return readings.stream().map(area -> alone.judge(List.of(area))).toList();
  }

  /**
   * The part of the shift's work that is non-conforming, m².
   *
   * @param readings as for {@link #judge}
   * @throws MeasureException when an area is missing, or has too few spots or readings to be judged
   */
  public double nonConforming(List<List<FilmReadings>> readings) {
    List<PlanOutcome> outcomes = judge(readings);
    double sum = 0;
    for (int i = 0; i < outcomes.size(); i++) {
      if (outcomes.get(i).result() == Result.TOO_FEW_READINGS) {
        throw new MeasureException(
            "spots in area " + (i + 1), readings.get(i).size(), "five of three readings or more");
      }
      sum += outcomes.get(i).accepted() ? 0 : size(i);
    }
    return sum;
  }

  private double size(int area) {
    return Math.min(SspcPa2.AREA, coatedArea - area * SspcPa2.AREA);
  }
}
