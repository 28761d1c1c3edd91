package lapline.trade.stroke;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Film at a place of a panel as the sum of all passes of all coats, with its derivatives.
 *
 * <p>film = A · (s / (w·C)) · M(x, y) / d(x) · Σ p(2(y − yₖ) / (w·d(x))): mean film A, mean step s,
 * fan width w, C coats, profile p of mean 1 over the fan, gun distance d(x) over the intended one,
 * and M what the hand adds or loses along the stroke. The mean over many even passes is A whatever
 * the step, the fan and its shape, so that the level is nearly independent of them.
 *
 * <p>Parameters: ln A (metres), ln of the steps over the written ones, ln of the fan width over the
 * written one, ln of the shape over the written one, a shift for each coat (metres), then one for
 * each {@link Departure}. Where strokes overlap by two thirds or more the film says next to nothing
 * about step, width, shape and shift; what was written down then does.
 */
final class StrokeModel {
  /**
   * Film falls with this power of the distance: 2 from a wrist that turns evenly and so runs faster
   * over the panel's ends, and ½ for paint that misses, 0.3 of it at twice the distance; the latter
   * is an assumption of this course, since no public table of it was found.
   */
  static final double LOST_WITH_DISTANCE = 2.5;

  static final int LEVEL = 0;
  static final int STEP = 1;
  static final int FAN = 2;
  static final int SHAPE = 3;
  static final int SHIFT = 4;

  /** No hand takes more than this of the film away at a place. */
  static final double LEAST_LEFT = 0.02;

  private final PassPlan plan;
  private final List<Departure> departures;
  private final double[][] passes;
  private final double step;
  private final double blur;
  private final int[] shares;
  private final int[] strips;
  private final int[] edges;
  private final int arc;
  private final int tilt;

  StrokeModel(PassPlan plan, List<Departure> departures) {
    this(plan, plan.centrelines(), departures, FanShape.BLUR);
  }

  private StrokeModel(PassPlan plan, double[][] passes, List<Departure> departures, double blur) {
    this.plan = plan;
    this.departures = List.copyOf(departures);
    this.passes = passes;
    this.blur = blur;
    this.step = plan.meanStep();
    this.arc = last(Departure.Arc.class);
    this.tilt = last(Departure.Tilt.class);
    this.strips = all(Departure.Strip.class);
    this.edges = all(Departure.Outermost.class);
    this.shares =
        IntStream.range(0, departures.size())
            .filter(i -> i != arc && i != tilt)
            .filter(i -> !(departures.get(i) instanceof Departure.Strip))
            .filter(i -> !(departures.get(i) instanceof Departure.Outermost))
            .toArray();
  }

  /**
   * With each pass elsewhere than it was written down.
   *
   * @param by metres, for the passes of all coats in turn
   */
  StrokeModel moved(double[] by) {
    double[][] moved = plan.centrelines();
    int n = 0;
    for (double[] coat : moved) {
      for (int k = 0; k < coat.length; k++) {
        coat[k] += by[n++];
      }
    }
    return new StrokeModel(plan, moved, departures, blur);
  }

  /** The same passes by a fan with a rim that is next to sharp. */
  StrokeModel sharp() {
    return new StrokeModel(plan, passes, departures, FanShape.SHARP);
  }

  private int[] all(Class<? extends Departure> kind) {
    return IntStream.range(0, departures.size())
        .filter(i -> kind.isInstance(departures.get(i)))
        .toArray();
  }

  private int last(Class<? extends Departure> kind) {
    int[] found = all(kind);
    return found.length == 0 ? -1 : found[found.length - 1];
  }

  /** How much further away the gun is, as a share, where an arc takes this share of the film. */
  static double farther(double missing) {
    return Math.sqrt(1 + bow(missing)) - 1;
  }

  /**
   * The square of the gun's distance at the ends over that in the middle, less 1. A gun that swings
   * about one point is at √(1 + bow·o²) of its distance, o from 0 in the middle to 1 at the ends:
   * the far side of a right angle.
   */
  static double bow(double missing) {
    return Math.pow(1 - missing, -2 / LOST_WITH_DISTANCE) - 1;
  }

  List<Departure> departures() {
    return departures;
  }

  PassPlan plan() {
    return plan;
  }

  int parameters() {
    return first() + departures.size();
  }

  /** Where the departures begin among the parameters. */
  int first() {
    return SHIFT + passes.length;
  }

  /** Brings each departure of these parameters within its bounds. */
  void bound(double[] parameters) {
    for (int i = 0; i < departures.size(); i++) {
      Departure d = departures.get(i);
      int j = first() + i;
      parameters[j] = Math.max(d.least(), Math.min(d.most(), parameters[j]));
    }
  }

  /**
   * Made ready for one set of parameters.
   *
   * @param parameters as many as {@link #parameters()}, in the order named above
   */
  At at(double[] parameters) {
    return new At(parameters);
  }

  /** One set of parameters, evaluated place after place; not for several threads. */
  final class At {
    private final double[] p;
    private final double fan;
    private final double stretch;
    private final double front;
    private final double bow;
    private final FanShape shape;

