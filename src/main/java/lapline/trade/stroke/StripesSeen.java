package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import lapline.trade.measure.Valid;

/**
 * Whether places can show stripes along the strokes at all: places in rows as far apart as the
 * passes all lie on the same part of a stripe (aliasing).
 */
public final class StripesSeen {
  private static final int PHASES = 24;
  private static final int COUNT = 3;

  private StripesSeen() {}

  /**
   * How much of a stripe's height, crest to trough, these heights are sure to show, wherever the
   * crests lie: 0 where they may all lie on a crest, 1 where one always lies on a crest and one in
   * a trough.
   *
   * @param heights of the places across the strokes, metres; 1 or more
   * @param step from pass to pass, metres, more than 0
   */
  public static double share(List<Double> heights, double step) {
    Valid.positive("heights", heights.size());
    Valid.positive("step", step);
    double least = 1;
    for (int i = 0; i < PHASES; i++) {
      double phase = Math.PI * i / PHASES;
      double[] wave =
          heights.stream().mapToDouble(y -> Math.cos(2 * Math.PI * y / step + phase)).toArray();
      least = Math.min(least, PanelFits.spread(wave) / 2);
    }
    return least;
  }

  /** The least share over these steps, each more than 0; 1 for none. */
  public static double share(List<Double> heights, double[] steps) {
    return DoubleStream.of(steps).map(s -> share(heights, s)).min().orElse(1);
  }

  /**
   * Three more places that show such stripes best, none beside another.
   *
   * @param places that are read already
   * @param steps that may be, metres, each more than 0
   */
  public static List<Spot> next(PassPlan plan, List<Spot> places, double[] steps) {
    List<Double> heights = new ArrayList<>(places.stream().map(Spot::y).toList());
    List<Spot> line = PanelSpots.across(plan);
    List<Spot> next = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      Spot best =
          Collections.max(
              line, Comparator.comparingDouble(s -> share(with(heights, s.y()), steps)));
      heights.add(best.y());
      next.add(new Spot(plan.width() * (i + 1) / (COUNT + 1), best.y()));
    }
    return next;
  }

  private static List<Double> with(List<Double> heights, double y) {
    List<Double> more = new ArrayList<>(heights);
    more.add(y);
    return more;
  }
}
