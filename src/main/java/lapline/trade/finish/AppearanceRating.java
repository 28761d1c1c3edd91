package lapline.trade.finish;

import java.util.List;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * What several people saw of orange peel or haze, as classes of one scale. Classes have an order
 * but no equal steps, so they have a middle and a spread and no mean.
 *
 * <p>Neither scale has a public limit for repairs: a repair is held against the panel beside it.
 * How coarse a peel looks hangs on the colour as well, so ratings of different colours are compared
 * with care.
 *
 * @param scale which
 * @param classes one for each person, at least one, each on the scale
 */
public record AppearanceRating(Scale scale, List<Integer> classes) {

  /** A scale of classes, with its ends. */
  public enum Scale {
    /** The usual set of ten panels: 1 the coarsest, 10 smooth (from memory). */
    ORANGE_PEEL(1, 10, true),
    /** Change of appearance by ISO 4628-1: 0 none to be seen, 5 very marked (from memory). */
    HAZE(0, 5, false);

    private final int least;
    private final int most;
    private final boolean highIsBetter;

    Scale(int least, int most, boolean highIsBetter) {
      this.least = least;
      this.most = most;
      this.highIsBetter = highIsBetter;
    }

    /** Lowest class. */
    public int least() {
      return least;
    }

    /** Highest class. */
    public int most() {
      return most;
    }

    /** Whether the higher class is the better one. */
    public boolean highIsBetter() {
      return highIsBetter;
    }
  }

  public AppearanceRating {
    if (classes.isEmpty()) {
      throw new MeasureException("classes", 0, "1 or more");
    }
    classes.forEach(c -> Valid.between("class", c, scale.least, scale.most));
    classes = classes.stream().sorted().toList();
  }

  /** The middle class; of two in the middle the worse. */
  public int middle() {
    int last = classes.size() - 1;
    return classes.get(scale.highIsBetter ? last / 2 : (last + 1) / 2);
  }

  /** Classes between the lowest and the highest given; 0 where all agree. */
  public int spread() {
    return classes.get(classes.size() - 1) - classes.get(0);
  }

  /**
   * How many classes better than the panel beside it, negative where worse; 0 is a match.
   *
   * @throws MeasureException when it was rated on another scale
   */
  public int betterThan(AppearanceRating beside) {
    if (beside.scale != scale) {
      throw new MeasureException("scale", beside.scale, scale + ", as here");
    }
    int higher = middle() - beside.middle();
    return scale.highIsBetter ? higher : -higher;
  }
}
