package lapline.practice.pages;

import java.util.Comparator;
import java.util.Optional;
import lapline.practice.PanelScore;
import lapline.trade.measure.Verdict;

/** The answer of a result page in one line: accepted, or what most keeps it from being. */
final class ResultTitle {
  private final PanelScore score;
  private final PhraseWriter words;

  ResultTitle(PanelScore score, PhraseWriter words) {
    this.score = score;
    this.words = words;
  }

  String written() {
    if (score.accepted()) {
      return words.say("practice-result.title.accepted", Math.round(score.practiceScore()));
    }
    Optional<PanelScore.Result> worst =
        score.results().stream()
            .filter(r -> score.standing().contains(r.criterion().id()))
            .min(Comparator.comparingDouble(r -> r.judged() ? r.conformance() : 2));
    return worst
        .map(this::reason)
        .orElseGet(
            () -> words.say("practice-result.title.not-yet", Math.round(score.practiceScore())));
  }

  private String reason(PanelScore.Result r) {
    String label = r.criterion().label();
    if (!r.judged()) {
      return words.say("practice-result.title.unmeasured", label);
    }
    if (r.verdict() == Verdict.DOUBTFUL) {
      return words.say("practice-result.title.doubtful", label);
    }
    if (isFilm(r) && !score.film().areas().isEmpty()) {
      var area = score.film().areas().get(0);
      return words.say(
          area.thin() ? "practice-result.title.thin" : "practice-result.title.thick",
          words.word(area.where()));
    }
    double out = r.target().outsideBy(r.value());
    return words.say(
        out < 0
            ? "practice-result.title.low"
            : out > 0 ? "practice-result.title.high" : "practice-result.title.uneven",
        label);
  }

  private boolean isFilm(PanelScore.Result r) {
    return score.film() != null && r.criterion().quantity().startsWith("film");
  }
}
