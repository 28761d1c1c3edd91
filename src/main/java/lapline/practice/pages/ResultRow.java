package lapline.practice.pages;

import java.util.List;
import lapline.practice.Criterion;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.trade.measure.Verdict;

/**
 * One criterion's line on the result page, written in the reader's units.
 *
 * @param beside what stands in small beside the value; empty for nothing
 * @param gave what it gave of {@code weight}, both in points of the 100 of the practice score
 * @param parts the separate values, where there are several
 */
public record ResultRow(
    String id,
    String label,
    boolean critical,
    Verdict verdict,
    double conformance,
    String value,
    String beside,
    String target,
    double gave,
    double weight,
    String advice,
    String why,
    String targetSource,
    String formula,
    String formulaSource,
    List<Part> parts,
    List<Part> inputs) {

  /** A named value that went in; {@code sure} how surely it conforms, empty without a target. */
  public record Part(String name, String value, String sure) {}

  /** Whether it only decides on acceptance and is no part of the practice score. */
  public boolean weighsNothing() {
    return weight == 0;
  }

  static ResultRow of(
      PracticeTask task,
      PanelScore score,
      PanelScore.Result r,
      double allWeights,
      CriterionWriter criteria) {
    PhraseWriter words = criteria.words();
    Criterion c = r.criterion();
    double weight = allWeights > 0 ? 100 * c.weight() / allWeights : 0;
    return new ResultRow(
        c.id(),
        c.label(),
        c.critical(),
        r.verdict(),
        r.conformance(),
        criteria.value(task, score, r),
        criteria.beside(task, r),
        criteria.target(c),
        r.points() * weight,
        weight,
        words.phrase(r.advice()),
        words.words(c.why()),
        words.words(c.source()),
        r.working() == null ? "" : words.word(r.working().formula()),
        r.working() == null ? "" : words.word(r.working().source()),
        r.instances().stream().map(i -> part(i, c, criteria)).toList(),
        r.working() == null
            ? List.of()
            : r.working().inputs().stream().map(i -> part(i, criteria)).toList());
  }

  private static Part part(PanelScore.Instance i, Criterion c, CriterionWriter criteria) {
    return new Part(
        criteria.words().where(i.where()),
        criteria.value(c, i.estimate()),
        criteria
            .words()
            .say("drawing.verdict.short", Verdict.of(i.conformance()).perCent(i.conformance())));
  }

  private static Part part(PanelScore.Input i, CriterionWriter criteria) {
    return new Part(criteria.input(i), criteria.words().quantity(i.estimate(), i.dimension()), "");
  }
}
