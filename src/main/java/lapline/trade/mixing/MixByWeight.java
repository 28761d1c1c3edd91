package lapline.trade.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * A volume mix poured on a scale, through the densities of its parts: m = V ρ. As exact as the
 * densities, which sheets give for 20 °C; an organic solvent expands by about 0.1 % for each degree
 * (handbooks, from memory).
 *
 * @param ratio by volume
 * @param densities kg/m³ (g/L), one for each part, more than 0
 */
public record MixByWeight(MixRatio ratio, List<Double> densities) {

  public MixByWeight {
    if (densities.size() != ratio.parts().size()) {
      throw new MeasureException(
          "densities", densities.size(), "one for each of " + ratio.parts().size() + " parts");
    }
    densities.forEach(d -> Valid.positive("density", d));
    densities = List.copyOf(densities);
  }

  /**
   * Mass of each part, kg.
   *
   * @param total volume of the mix, m³, more than 0
   */
  public List<Double> masses(double total) {
    List<Double> volumes = ratio.volumes(total);
    return IntStream.range(0, volumes.size())
        .mapToObj(i -> volumes.get(i) * densities.get(i))
        .toList();
  }

  /**
   * What an untared scale shows after each part, kg.
   *
   * @param total volume of the mix, m³, more than 0
   */
  public List<Double> scaleReadings(double total) {
    List<Double> readings = new ArrayList<>();
    double sum = 0;
    for (double mass : masses(total)) {
      sum += mass;
      readings.add(sum);
    }
    return readings;
  }

  /** Density of the mix, kg/m³, no change of volume on mixing. */
  public double density() {
    return masses(1).stream().mapToDouble(m -> m).sum();
  }

  /**
   * Masses that restore the ratio after too much of one part was poured: every part grows as that
   * one did.
   *
   * @param total volume first intended, m³
   * @param part which one, counted from 0, below the number of parts
   * @param poured its mass in the cup, kg, finite, not less than intended
   */
  public List<Double> afterOverPour(double total, int part, double poured) {
    double intended = masses(total).get(ratio.index(part));
    if (!(poured >= intended) || Double.isInfinite(poured)) {
      throw new MeasureException("poured", poured, "at least the intended " + intended);
    }
    return masses(total).stream().map(m -> m * poured / intended).toList();
  }
}
