package lapline.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import lapline.practice.Criterion;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Result;
import lapline.practice.PracticeTask;
import lapline.practice.pages.CriterionWriter;
import lapline.practice.pages.PhraseWriter;

/**
 * A panel's score as programs get it: numbers in SI, and the same in a person's words and units.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ScoreText(
    double practiceScore,
    boolean accepted,
    List<String> standing,
    List<Judged> criteria,
    List<Cause> findings,
    FilmShare film,
    String scorer) {

  /** One criterion. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Judged(
      String criterion,
      String label,
      boolean judged,
      String verdict,
      Double conformance,
      Double value,
      Double standardUncertainty,
      Double degreesOfFreedom,
      Double expandedUncertainty,
      String shown,
      String target,
      boolean critical,
      double weight,
      Double points,
      List<String> missing,
      String advice) {}

  /**
   * One likely cause, or what the readings cannot show.
   *
   * @param decided whether {@code change} is to be made; else something is to be settled first
   */
  public record Cause(
      String id,
      double support,
      String cause,
      List<String> evidence,
      String change,
      boolean decided,
      Size estimate,
      List<Rival> rivals,
      List<Place> nextPlaces) {}

  /** How large it is, with the ends of value ± expanded uncertainty. */
  public record Size(
      String what, double value, double standardUncertainty, double low, double high) {}

  /** What else it could be. */
  public record Rival(String id, double support, String cause) {}

  /** Metres from the lower left corner of the panel. */
  public record Place(double x, double y) {}

  /**
   * The dry film over the panel, in metres and shares of its area.
   *
   * @param setAside places whose reading fits nothing around it and counts for nothing in this
   */
  public record FilmShare(
      double mean,
      double spread,
      double shareInside,
      double shareLow,
      double shareHigh,
      List<Integer> setAside) {}

  static ScoreText of(PracticeTask task, PanelScore score, CriterionWriter criteria) {
    return new ScoreText(
        score.practiceScore(),
        score.accepted(),
        score.standing(),
        score.results().stream().map(r -> judged(score, r, criteria)).toList(),
        score.findings().stream().map(f -> cause(task, score, f, criteria)).toList(),
        film(score),
        score.scorer());
  }

  private static Judged judged(PanelScore score, Result r, CriterionWriter criteria) {
    Criterion c = r.criterion();
    boolean yes = r.judged();
    return new Judged(
        c.id(),
        c.label(),
        yes,
        yes ? r.verdict().name().toLowerCase(java.util.Locale.ROOT) : null,
        yes ? r.conformance() : null,
        yes ? r.value() : null,
        yes ? r.standardUncertainty() : null,
        yes ? r.degreesOfFreedom() : null,
        yes && !r.shareOfArea() ? r.estimate().expandedUncertainty() : null,
        yes ? criteria.number(score, r) : null,
        criteria.target(c),
        c.critical(),
        c.weight(),
        yes ? r.points() : null,
        r.missing(),
        r.advice() == null ? null : criteria.words().phrase(r.advice()));
  }

  private static Cause cause(
      PracticeTask task, PanelScore score, Finding f, CriterionWriter criteria) {
    PhraseWriter writer = criteria.words();
    return new Cause(
        f.id(),
        f.support(),
        writer.phrase(f.cause()),
        criteria.evidence(task, score, f),
        writer.phrase(f.change()),
        f.decided(),
        size(f.estimate(), writer),
        f.rivals().stream()
            .map(r -> new Rival(r.id(), r.support(), writer.phrase(r.cause())))
            .toList(),
        f.nextPlaces().stream().map(p -> new Place(p.x(), p.y())).toList());
  }

  private static Size size(PanelScore.Size size, PhraseWriter writer) {
    if (size == null) {
      return null;
    }
    double half = size.estimate().expandedUncertainty();
    return new Size(
        writer.phrase(size.what()),
        size.value(),
        size.standardUncertainty(),
        size.value() - half,
        size.value() + half);
  }

  private static FilmShare film(PanelScore score) {
    return score.film() == null
        ? null
        : new FilmShare(
            score.film().mean(),
            score.film().spread(),
            score.film().shareInside(),
            score.film().shareLow(),
            score.film().shareHigh(),
            score.film().setAside());
  }
}
