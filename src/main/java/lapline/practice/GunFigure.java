package lapline.practice;

import java.util.Locale;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.TargetRange;

/**
 * What a gun's maker may say about it.
 *
 * <p>The usual ranges are common practice, no source. They judge no gun: a figure without a unit
 * that falls outside them was most likely meant in another unit, and the unit is asked for.
 */
public enum GunFigure {
  DISTANCE(Dimension.LENGTH, new TargetRange(0.01, 0.6), new TargetRange(0.05, 0.4)),
  PRESSURE(Dimension.PRESSURE, new TargetRange(1e3, 1e6), new TargetRange(3e4, 7e5)),
  OVERLAP(Dimension.SHARE, new TargetRange(0, 1), new TargetRange(0.2, 0.9)),
  SPEED(Dimension.SPEED, new TargetRange(0.01, 5), new TargetRange(0.1, 2)),
  FAN(Dimension.LENGTH, new TargetRange(0.02, 0.6), new TargetRange(0.05, 0.5));

  private final Dimension dimension;
  private final TargetRange possible;
  private final TargetRange usual;

  GunFigure(Dimension dimension, TargetRange possible, TargetRange usual) {
    this.dimension = dimension;
    this.possible = possible;
    this.usual = usual;
  }

  public Dimension dimension() {
    return dimension;
  }

  TargetRange possible() {
    return possible;
  }

  /** Whether both limits lie where those of guns usually do. */
  boolean isUsual(TargetRange range) {
    return (!range.hasLeast() || usual.contains(range.least()))
        && (!range.hasMost() || usual.contains(range.most()));
  }

  /** The name a task's criteria call it by, such as {@code distance}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
