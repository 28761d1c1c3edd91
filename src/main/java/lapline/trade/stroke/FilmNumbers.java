package lapline.trade.stroke;

import java.util.ArrayList;
import java.util.List;
import lapline.trade.stroke.StrokeFilm.End;
import lapline.trade.stroke.StrokeFilm.Pass;
import lapline.trade.stroke.StrokeFilm.Strip;

/** Writes the parameters of a {@link StrokeModel} out as a {@link StrokeFilm}. */
final class FilmNumbers {
  private final StrokeModel model;
  private final double[] p;

  private FilmNumbers(StrokeModel model, double[] parameters) {
    this.model = model;
    this.p = parameters;
  }

  static StrokeFilm of(StrokeModel model, double[] parameters) {
    return new FilmNumbers(model, parameters).film();
  }

  private StrokeFilm film() {
    PassPlan plan = model.plan();
    List<End> ends = new ArrayList<>();
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < model.departures().size(); i++) {
      double value = p[model.first() + i];
      if (model.departures().get(i) instanceof Departure.Ends e) {
        ends.add(new End(e.end(), e.length(), value));
      } else if (model.departures().get(i) instanceof Departure.Strip s) {
        strips.add(new Strip(s.height(), value));
      }
    }
    return new StrokeFilm(
        plan.width(),
        plan.height(),
        Math.exp(p[StrokeModel.LEVEL]),
        plan.meanStep() * Math.exp(p[StrokeModel.STEP]),
        plan.fanWidth().value() * Math.exp(p[StrokeModel.FAN]),
        plan.beta().value() * Math.exp(p[StrokeModel.SHAPE]),
        value(Departure.Tilt.class),
        value(Departure.Arc.class),
        value(Departure.Along.class),
        value(Departure.Across.class),
        ends,
        coats(plan),
        strips);
  }

  private double value(Class<? extends Departure> kind) {
    for (int i = 0; i < model.departures().size(); i++) {
      if (kind.isInstance(model.departures().get(i))) {
        return p[model.first() + i];
      }
    }
    return 0;
  }

  private List<List<Pass>> coats(PassPlan plan) {
    double middle = plan.height() / 2;
    List<List<Pass>> coats = new ArrayList<>();
    for (int c = 0; c < plan.coats().size(); c++) {
      List<Pass> passes = new ArrayList<>();
      for (double meant : plan.coats().get(c).centrelines()) {
        double off = Math.exp(p[StrokeModel.STEP]) * (meant - middle);
        passes.add(new Pass(middle + p[StrokeModel.SHIFT + c] + off, times(meant, plan)));
      }
      coats.add(passes);
    }
    return coats;
  }

  private double times(double meant, PassPlan plan) {
    double times = 1;
    for (int i = 0; i < model.departures().size(); i++) {
      if (model.departures().get(i) instanceof Departure.Outermost o
          && o.counts(meant, plan.height())) {
        times += p[model.first() + i];
      }
    }
    return times;
  }
}
