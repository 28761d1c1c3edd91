package lapline.practice.pages;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lapline.practice.FilmField.Area;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.Phrase;
import lapline.practice.PracticeTask;
import lapline.practice.Whereabouts;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.Verdict;

/** The answer of a result page in one line: accepted, or what most keeps it from being. */
final class ResultTitle {
  private static final Map<String, String> BOTH =
      Map.of(
          "area.left-end", "area.both-ends",
          "area.right-end", "area.both-ends",
          "area.lower-edge", "area.both-edges",
          "area.upper-edge", "area.both-edges");

  private final PracticeTask task;
  private final PanelScore score;
  private final CriterionWriter criteria;
  private final PhraseWriter words;
  private final boolean strayStands;

  /**
   * @param strayStands whether the readings that stray have been read again and stray as before
   */
  ResultTitle(PracticeTask task, PanelScore score, CriterionWriter criteria, boolean strayStands) {
    this.task = task;
    this.score = score;
    this.criteria = criteria;
    this.words = criteria.words();
    this.strayStands = strayStands;
  }

  String written() {
    if (score.accepted()) {
      return words.say("practice-result.title.accepted", Math.round(score.practiceScore()));
    }
    if (first().filter(Finding::strays).isPresent()) {
      return stray(first().orElseThrow());
    }
    return score.results().stream()
        .filter(r -> score.standing().contains(r.criterion().id()))
        .min(
            Comparator.comparing(ResultTitle::order)
                .thenComparing(r -> !isToldFirst(r))
                .thenComparing(r -> -lost(r)))
        .map(this::reason)
        .orElseGet(
            () -> words.say("practice-result.title.not-yet", Math.round(score.practiceScore())));
  }

  private Optional<Finding> first() {
    return score.findings().stream().findFirst();
  }

  private String stray(Finding stray) {
    List<String> places =
        stray.evidence().stream()
            .filter(e -> e.key().startsWith(Finding.STRAY_EVIDENCE))
            .map(e -> e.args().get(0).word())
            .distinct()
            .toList();
    return words.say(
        strayStands ? "practice-result.title.stray-stands" : "practice-result.title.stray",
        places.size(),
        String.join(", ", places));
  }

  /** Whether the page goes on with this criterion, or with what the stroke did to the film. */
  private boolean isToldFirst(PanelScore.Result r) {
    return first()
        .filter(f -> f.isAbout(r) || isFilm(r) && score.results().stream().noneMatch(f::isAbout))
        .isPresent();
  }

  /**
   * What is missed goes before what is in doubt or may be missed by a slip alone, and that before
   * what was not measured.
   */
  private static int order(PanelScore.Result r) {
    boolean missed = r.verdict() == Verdict.MISSED && !r.hangsOnStrays();
    return !r.judged() ? 2 : missed ? 0 : 1;
  }

  /** The one that cost most stands in the title, as it stands first among the causes. */
  private static double lost(PanelScore.Result r) {
    return r.criterion().weight() * (1 - r.points());
  }

  private String reason(PanelScore.Result r) {
    String label = r.criterion().label();
    if (!r.judged()) {
      return words.say("practice-result.title.unmeasured", label);
    }
    Optional<Finding> strays = score.strays().filter(s -> r.hangsOnStrays());
    if (strays.isPresent()) {
      return stray(strays.get());
    }
    if (r.verdict() == Verdict.DOUBTFUL) {
      return words.say("practice-result.title.doubtful", label);
    }
    if (isFilm(r) && !score.film().areas().isEmpty()) {
      return area(score.film().areas());
    }
    return Whereabouts.brief(task, r).map(where -> found(r, where)).orElseGet(() -> value(r));
  }

  /** The worst one; where the other end or edge of the panel is out the same way, both. */
  private String area(List<Area> areas) {
    Area worst = areas.get(0);
    String both = BOTH.getOrDefault(worst.where(), "");
    boolean other =
        areas.stream()
            .skip(1)
            .anyMatch(a -> a.thin() == worst.thin() && both.equals(BOTH.get(a.where())));
    return words.say(
        worst.thin() ? "practice-result.title.thin" : "practice-result.title.thick",
        words.word(other ? both : worst.where()));
  }

  private String found(PanelScore.Result r, Phrase where) {
    return Whereabouts.namesItself(r)
        ? words.say("practice-result.title.part", words.phrase(where))
        : words.say("practice-result.title.found", r.criterion().label(), words.phrase(where));
  }

  private String value(PanelScore.Result r) {
    return words.say(
        r.target().outsideBy(r.value()) == 0
            ? "practice-result.title.uneven"
            : "practice-result.title.out",
        r.criterion().label(),
        criteria.value(r.criterion(), Estimate.of(r.value(), 0)),
        criteria.target(r.criterion()));
  }

  private boolean isFilm(PanelScore.Result r) {
    return score.film() != null && r.criterion().quantity().startsWith("film");
  }
}
