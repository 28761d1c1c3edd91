package lapline.trade.stroke;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.trade.BadCalls;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.PassPlan.Coat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public method that takes a number refuses what is none, and what lies out of range. */
class BadInputTest {
  private static final Estimate FAN = Estimate.of(0.23, 0.01);
  private static final Estimate NO_FAN = Estimate.of(0, 0.01);
  private static final Estimate SURE = Estimate.of(0.23, 0);
  private static final Estimate FAR = Estimate.of(0.41, 0.005);
  private static final Estimate SHAPE = Estimate.of(2, 0.2);
  private static final Coat COAT = Coat.even(0, 0.07, 0.23, 0.4, 0.006, 0.05, 0.02);
  private static final PassPlan PLAN = new PassPlan(0.6, 0.4, List.of(COAT), FAN, SHAPE);
  private static final List<Map<Integer, Estimate>> NOTHING = List.of(Map.of());

  private static BadCalls walk() {
    BadCalls all = new BadCalls();
    places(all);
    plans(all);
    written(all);
    films(all);
    readings(all);
    return all;
  }

  private static void places(BadCalls all) {
    all.numbers("Spot.new", a -> new Spot(a[0], a[1]), 0.1, 0.2)
        .numbers("FilmAt.new", a -> new FilmAt(a[0], a[1], a[2], 1e-6), 0.1, 0.2, 5e-5)
        .positives("FilmAt.new", a -> new FilmAt(0.1, 0.2, 5e-5, a[0]), 1e-6)
        .numbers("Strip.new", a -> new Departure.Strip(a[0]), 0.2)
        .positives("Ends.new", a -> new Departure.Ends(Departure.End.LEFT, a[0]), 0.1)
        .numbers("Outermost.new", a -> new Departure.Outermost(Departure.Edge.LOWER, a[0]), 0.1);
  }

  private static void plans(BadCalls all) {
    List<Coat> coats = List.of(COAT);
    all.positives("PassPlan.new", a -> new PassPlan(a[0], a[1], coats, FAN, SHAPE), 0.6, 0.4)
        .and("PassPlan.new", "no coat", () -> new PassPlan(0.6, 0.4, List.of(), FAN, SHAPE))
        .and("PassPlan.new", "no fan", () -> new PassPlan(0.6, 0.4, coats, NO_FAN, SHAPE))
        .and("PassPlan.new", "a sure fan", () -> new PassPlan(0.6, 0.4, coats, SURE, SHAPE))
        .and("PassPlan.new", "a flat fan", () -> new PassPlan(0.6, 0.4, coats, FAN, FAN))
        .positives(
            "Coat.new", a -> new Coat(List.of(0.0, 0.1), a[0], a[1], a[2]), 0.006, 0.05, 0.02)
        .and("Coat.new", "one pass", () -> new Coat(List.of(0.0), 0.006, 0.05, 0.02))
        .and("Coat.new", "downwards", () -> new Coat(List.of(0.1, 0.0), 0.006, 0.05, 0.02))
        .and(
            "Coat.new",
            "too few uncertainties",
            () -> new Coat(List.of(0.0, 0.1, 0.2), List.of(0.006), 0.05, 0.02))
        .and("Coat.new", "any step", () -> new Coat(List.of(0.0, 0.1), 0.006, 0.5, 0.02))
        .positives(
            "Coat.even", a -> Coat.even(0, a[0], 0.23, 0.4, a[1], a[2], 0.02), 0.07, 0.006, 0.05)
        .positives("Way.new", a -> new StrokeRecord.Way(PLAN, a[0]), 1)
        .and("StrokeRecord.new", "no way", () -> record(List.of(), 0, Optional.empty()))
        .and("StrokeRecord.new", "no number", () -> record(ways(), Double.NaN, Optional.empty()))
        .and("StrokeRecord.new", "all of the fan", () -> record(ways(), 1, Optional.empty()))
        .and("StrokeRecord.new", "a sure bow", () -> record(ways(), 0, Optional.of(SURE)));
  }

  private static List<StrokeRecord.Way> ways() {
    return List.of(new StrokeRecord.Way(PLAN, 1));
  }

  private static StrokeRecord record(
      List<StrokeRecord.Way> ways, double least, Optional<Estimate> bow) {
    return new StrokeRecord(ways, true, least, bow);
  }

  private static void written(BadCalls all) {
    all.positives(
            "WrittenPasses.new",
            a -> new WrittenPasses(a[0], a[1], FAN, a[2], NOTHING),
            0.6,
            0.4,
            0.07)
        .and("WrittenPasses.new", "no fan", () -> passes(NO_FAN, NOTHING))
        .and("WrittenPasses.new", "a sure fan", () -> passes(SURE, NOTHING))
        .and("WrittenPasses.new", "no coat", () -> passes(FAN, List.of()))
        .and("WrittenPasses.new", "to none", () -> passes(FAN, List.of(Map.of(0, FAN))))
        .and("WrittenPasses.new", "far off", () -> passes(FAN, List.of(Map.of(1, FAR))))
        .and("WrittenPasses.new", "no step", () -> passes(FAN, List.of(Map.of(2, NO_FAN))))
        .and(
            "WrittenPasses.record",
            "no number",
            () -> passes(FAN, NOTHING).record(Double.NaN, Optional.empty()));
  }

