package lapline.trade.film;

import static lapline.trade.measure.Estimate.of;

import java.util.List;
import java.util.stream.Stream;
import lapline.trade.BadCalls;
import lapline.trade.film.GaugeVerification.Accuracy;
import lapline.trade.film.GaugeVerification.OnStandard;
import lapline.trade.film.NonConformingArea.Place;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public method that takes a number refuses what is none, and what lies out of range. */
class BadInputTest {
  private static final TargetRange CLEAR = new TargetRange(50e-6, 65e-6);
  private static final VolumeSolids SOLIDS = new VolumeSolids(0.4);
  private static final Accuracy EXACT = new Accuracy(0, 0);
  private static final FilmReadings READINGS = new FilmReadings(List.of(60e-6, 61e-6, 62e-6));
  private static final Place CENTRE = new Place(1, 1);
  private static final Estimate GOOD = of(60e-6, 1e-6);
  private static final Estimate BELOW = of(-1e-6, 1e-6);

  private static BadCalls walk() {
    BadCalls all = new BadCalls();
    readings(all);
    plans(all);
    paint(all);
    return all;
  }

  private static void readings(BadCalls all) {
    all.numbers("FilmReadings.new", a -> new FilmReadings(List.of(a[0], a[1])), 5e-5, 6e-5)
        .and("FilmReadings.new", "none", () -> new FilmReadings(List.of()))
        .numbers("FilmReadings.less", a -> READINGS.less(a[0]), 1e-6)
        .and("FilmBuild.of", "before below 0", () -> FilmBuild.of(BELOW, GOOD))
        .and("FilmBuild.of", "after below 0", () -> FilmBuild.of(GOOD, BELOW))
        .numbers("FilmBuild.of", a -> FilmBuild.of(GOOD, GOOD, a[0]), 0.5)
        .and("FilmBuild.of", "correlation of 2", () -> FilmBuild.of(GOOD, GOOD, 2))
        .and("ShareInside.of", "one reading", () -> share(List.of(6e-5), CLEAR))
        .and("ShareInside.of", "all alike", () -> share(List.of(6e-5, 6e-5, 6e-5), CLEAR))
        .and("ShareInside.of", "no limit", () -> share(READINGS.metres(), open()))
        .and("ShareInside.of", "no room", () -> share(READINGS.metres(), new TargetRange(1, 1)))
        .positives(
            "ShareInside.confidenceOfAtLeast",
            a -> share(READINGS.metres(), CLEAR).confidenceOfAtLeast(a[0]),
            0.9)
        .positives(
            "ShareInside.interval", a -> share(READINGS.metres(), CLEAR).interval(a[0]), 0.95)
        .and("FurtherReadings.toSettleLikely", "one reading", () -> settle(1, 9))
        .and("FurtherReadings.toSettleLikely", "fewer than none", () -> settle(5, -1))
        .numbers(
            "FurtherReadings.toSettleLikely",
            a -> FurtherReadings.toSettleLikely(a[0], a[1], 5, a[2], CLEAR, a[3], 9),
            6e-5,
            1e-6,
            0,
            0.8)
        .numbers(
            "FurtherReadings.chanceSettled",
            a -> FurtherReadings.chanceSettled(a[0], a[1], 5, a[2], CLEAR, 9),
            6e-5,
            1e-6,
            0);
  }

  private static ShareInside share(List<Double> readings, TargetRange range) {
    return ShareInside.of(new FilmReadings(readings), range);
  }

