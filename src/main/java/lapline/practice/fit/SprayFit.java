package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.WrittenPasses;

/**
 * Reads likely causes from the film of a panel: what {@link StrokeReading} finds in it, and whether
 * the film as a whole is too much or too little.
 *
 * <p>Needs 8 places for a pattern and 1 for the amount; says nothing where there are fewer. Dry
 * film where it was read, else wet film. What places can show depends on where they lie: stripes
 * along the strokes need places at many heights, not in three or four rows, and what happens at the
 * ends needs places near them; see SprayFitProperties. It names at most three faults of one hand
 * and one amount, the largest effect on the film first. Deterministic.
 */
public final class SprayFit {
  private static final List<String> DRY = List.of("film-build", "film-after");

  private SprayFit() {}

  public static Explanation explain(PracticeTask task, PanelEntry entry) {
    Map<Integer, Estimate> dry = BuildByPlace.dryByPlace(entry);
    return dry.isEmpty()
        ? explain(task, entry, BuildByPlace.wetByPlace(entry), List.of("wet-film"))
        : explain(task, entry, dry, DRY);
  }

  private static Explanation explain(
      PracticeTask task,
      PanelEntry entry,
      Map<Integer, Estimate> byPlace,
      List<String> quantities) {
    PlacedFilm film = PlacedFilm.on(task.panel(), byPlace);
    if (film.size() == 0 || !(film.mean > 0)) {
      return Explanation.none();
    }
    Optional<TargetRange> target = Amount.target(task, quantities);
    if (film.size() < StrokeReading.LEAST_PLACES) {
      return Explanation.of(
          fewPlaces(task, film, quantities.equals(DRY), amount(task, entry, target, film.level())));
    }
    Technique technique = Technique.of(task, entry);
    WrittenPasses written = WrittenStrokes.of(task, entry, technique);
    Optional<StrokeReading> read = read(written, technique, film);
    if (read.isEmpty()) {
      return Explanation.of(List.of(Doubts.noPattern(1)));
    }
    StrokeReading reading = read.get();
    List<Finding> findings =
        new ArrayList<>(new StrokeWords(reading, technique, written, target).findings());
    amount(task, entry, target, reading.meanFilm())
        .ifPresent(f -> findings.add(rank(reading, target.orElseThrow()), f));
    Doubts doubts = new Doubts(reading, film, written.stripedSteps());
    findings.addAll(doubts.findings());
    doubts.blind().ifPresent(f -> findings.add(0, f));
    return new Explanation(findings, film.named(reading.strays()), reading.film().numbers());
  }

  /**
   * Empty where the readings are so wild that the sums of a fit lose their digits: half of them
   * bare, the other half ten times what it should be.
   */
  private static Optional<StrokeReading> read(
      WrittenPasses written, Technique technique, PlacedFilm film) {
    try {
      return Optional.of(
          StrokeReading.of(
              written.record(technique.leastOverlap(), technique.bow()), film.readings()));
    } catch (MeasureException wild) {
      return Optional.empty();
    }
  }

  /** A panel that never had enough places is not blamed for it. */
  private static List<Finding> fewPlaces(
      PracticeTask task, PlacedFilm film, boolean dry, Optional<Finding> amount) {
    List<Finding> findings = new ArrayList<>(amount.map(List::of).orElse(List.of()));
    boolean asked = task.panel().places().size() >= StrokeReading.LEAST_PLACES;
    if (asked && dry) {
      findings.add(0, Doubts.tooFew(film.size()));
    }
    return findings;
  }

  private static Optional<Finding> amount(
      PracticeTask task, PanelEntry entry, Optional<TargetRange> target, Estimate mean) {
    return target.flatMap(t -> new Amount(mean, t, MixSolids.ratio(task, entry)).finding());
  }

  /** How many faults shift more film than is missing or over on the whole. */
  private static int rank(StrokeReading reading, TargetRange target) {
    double outside = Math.abs(target.outsideBy(reading.meanFilm().value()));
    return (int) reading.faults().stream().filter(f -> f.film().value() > outside).count();
  }
}
