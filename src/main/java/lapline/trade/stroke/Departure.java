package lapline.trade.stroke;

import lapline.trade.measure.MeasureException;
import lapline.trade.measure.Valid;

/**
 * One way in which a hand leaves the even film: one parameter of the {@link StrokeModel}, 0 where
 * it does not happen.
 */
public sealed interface Departure {

  /** How large it usually is where it happens: the standard deviation of the prior. */
  double usual();

  /** Least value that it can have. */
  double least();

  /** Greatest value that it can have. */
  double most();

  /**
   * What a value of 1 adds to the film at a place, as a share of it; 0 for a departure that does
   * not work by adding a share.
   *
   * @param x metres, as are all
   */
  default double share(double x, double y, double width, double height) {
    return 0;
  }

  /**
   * The gun swings about the wrist: it is further away at both ends of the stroke. Value: the share
   * of the film that is missing there. Distance grows as the long side of a right angle does, and
   * film falls with its power {@link StrokeModel#LOST_WITH_DISTANCE}.
   */
  record Arc() implements Departure {
    /** How much further away the gun is at the ends, as a share, where this share is missing. */
    public static double farther(double missing) {
      return StrokeModel.farther(Math.max(0, Math.min(new Arc().most(), missing)));
    }

    @Override
    public double usual() {
      return 0.3;
    }

    @Override
    public double least() {
      return 0;
    }

    @Override
    public double most() {
      return 0.8;
    }
  }

  /** Which ends of the stroke. */
  enum End {
    BOTH,
    LEFT,
    RIGHT
  }

  /**
   * More paint right at the end, as by a hand that slows down, or less, as by a trigger let go
   * early. Value: that share of the film, on the edge; it fades with the square over the length.
   *
   * @param length metres, more than 0
   */
  record Ends(End end, double length) implements Departure {
    public Ends {
      Valid.positive("length", length);
    }

    @Override
    public double share(double x, double y, double width, double height) {
      return switch (end) {
        case LEFT -> fade(x);
        case RIGHT -> fade(width - x);
        case BOTH -> Math.max(fade(x), fade(width - x));
      };
    }

    private double fade(double from) {
      double rest = 1 - Math.max(0, from) / length;
      return rest > 0 ? rest * rest : 0;
    }

    @Override
    public double usual() {
      return 0.4;
    }

    @Override
    public double least() {
      return -1;
    }

    @Override
    public double most() {
      return 3;
    }
  }

  /** More film towards one side of the panel. Value: the change from side to side, as a share. */
  sealed interface Drift extends Departure {
    @Override
    default double usual() {
      return 0.25;
    }

    @Override
    default double least() {
      return -1.5;
    }

    @Override
    default double most() {
      return 1.5;
    }
  }

  /** Thicker towards the right end of the stroke. */
  record Along() implements Drift {
    @Override
    public double share(double x, double y, double width, double height) {
      return x / width - 0.5;
    }
  }

  /** Thicker towards the upper edge. */
  record Across() implements Drift {
    @Override
    public double share(double x, double y, double width, double height) {
      return y / height - 0.5;
    }
  }

  /** A heeled gun: one side of each pass heavy. Value: share by which the upper side is heavier. */
  record Tilt() implements Departure {
    @Override
    public double usual() {
      return 0.4;
    }

    @Override
    public double least() {
      return -0.9;
    }

    @Override
    public double most() {
      return 0.9;
    }
  }

  /**
   * A stroke's worth of paint more or less at one height: one step too narrow or too wide, or a
   * pass too many or too few along an edge. Value: how many strokes of each coat.
   *
   * @param height metres, any finite
   */
  record Strip(double height) implements Departure {
    public Strip {
      if (!Double.isFinite(height)) {
        throw new MeasureException("height", height, "a finite number");
      }
    }

    @Override
    public double usual() {
      return 0.4;
    }

    @Override
    public double least() {
      return -1.5;
    }

    @Override
    public double most() {
      return 1.5;
    }
  }

  /** Which edges along the strokes. */
  enum Edge {
    BOTH,
    LOWER,
    UPPER
  }

  /**
   * The outermost passes left out, or sprayed more than once. Value: how many times more than once;
   * −1 where they are missing.
   *
   * @param within passes are outermost whose middle, as it was meant, lies less than this inside
   *     the panel, metres; any finite
   */
  record Outermost(Edge edge, double within) implements Departure {
    public Outermost {
      if (!Double.isFinite(within)) {
        throw new MeasureException("within", within, "a finite number");
      }
    }

    boolean counts(double centreline, double height) {
      boolean lower = centreline < within && edge != Edge.UPPER;
      return lower || (centreline > height - within && edge != Edge.LOWER);
    }

    @Override
    public double usual() {
      return 0.7;
    }

    @Override
    public double least() {
      return -1;
    }

    @Override
    public double most() {
      return 2;
    }
  }
}