  private static TargetRange open() {
    return new TargetRange(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static void settle(int count, int most) {
    FurtherReadings.toSettleLikely(6e-5, 1e-6, count, 0, CLEAR, 0.8, most);
  }

  private static void plans(BadCalls all) {
    all.positives("Iso19840.new", a -> new Iso19840(a[0], a[1], a[2]), 6e-5, 18e-5, 1)
        .and("Iso19840.new", "reversed", () -> new Iso19840(6e-5, 5e-5, 1))
        .positives("Iso19840.ofPanel", a -> Iso19840.ofPanel(a[0]), 6e-5)
        .positives("Iso19840.readingsWanted", a -> Iso19840.readingsWanted(a[0]), 1)
        .and("Iso19840.readingsWanted", "no area", () -> Iso19840.readingsWanted(0))
        .positives("Iso19840.repeatsAllowed", a -> Iso19840.repeatsAllowed(a[0]), 1)
        .and("Iso19840.judge", "more repeated than read", () -> repeated(4))
        .and("Iso19840.judge", "fewer than none repeated", () -> repeated(-1))
        .positives(
            "SspcPa2.new",
            a -> new SspcPa2(new TargetRange(a[0], 1), RestrictionLevel.LEVEL_3, a[1]),
            5e-5,
            1)
        .positives("SspcPa2.areasToMeasure", a -> SspcPa2.areasToMeasure(a[0]), 1)
        .and("SspcPa2.areasToMeasure", "no area", () -> SspcPa2.areasToMeasure(0))
        .positives("SspcPa2.aroundOneValue", a -> SspcPa2.aroundOneValue(a[0]), 1)
        .positives(
            "NonConformingArea.new",
            a -> NonConformingArea.about(CENTRE, new TargetRange(a[0], 1), a[1], a[2]),
            5e-5,
            2,
            2)
        .and("NonConformingArea.new", "no direction", () -> search(List.of()))
        .and("NonConformingArea.about", "failed beside it", () -> about(3))
        .numbers("Place.new", a -> new Place(a[0], a[1]), 1, 1)
        .and("NonConformingArea.with", "no direction", () -> about(1).with(8, READINGS))
        .positives(
            "SuspectShift.new",
            a -> new SuspectShift(new TargetRange(a[0], 1), RestrictionLevel.LEVEL_3, a[1]),
            5e-5,
            150)
        .and("SuspectShift.judge", "no areas", () -> shift().judge(List.of()))
        .and("SuspectShift.nonConforming", "no areas", () -> shift().nonConforming(List.of()))
        .positives("RestrictionLevel.spotLeast", a -> RestrictionLevel.LEVEL_3.spotLeast(a[0]), 1)
        .and("RestrictionLevel.spotMost", "no number", () -> spotMost(Double.NaN))
        .and("RestrictionLevel.spotMost", "no film", () -> spotMost(0))
        .and("RestrictionLevel.areaMost", "no number", () -> areaMost(Double.NaN))
        .and("GaugeVerification.new", "none", () -> new GaugeVerification(List.of()))
        .numbers("Accuracy.new", a -> new Accuracy(a[0], a[1]), 0.01, 1e-6)
        .positives("OnStandard.new", a -> new OnStandard(a[0], EXACT, EXACT, READINGS), 6e-5)
        .and("OnStandard.new", "one reading", () -> on(new FilmReadings(List.of(6e-5))));
  }

  private static NonConformingArea about(double x) {
    return NonConformingArea.about(new Place(x, 1), CLEAR, 2, 2);
  }

  private static void search(List<List<FilmReadings>> read) {
    new NonConformingArea(CLEAR, 2, 2, CENTRE, read);
  }

  private static SuspectShift shift() {
    return new SuspectShift(CLEAR, RestrictionLevel.LEVEL_3, 150);
  }

  private static void repeated(int readings) {
    Iso19840.ofPanel(60e-6).judge(READINGS, readings);
  }

  private static void spotMost(double most) {
    RestrictionLevel.LEVEL_3.spotMost(most);
  }

  private static void areaMost(double most) {
    RestrictionLevel.LEVEL_3.areaMost(most);
  }

  private static void on(FilmReadings readings) {
    new OnStandard(6e-5, EXACT, EXACT, readings);
  }

  private static void paint(BadCalls all) {
    all.positives("VolumeSolids.new", a -> new VolumeSolids(a[0]), 0.4)
        .and("VolumeSolids.new", "zero solids", () -> new VolumeSolids(0))
        .numbers("VolumeSolids.ofMix", a -> mix(List.of(a[0], 1.0), List.of(a[1], 0.0)), 4, 0.5)
        .and("VolumeSolids.ofMix", "nothing", () -> mix(List.of(), List.of()))
        .and("VolumeSolids.ofMix", "too few solids", () -> mix(List.of(1.0, 1.0), List.of(0.5)))
        .and("VolumeSolids.ofMix", "reducer alone", () -> mix(List.of(1.0), List.of(0.0)))
        .numbers("VolumeSolids.thinnedBy", a -> SOLIDS.thinnedBy(a[0]), 0.25)
        .numbers("VolumeSolids.dryFrom", a -> SOLIDS.dryFrom(a[0]), 1e-4)
        .and("VolumeSolids.dryFrom", "below 0", () -> SOLIDS.dryFrom(BELOW))
        .numbers("VolumeSolids.wetFor", a -> SOLIDS.wetFor(a[0]), 5e-5)
        .positives("SpreadingRate.theoretical", a -> SpreadingRate.theoretical(SOLIDS, a[0]), 5e-5)
        .and("SpreadingRate.theoretical", "no film", () -> SpreadingRate.theoretical(SOLIDS, 0))
        .numbers(
            "SpreadingRate.practical",
            a -> SpreadingRate.practical(SOLIDS, a[0], a[1], a[2]),
            5e-5,
            0.6,
            0.1)
        .and("SpreadingRate.practical", "all lost", () -> practical(1))
        .and("SpreadingRate.practical", "waste below 0", () -> practical(-0.1))
        .numbers(
            "SpreadingRate.volumeFor",
            a -> SpreadingRate.volumeFor(a[0], SOLIDS, a[1], a[2]),
            2,
            5e-5,
            0.6);
  }

  private static VolumeSolids mix(List<Double> parts, List<Double> solids) {
    return VolumeSolids.ofMix(parts, solids);
  }

  private static void practical(double waste) {
    SpreadingRate.practical(SOLIDS, 5e-5, 0.6, waste);
  }

  static Stream<BadCalls.Case> cases() {
    return walk().cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void is_refused(BadCalls.Case given) {
    BadCalls.isRefused(given);
  }

  /** A build may be any number, and no reading at all is too few for a plan, not an error. */
  @Test
  void no_public_method_is_left_out() {
    BadCalls all = walk();
    for (String any : List.of("FilmBuild.isPossible", "SspcPa2.judge")) {
      all.and(any, "has an answer to any number", () -> {});
    }
    all.leavesNoneOut(FilmBuild.class, "PlanOutcome", "Check", "Interval", "Spot");
  }
}
