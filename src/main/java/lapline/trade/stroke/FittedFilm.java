package lapline.trade.stroke;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;

/**
 * The film of a panel as a fit has it, and as it would have been with one thing otherwise.
 * Immutable.
 */
public final class FittedFilm {
  private final StrokeFit fit;
  private final StrokeModel model;
  private final double[] parameters;

  /** Whether it is the film that was read, and not one that might have been. */
  private final boolean read;

  private FittedFilm(StrokeFit fit, StrokeModel model, double[] parameters, boolean read) {
    this.read = read;
    this.fit = fit;
    this.model = model;
    this.parameters = parameters;
  }

  static FittedFilm of(StrokeFit fit) {
    return new FittedFilm(fit, fit.model(), fit.parameters(), true);
  }

  /** How the passes lie in it, before what the fit found to be otherwise. */
  public PassPlan plan() {
    return model.plan();
  }

  /** The same hand without this departure; the same film where it has none of it. */
  public FittedFilm without(Departure departure) {
    int i = model.departures().indexOf(departure);
    double[] less = parameters.clone();
    if (i >= 0) {
      less[model.first() + i] = 0;
    }
    return new FittedFilm(fit, model, less, false);
  }

  /** The same hand without departures of these kinds. */
  FittedFilm without(Set<Class<? extends Departure>> kinds) {
    double[] less = parameters.clone();
    for (int i = 0; i < model.departures().size(); i++) {
      if (kinds.contains(model.departures().get(i).getClass())) {
        less[model.first() + i] = 0;
      }
    }
    return new FittedFilm(fit, model, less, false);
  }

  /** The same passes by a hand without any departure. */
  FittedFilm steady() {
    double[] less = parameters.clone();
    Arrays.fill(less, model.first(), less.length, 0);
    return new FittedFilm(fit, model, less, false);
  }

  /** The same hand and film with its passes as in another plan of as many coats. */
  public FittedFilm along(PassPlan other) {
    return new FittedFilm(fit, new StrokeModel(other, model.departures()), parameters, false);
  }

  /** Film at these places, metres. */
  public double[] at(List<Spot> places) {
    StrokeModel.At at = model.at(parameters);
    return places.stream().mapToDouble(s -> at.film(s.x(), s.y())).toArray();
  }

  /** Film at one place, metres. */
  public double at(double x, double y) {
    return at(List.of(new Spot(x, y)))[0];
  }

  /** Share of the panel's area whose film lies in a range, by an even grid of places. */
  public double shareInside(TargetRange range) {
    double[] film = at(PanelSpots.area(model.plan()));
    return Arrays.stream(film).filter(f -> range.outsideBy(f) == 0).count() / (double) film.length;
  }

  /** Mean film over the panel, with what chance did to it in so far as it was read; metres. */
  public Estimate mean() {
    StrokeFit by = read ? fit.sharp() : fit;
    StrokeModel.At at = read ? by.model().at(by.parameters()) : model.at(parameters);
    List<Spot> spots = PanelSpots.area(model.plan());
    double[] slopes = new double[parameters.length];
    double[] chance = new double[2 * model.plan().passes()];
    double sum = 0;
    for (Spot s : spots) {
      sum += at.film(s.x(), s.y());
      for (int j = 0; j < slopes.length; j++) {
        slopes[j] += at.slopes[j] / spots.size();
      }
      double[] here = HandScatter.byChance(model.plan(), at);
      for (int k = 0; k < here.length; k++) {
        chance[k] += here[k] / spots.size();
      }
    }
    double value = sum / spots.size();
    return read
        ? by.cameOut(value - HandScatter.ofSteps(chance, by.chance()), slopes, chance)
        : Estimate.of(value, by.uncertaintyOf(slopes));
  }

  /** Highest less lowest of what this film has more than another, over the panel; metres. */
  double apartFrom(FittedFilm other) {
    return apart(other, PanelSpots.of(model.plan()));
  }

  /** The same along a line across the strokes through the middle. */
  double stripesBeside(FittedFilm other) {
    return apart(other, PanelSpots.across(model.plan()));
  }

  private double apart(FittedFilm other, List<Spot> places) {
    double[] one = at(places);
    double[] two = other.at(places);
    return PanelFits.spread(
        IntStream.range(0, one.length).mapToDouble(i -> one[i] - two[i]).toArray());
  }

  /** Highest less lowest along that line, metres. */
  double stripes() {
    return PanelFits.spread(at(PanelSpots.across(model.plan())));
  }

  /** The same as plain numbers, to be kept. */
  public StrokeFilm numbers() {
    return FilmNumbers.of(model, parameters);
  }
}
