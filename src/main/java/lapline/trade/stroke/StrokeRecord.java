package lapline.trade.stroke;

import java.util.List;
import java.util.Optional;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Valid;

/**
 * All that is known about the strokes of a panel before its film is looked at.
 *
 * @param ways in which the passes may lie, all for one panel, number of coats and fan, the
 *     likeliest first; 1 or more
 * @param stepsWritten whether anybody wrote steps down; then they need no stripes in the film to be
 *     believed
 * @param leastOverlap where steps leave less than this share of the fan they are a fault, if the
 *     film shows it or they were written down; 0 for never; 0 to less than 1
 * @param bow gun distance at the ends of the strokes over that in their middle, less 1, as it was
 *     measured; empty where it was not
 */
public record StrokeRecord(
    List<Way> ways, boolean stepsWritten, double leastOverlap, Optional<Estimate> bow) {

  /**
   * One way in which the passes may lie.
   *
   * @param weight prior weight against the other ways, more than 0
   */
  public record Way(PassPlan plan, double weight) {
    public Way {
      Valid.positive("weight", weight);
    }
  }

  public StrokeRecord {
    ways = List.copyOf(ways);
    Valid.positive("ways", ways.size());
    Valid.between("leastOverlap", leastOverlap, 0, 0.99);
    bow.ifPresent(b -> Valid.positive("bow uncertainty", b.standardUncertainty()));
  }

  /** One plan, and nothing more. */
  public static StrokeRecord of(PassPlan plan) {
    return new StrokeRecord(List.of(new Way(plan, 1)), false, 0, Optional.empty());
  }

  /** How many ways there are. */
  int plans() {
    return ways.size();
  }

  /** By its number from 0. */
  PassPlan plan(int number) {
    return ways.get(number).plan();
  }

  /** ln of the prior weight of a plan, by its number from 0. */
  double logPrior(int plan) {
    return Math.log(ways.get(plan).weight() / ways.stream().mapToDouble(Way::weight).sum());
  }

  /**
   * ln of how much better an arc that takes this share of the film foretells the measured distances
   * than no arc does; 0 where they were not measured.
   */
  double forArc(double missing) {
    return bow.map(b -> (square(b, 0) - square(b, StrokeModel.farther(missing))) / 2).orElse(0.0);
  }

  private static double square(Estimate bow, double expected) {
    double z = (bow.value() - expected) / bow.standardUncertainty();
    return z * z;
  }
}
