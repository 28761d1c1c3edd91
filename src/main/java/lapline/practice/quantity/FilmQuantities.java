package lapline.practice.quantity;

import static lapline.practice.quantity.Recorded.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.practice.Cell;
import lapline.practice.PanelScore.Input;
import lapline.practice.PanelScore.Working;
import lapline.practice.Reading;
import lapline.practice.fit.FilmFieldEstimate;
import lapline.practice.quantity.Measured.DoesNotApply;
import lapline.practice.quantity.Measured.Value;
import lapline.trade.film.FilmReadings;
import lapline.trade.film.Iso19840;
import lapline.trade.film.PlanOutcome;
import lapline.trade.film.RestrictionLevel;
import lapline.trade.film.SspcPa2;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Summary;
import lapline.trade.measure.TargetRange;

/** What the film readings say: wet film by coat, build by place, its share inside, and a plan. */
final class FilmQuantities {
  /** Fewest places from which a share of the area is estimated. */
  private static final int LEAST_PLACES = 5;

  private FilmQuantities() {}

  /** Mean wet film of each coat. */
  static Optional<Measured> wetFilm(MeasuredPanel panel) {
    Recorded recorded = new Recorded(panel.entry());
    List<Value> values = new ArrayList<>();
    for (int coat : recorded.coats("wet-film")) {
      List<Reading> readings = panel.entry().byPlace("wet-film", coat).values().stream().toList();
      values.add(Value.of(Cell.coat("wet-film", coat), Averages.overPlaces(readings)));
    }
    return Measured.of(values, new Working("formula.wet-film", "source.iso-2808", List.of()));
  }

  /** Dry film laid on at each place: the reading after less the one before. */
  static Optional<Measured> filmBuild(MeasuredPanel panel) {
    Map<Integer, Estimate> build = panel.build();
    List<Value> values = new ArrayList<>();
    build.forEach(
        (place, film) -> values.add(Value.of(Cell.place(PanelQuantities.FILM, place), film)));
    return Measured.of(values, new Working("formula.film-build", "source.gum", List.of()));
  }

  /** Share of the panel's area whose film lies inside the target of the build. */
  static Optional<Measured> filmShare(MeasuredPanel panel) {
    Map<Integer, Estimate> build = panel.everywhere();
    double[] shares =
        build.size() < LEAST_PLACES
            ? new double[0]
            : panel.film().map(FilmFieldEstimate::sharesInside).orElse(new double[0]);
    if (shares.length == 0) {
      return Optional.empty();
    }
    Summary s = Summary.of(shares);
    Value value =
        new Value(
            Cell.panel(PanelQuantities.FILM_SHARE),
            Estimate.of(s.mean(), s.standardDeviation()),
            range ->
                Arrays.stream(shares).filter(range::contains).count() / (double) shares.length);
    return Measured.of(
        List.of(value), new Working("formula.film-share", "source.kriging", inputs(build)));
  }

  /** 1 where the readings conform to the acceptance plan of ISO 19840, 0 where they do not. */
  static Optional<Measured> filmPlan(MeasuredPanel panel) {
    Map<Integer, Estimate> build = panel.build();
    Optional<TargetRange> target = panel.buildTarget();
    if (build.isEmpty() || target.isEmpty() || !target.get().hasLeast()) {
      return Optional.empty();
    }
    double area = panel.task().panel().width() * panel.task().panel().height();
    double nominal = target.get().least();
    PlanOutcome outcome = new Iso19840(nominal, 3 * nominal, area).judge(films(build));
    return decided("film-plan", outcome, "source.iso-19840", build);
  }

  /**
   * 1 where the readings conform to SSPC-PA 2 at its default level, 0 where they do not. Only for
   * panels whose places stand together in threes, as that standard's spots ask for.
   */
  static Optional<Measured> filmSpots(MeasuredPanel panel) {
    Map<Integer, Estimate> build = panel.build();
    Optional<TargetRange> target = panel.buildTarget().filter(TargetRange::hasLeast);
    if (build.isEmpty() || target.isEmpty()) {
      return Optional.empty();
    }
    List<FilmReadings> spots = FilmSpots.on(panel.task().panel(), build);
    double area = panel.task().panel().width() * panel.task().panel().height();
    SspcPa2 plan = new SspcPa2(target.get(), RestrictionLevel.LEVEL_3, area);
    return decided("film-spots", plan.judge(List.of(spots)), "source.sspc-pa-2", build);
  }

  private static Optional<Measured> decided(
      String id, PlanOutcome outcome, String source, Map<Integer, Estimate> build) {
    if (outcome.result() == PlanOutcome.Result.TOO_FEW_READINGS) {
      return Optional.empty();
    }
    if (outcome.result() == PlanOutcome.Result.OUT_OF_SCOPE) {
      return Optional.of(new DoesNotApply());
    }
    Value value = Value.of(Cell.panel(id), Estimate.of(outcome.accepted() ? 1 : 0, 0));
    return Measured.of(List.of(value), new Working("formula." + id, source, inputs(build)));
  }

  private static FilmReadings films(Map<Integer, Estimate> build) {
    return new FilmReadings(build.values().stream().map(Estimate::value).toList());
  }

  private static List<Input> inputs(Map<Integer, Estimate> build) {
    Summary s = Summary.of(build.values().stream().mapToDouble(Estimate::value).toArray());
    return List.of(
        input("places", Estimate.of(s.count(), 0), Dimension.COUNT),
        input("mean", Estimate.of(s.mean(), 0), Dimension.FILM),
        input("spread", Estimate.of(s.standardDeviation(), 0), Dimension.FILM),
        input("least", Estimate.of(s.least(), 0), Dimension.FILM),
        input("most", Estimate.of(s.most(), 0), Dimension.FILM));
  }
}
