package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Estimate;

/**
 * Reads likely causes from the film of a panel: the deposit of spray passes is modelled, fitted to
 * the readings, and the causes compete ({@link CauseContest}).
 *
 * <p>Needs 5 places for a pattern and 1 for the amount; says nothing where there are fewer. Dry
 * film where it was read, else wet film. It names at most three patterns and one amount, the
 * largest effect on the film first. Deterministic.
 */
public final class SprayFit {
  private static final int PLACES_FOR_A_PATTERN = 5;

  private SprayFit() {}

  public static List<Finding> explain(PracticeTask task, PanelEntry entry) {
    Map<Integer, Estimate> dry = BuildByPlace.dryByPlace(entry);
    return dry.isEmpty()
        ? explain(task, entry, BuildByPlace.wetByPlace(entry), List.of("wet-film"))
        : explain(task, entry, dry, List.of("film-build", "film-after"));
  }

  private static List<Finding> explain(
      PracticeTask task,
      PanelEntry entry,
      Map<Integer, Estimate> byPlace,
      List<String> quantities) {
    PlacedFilm film = PlacedFilm.on(task.panel(), byPlace);
    if (film.size() == 0 || !(film.mean > 0)) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    Amount.target(task, quantities)
        .flatMap(t -> new Amount(film.level(), t, MixSolids.ratio(task, entry)).finding())
        .ifPresent(findings::add);
    if (film.size() >= PLACES_FOR_A_PATTERN) {
      Technique technique = Technique.of(task, entry);
      CauseFindings words = new CauseFindings(film, technique);
      new CauseContest(film, technique).verdicts().forEach(r -> findings.add(words.finding(r)));
    }
    return List.copyOf(findings);
  }
}