    /** Derivative of the last film by each parameter. */
    final double[] slopes = new double[parameters()];

    /** Derivative by the height of each pass, all coats in turn, and what each pass adds. */
    final double[] byHeight = new double[plan.passes()];

    final double[] ofPass = new double[plan.passes()];

    // at the place in hand
    private double distance;
    private double outwards;
    private double more;
    private double lost;
    private double passesOnly;
    private double byWidth;
    private double byTilt;

    private At(double[] parameters) {
      this.p = parameters.clone();
      this.fan = plan.fanWidth().value() * Math.exp(p[FAN]);
      this.stretch = Math.exp(p[STEP]);
      this.front = Math.exp(p[LEVEL]) * step * stretch / (fan * passes.length);
      this.bow = bow(value(arc));
      this.shape = new FanShape(plan.beta().value() * Math.exp(p[SHAPE]), value(tilt), blur);
    }

    private double value(int departure) {
      return departure < 0 ? 0 : p[first() + departure];
    }

    /** Film in metres at a place; leaves its derivatives in the arrays. */
    double film(double x, double y) {
      alongTheStroke(x, y);
      acrossTheStrokes(y);
      double film = passesOnly;
      for (int i : strips) {
        film += strip(((Departure.Strip) departures.get(i)).height(), first() + i, y);
      }
      slopes[LEVEL] = film;
      slopesOfShares(x, y);
      return film;
    }

    private void alongTheStroke(double x, double y) {
      double fromMiddle = 2 * x / plan.width() - 1;
      outwards = fromMiddle * fromMiddle;
      distance = Math.sqrt(1 + bow * outwards);
      lost = arc < 0 ? 1 : Math.pow(distance, -LOST_WITH_DISTANCE);
      double sum = 1;
      for (int i : shares) {
        sum += value(i) * departures.get(i).share(x, y, plan.width(), plan.height());
      }
      more = lost * Math.max(LEAST_LEFT, sum);
    }

    private void acrossTheStrokes(double y) {
      double w = fan * distance;
      double scale = front * more / distance;
      double middle = plan.height() / 2;
      double sum = 0;
      double byStep = 0;
      double byShape = 0;
      byWidth = 0;
      byTilt = 0;
      int n = 0;
      for (int i : edges) {
        slopes[first() + i] = 0;
      }
      for (int c = 0; c < passes.length; c++) {
        double byShift = 0;
        for (double written : passes[c]) {
          double off = stretch * (written - middle);
          double u = 2 * (y - middle - p[SHIFT + c] - off) / w;
          byHeight[n] = 0;
          ofPass[n] = 0;
          if (Math.abs(u) < FanShape.REACH) {
            shape.place(u);
            double times = times(written, scale);
            double byY = -2 / w * shape.byPlace * times;
            sum += shape.at * times;
            byShift += byY;
            byStep += byY * off;
            byWidth -= shape.byPlace * u * times;
            byShape += shape.byShape * times;
            byTilt += shape.byLean * times;
            byHeight[n] = scale * byY;
            ofPass[n] = scale * shape.at * times;
          }
          n++;
        }
        slopes[SHIFT + c] = scale * byShift;
      }
      passesOnly = scale * sum;
      byWidth *= scale;
      byTilt *= scale;
      slopes[STEP] = passesOnly + scale * byStep;
      slopes[FAN] = byWidth - passesOnly;
      slopes[SHAPE] = scale * byShape;
    }

    /** How often a pass was sprayed; adds what one time more would do to the slopes. */
    private double times(double written, double scale) {
      double times = 1;
      for (int i : edges) {
        if (((Departure.Outermost) departures.get(i)).counts(written, plan.height())) {
          times += value(i);
          slopes[first() + i] += scale * shape.at;
        }
      }
      return times;
    }

    /** Adds to the slopes what one strip of a stroke's worth of each coat does; its film. */
    private double strip(double height, int parameter, double y) {
      double u = 2 * (y - height) / fan;
      slopes[parameter] = 0;
      if (!(Math.abs(u) < FanShape.REACH)) {
        return 0;
      }
      shape.place(u);
      double scale = front * passes.length;
      double film = p[parameter] * scale * shape.at;
      slopes[parameter] = scale * shape.at;
      slopes[STEP] += film;
      slopes[FAN] -= film + p[parameter] * scale * shape.byPlace * u;
      slopes[SHAPE] += p[parameter] * scale * shape.byShape;
      byTilt += p[parameter] * scale * shape.byLean;
      return film;
    }

    private void slopesOfShares(double x, double y) {
      for (int i : shares) {
        double share = departures.get(i).share(x, y, plan.width(), plan.height());
        slopes[first() + i] = passesOnly * share * lost / more;
      }
      if (tilt >= 0) {
        slopes[first() + tilt] = byTilt;
      }
      if (arc >= 0) {
        double byDistance = (byWidth - (1 + LOST_WITH_DISTANCE) * passesOnly) / distance;
        double byMissing = (bow + 1) / (LOST_WITH_DISTANCE * (1 - value(arc)));
        slopes[first() + arc] = byDistance * outwards / distance * byMissing;
      }
    }
  }
}
