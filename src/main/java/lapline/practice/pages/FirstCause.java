package lapline.practice.pages;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.practice.PanelScore;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.Rival;
import lapline.practice.Phrase;
import lapline.practice.PracticeTask;

/**
 * What stands first on a result page, in the reader's words: a cause that is decided and to be
 * changed, one of several that the readings cannot tell apart, or a doubt to be settled.
 */
public final class FirstCause {
  /** Begins the keys of how well the numbers fit a cause. */
  private static final String FIT = "cause.fit";

  private final Finding finding;
  private final PracticeTask task;
  private final PanelScore score;
  private final CriterionWriter criteria;

  FirstCause(Finding finding, PracticeTask task, PanelScore score, CriterionWriter criteria) {
    this.finding = finding;
    this.task = task;
    this.score = score;
    this.criteria = criteria;
  }

  public Finding getFinding() {
    return finding;
  }

  /** Whether nothing is surely wrong, and the first thing is only to make sure. */
  public boolean isDoubt() {
    return finding.doubtful();
  }

  /** Whether it is that readings fit nothing around them. */
  public boolean isStray() {
    return finding.strays();
  }

  /** Whether it is one of several, and something is to be read or done before one is changed. */
  public boolean isOneOfSeveral() {
    return finding.undecided();
  }

  public boolean isDecided() {
    return finding.decided();
  }

  /** What kind it is, as the end of a message key; empty for one that is decided. */
  String kind() {
    return isDoubt() ? ".doubt" : isOneOfSeveral() ? ".several" : "";
  }

  /**
   * Whether what was found goes before what to do about it: that a criterion came out too near its
   * limit to call, that a reading strays, or that no pattern fits.
   */
  public boolean isFoundBeforeChange() {
    return isDoubt()
        && (finding.fitsNoPattern()
            || finding.strays()
            || score.results().stream().anyMatch(finding::isAbout));
  }

  /** What tells the several causes apart: further readings, or what the sentence says. */
  public String getSettle() {
    PhraseWriter words = criteria.words();
    int places = finding.nextPlaces().size();
    return places > 0
        ? words.say("practice-result.several.read", places)
        : words.phrase(undecided().findFirst().orElseThrow());
  }

  private Stream<Phrase> undecided() {
    return finding.evidence().stream().filter(e -> e.key().startsWith(Finding.UNDECIDED));
  }

  /** All that it may be, likeliest first. */
  public String getPossible() {
    return possible(finding, criteria.words());
  }

  static String possible(Finding finding, PhraseWriter words) {
    List<String> rivals =
        finding.rivals().stream().map(Rival::cause).map(c -> quoted(c, words)).toList();
    int last = rivals.size() - 1;
    String others =
        Stream.concat(
                Stream.of(quoted(finding.cause(), words)), rivals.stream().limit(Math.max(0, last)))
            .collect(Collectors.joining(", "));
    return last < 0 ? others : words.say("practice-result.possible", others, rivals.get(last));
  }

  private static String quoted(Phrase cause, PhraseWriter words) {
    return words.say("practice-result.possible.cause", words.phrase(cause));
  }

  /** What speaks for it, but for how well the numbers fit it. */
  public List<String> getEvidence() {
    return criteria.evidence(task, score, finding.without(FIT).without(Finding.UNDECIDED));
  }

  /** How well the numbers fit it; empty where that was not computed. */
  public String getFit() {
    return finding.evidence().stream()
        .filter(e -> e.key().startsWith(FIT))
        .map(criteria.words()::phrase)
        .collect(Collectors.joining(" "));
  }

  /** Whether the causes were weighed against each other, so that their shares mean something. */
  public boolean isWeighed() {
    // causes in the task's own words only say how surely the criterion was missed
    double rivals = finding.rivals().stream().mapToDouble(Rival::support).sum();
    return !isDoubt() && finding.support() + rivals < 1.01;
  }

  /**
   * What is left for causes that are not named, 0 to 1; nil where that is less than half of 1 %.
   */
  public double getUnnamed() {
    double rivals = finding.rivals().stream().mapToDouble(Rival::support).sum();
    double rest = 1 - finding.support() - rivals;
    return rest < 0.005 ? 0 : rest;
  }

  /** Where further readings would tell it from its rivals, with their names. */
  public List<String> getNextPlaces() {
    return isOneOfSeveral()
        ? NextPlaceWords.ofSeveral(task.panel(), finding.nextPlaces(), criteria.words())
        : NextPlaceWords.of(task.panel(), finding.nextPlaces(), criteria.words());
  }
}