  private static WrittenPasses passes(Estimate fan, List<Map<Integer, Estimate>> steps) {
    return new WrittenPasses(0.6, 0.4, fan, 0.07, steps);
  }

  private static StrokeFilm film(double... a) {
    var pass = List.of(List.of(new StrokeFilm.Pass(0.1, 1)));
    return new StrokeFilm(
        a[0], a[1], a[2], a[3], a[4], a[5], 0, 0, 0, 0, List.of(), pass, List.of());
  }

  private static void films(BadCalls all) {
    StrokeFilm film = film(0.6, 0.4, 5e-5, 0.07, 0.23, 2);
    all.positives("StrokeFilm.new", BadInputTest::film, 0.6, 0.4, 5e-5, 0.07, 0.23, 2)
        .numbers(
            "StrokeFilm.new",
            a ->
                new StrokeFilm(
                    0.6,
                    0.4,
                    5e-5,
                    0.07,
                    0.23,
                    2,
                    a[0],
                    a[1],
                    a[2],
                    a[3],
                    List.of(),
                    film.coats(),
                    List.of()),
            0,
            0.2,
            0,
            0)
        .and(
            "StrokeFilm.new",
            "no coat",
            () ->
                new StrokeFilm(
                    0.6, 0.4, 5e-5, 0.07, 0.23, 2, 0, 0, 0, 0, List.of(), List.of(), List.of()))
        .numbers("Pass.new", a -> new StrokeFilm.Pass(a[0], a[1]), 0.1, 1)
        .numbers("Strip.new", a -> new StrokeFilm.Strip(a[0], a[1]), 0.1, 1)
        .positives("End.new", a -> new StrokeFilm.End(Departure.End.LEFT, a[0], 0.1), 0.1)
        .numbers("End.new", a -> new StrokeFilm.End(Departure.End.LEFT, 0.1, a[0]), 0.1)
        .positives("Change.new", a -> new StrokeFilm.Change(a[0], a[1], a[2], 0, 1), 0.07, 1, 1)
        .numbers("Change.new", a -> new StrokeFilm.Change(0.07, 1, 1, a[0], 1), 0.1)
        .and("Change.new", "no coat", () -> new StrokeFilm.Change(0.07, 1, 1, 0, 0))
        .numbers("StrokeFilm.at", a -> film.at(a[0], a[1]), 0.1, 0.2);
  }

  private static void readings(BadCalls all) {
    List<FilmAt> few = film(StrokeReading.LEAST_PLACES - 1, 5e-5);
    List<FilmAt> none = film(StrokeReading.LEAST_PLACES, 0);
    FittedFilm fitted = StrokeReading.of(PLAN, film(9, 5e-5)).film();
    all.numbers("FittedFilm.at", a -> fitted.at(a[0], a[1]), 0.1, 0.2)
        .and("StrokeReading.of", "too few", () -> StrokeReading.of(PLAN, few))
        .and("StrokeReading.of", "no film", () -> StrokeReading.of(PLAN, none))
        .and("ReadingPlan.of", "too few", () -> ReadingPlan.of(PLAN, ReadingPlan.LEAST - 1, 0.03))
        .and("ReadingPlan.of", "too many", () -> ReadingPlan.of(PLAN, ReadingPlan.MOST + 1, 0.03))
        .positives("ReadingPlan.of", a -> ReadingPlan.of(PLAN, 8, a[0]), 0.03)
        .positives(
            "ReadingPlan.worth",
            a -> ReadingPlan.worth(PLAN, List.of(new Spot(0.1, 0.1)), a[0]),
            0.03)
        .and("ReadingPlan.worth", "no place", () -> ReadingPlan.worth(PLAN, List.of(), 0.03))
        .positives("StripesSeen.share", a -> StripesSeen.share(List.of(0.1, 0.2), a[0]), 0.07)
        .and("StripesSeen.share", "no place", () -> StripesSeen.share(List.of(), 0.07))
        .and(
            "StripesSeen.next",
            "no step",
            () -> StripesSeen.next(PLAN, List.of(new Spot(0.1, 0.1)), new double[] {0}));
  }

  private static List<FilmAt> film(int count, double film) {
    return IntStream.range(0, count)
        .mapToObj(i -> new FilmAt(0.06 * i, 0.4 * ((i * 0.618) % 1), film, 1e-6))
        .toList();
  }

  static Stream<BadCalls.Case> cases() {
    return walk().cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void is_refused(BadCalls.Case given) {
    BadCalls.isRefused(given);
  }

  /** Results, and questions that any number has an answer to, are not asked. */
  @Test
  void no_public_method_is_left_out() {
    BadCalls all = walk();
    for (String any :
        List.of("Departure.share", "Along.share", "Across.share", "Ends.share", "Arc.farther")) {
      all.and(any, "has an answer to any number", () -> {});
    }
    all.leavesNoneOut(
        PassPlan.class, "StrokeReading", "Found", "Suspected", "Rival", "NextSpot", "FittedFilm");
  }
}
