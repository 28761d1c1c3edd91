package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Beta;

/**
 * Film of a {@link StrokeModel} with each pass where it came to lie and as fast as it was, by a fan
 * with a sharp rim (1 − u²)^(β−1): what the blurred rim of {@link FanShape} stands for where the
 * passes themselves are left to chance. Without derivatives.
 */
final class SharpFilm {
  private final StrokeModel model;
  private final PassPlan plan;
  private final double[] p;
  private final double[] height;
  private final double[] times;
  private final double fan;
  private final double power;
  private final double front;
  private final double bow;
  private double lean;
  private double missing;

  /** The departures that add a share of the film along and across, and those that add a strip. */
  private final List<Integer> shares = new ArrayList<>();

  private final List<Integer> strips = new ArrayList<>();

  /**
   * @param model with its passes as they were written down
   * @param chance steps and speeds in standard deviations, see {@link HandScatter}
   */
  SharpFilm(StrokeModel model, double[] parameters, double[] chance) {
    this.model = model;
    this.plan = model.plan();
    this.p = parameters;
    double beta = plan.beta().value() * Math.exp(p[StrokeModel.SHAPE]);
    double stretch = Math.exp(p[StrokeModel.STEP]);
    this.fan = plan.fanWidth().value() * Math.exp(p[StrokeModel.FAN]);
    this.power = beta - 1;
    // the film in the middle of a fan whose mean is 1
    double peak = 2 / Math.exp(Beta.logBeta(0.5, beta));
    double level = Math.exp(p[StrokeModel.LEVEL]);
    this.front = peak * level * plan.meanStep() * stretch / (fan * plan.coats().size());
    this.height = new double[plan.passes()];
    this.times = new double[plan.passes()];
    sort();
    this.bow = StrokeModel.bow(missing);
    place(stretch, HandScatter.moves(plan, chance), chance);
  }

  private void sort() {
    for (int i = 0; i < model.departures().size(); i++) {
      Departure d = model.departures().get(i);
      if (d instanceof Departure.Arc) {
        missing = value(i);
      } else if (d instanceof Departure.Tilt) {
        lean = value(i);
      } else if (d instanceof Departure.Strip) {
        strips.add(i);
      } else if (!(d instanceof Departure.Outermost)) {
        shares.add(i);
      }
    }
  }

  private double value(int departure) {
    return p[model.first() + departure];
  }

  private void place(double stretch, double[] moves, double[] chance) {
    double middle = plan.height() / 2;
    int n = 0;
    for (int c = 0; c < plan.coats().size(); c++) {
      for (double line : plan.coats().get(c).centrelines()) {
        height[n] = middle + p[StrokeModel.SHIFT + c] + stretch * (line + moves[n] - middle);
        times[n] = sprayed(line + moves[n]) * HandScatter.times(chance[times.length + n]);
        n++;
      }
    }
  }

  private double sprayed(double line) {
    double times = 1;
    for (int i = 0; i < model.departures().size(); i++) {
      if (model.departures().get(i) instanceof Departure.Outermost o
          && o.counts(line, plan.height())) {
        times += value(i);
      }
    }
    return times;
  }

  /** Metres. */
  double at(double x, double y) {
    double fromMiddle = 2 * x / plan.width() - 1;
    double distance = Math.sqrt(1 + bow * fromMiddle * fromMiddle);
    double lost = missing == 0 ? 1 : Math.pow(distance, -StrokeModel.LOST_WITH_DISTANCE);
    double share = 1;
    for (int i : shares) {
      share += value(i) * model.departures().get(i).share(x, y, plan.width(), plan.height());
    }
    double sum = 0;
    double each = 2 / (fan * distance);
    for (int k = 0; k < height.length; k++) {
      sum += times[k] * across(each * (y - height[k]));
    }
    double film = front * lost * Math.max(StrokeModel.LEAST_LEFT, share) / distance * sum;
    for (int i : strips) {
      double at = ((Departure.Strip) model.departures().get(i)).height();
      film += value(i) * front * plan.coats().size() * across(2 * (y - at) / fan);
    }
    return film;
  }

  private double across(double u) {
    double inside = 1 - u * u;
    return inside > 0 ? Math.pow(inside, power) * (1 + lean * u) : 0;
  }
}
