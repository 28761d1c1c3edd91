package lapline.practice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.practice.PanelEntry;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Estimate;

/**
 * Reads likely causes from the film of a panel: the deposit of spray passes is modelled, fitted to
 * the readings, and the causes compete ({@link CauseContest}).
 *
 * <p>Needs 5 places for a pattern and 1 for the amount; says nothing where there are fewer. Dry
 * film where it was read, else wet film. What places can show depends on where they lie: stripes
 * along the strokes need places at many heights, not in three or four rows, and what happens at the
 * ends needs places near them; see SprayFitProperties. It names at most three patterns and one
 * amount, the largest effect on the film first. Deterministic.
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
    if (film.size() < PLACES_FOR_A_PATTERN) {
      return amount(task, entry, quantities, film.level())
          .flatMap(Amount::finding)
          .map(List::of)
          .orElse(List.of());
    }
    Technique technique = Technique.of(task, entry);
    CauseContest contest = new CauseContest(film, technique);
    CauseFindings words = new CauseFindings(film, technique);
    List<Finding> findings =
        new ArrayList<>(contest.verdicts().stream().map(words::finding).toList());
    amount(task, entry, quantities, contest.meanFilm())
        .ifPresent(a -> a.finding().ifPresent(f -> findings.add(rank(a, contest), f)));
    return List.copyOf(findings);
  }

  private static Optional<Amount> amount(
      PracticeTask task, PanelEntry entry, List<String> quantities, Estimate mean) {
    return Amount.target(task, quantities)
        .map(target -> new Amount(mean, target, MixSolids.ratio(task, entry)));
  }

  /** How many patterns shift more film than is missing or over on the whole. */
  private static int rank(Amount amount, CauseContest contest) {
    return (int)
        contest.verdicts().stream()
            .filter(v -> v.leader().size().metres() > amount.outsideBy())
            .count();
  }
}
