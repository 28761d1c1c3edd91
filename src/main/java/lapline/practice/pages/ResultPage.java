package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.pages.Errors;
import lapline.pages.Once;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.Cell;
import lapline.practice.FindAttempts;
import lapline.practice.Gap;
import lapline.practice.Measurand;
import lapline.practice.MeasureAgain;
import lapline.practice.PanelScore;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.StartAttempt;
import lapline.practice.fit.BuildByPlace;
import lapline.trade.measure.Verdict;

/** A judged panel: was it good, why, and what to change. */
@Named
@RequestScoped
public class ResultPage {
  /** A score is rounded down to whole points, and is 99 at the most where anything is in doubt. */
  private static final double ROUNDING = 1.01;

  private static final String FIT = "cause.fit";

  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private StartAttempt start;
  @Inject private PracticeTasks tasks;
  @Inject private PeopleRecords people;
  @Inject private Say say;
  @Inject private MeasureAgain again;
  @Inject private Errors errors;

  // known before a form is read, since what is on the page depends on it
  @Inject
  @ManagedProperty("#{param.attempt}")
  private String attemptId;

  private final Once<FindAttempts.Judged> judged = new Once<>(this::find);
  private final Once<String> title = new Once<>(this::title);
  private final Once<List<ResultRow>> rows = new Once<>(this::rows);
  private final Once<List<Unjudged>> unjudged = new Once<>(this::unjudged);

  /** Leads to the entry page while the panel is not judged yet. */
  public String load() {
    Attempt attempt = find.attempt(signedIn.person(), id(attemptId));
    return attempt.isDraft() ? StartPage.entry(attempt) : null;
  }

  private FindAttempts.Judged judged() {
    return judged.get();
  }

  /** A page made before the panel's readings were opened again has no result to go on from. */
  private FindAttempts.Judged find() {
    return find.judged(signedIn.person(), id(attemptId))
        .orElseThrow(() -> new NotAllowedException("practice-result.open-again"));
  }

  public static UUID id(String text) {
    try {
      return UUID.fromString(String.valueOf(text));
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }

  public String getTitle() {
    return title.get();
  }

  private String title() {
    return new ResultTitle(getTask(), score(), say.criteria()).written();
  }

  /** The likeliest cause; null where the numbers point to none. */
  public PanelScore.Finding getFirst() {
    return score().findings().isEmpty() ? null : score().findings().get(0);
  }

  /** Whether the panel can be sprayed again with one thing changed. */
  public boolean isStrokeRead() {
    return PanelWhatIfPage.canRead(score());
  }

  /** Whether nothing is surely wrong, and the first thing is only to make sure. */
  public boolean isDoubtFirst() {
    return getFirst() != null && getFirst().doubtful();
  }

  public String getChangeHeading() {
    return "practice-result.change" + (isMine() ? "" : "-of") + (isDoubtFirst() ? ".doubt" : "");
  }

  /** What is said where the numbers point to no cause; only the person themselves is spoken to. */
  public String getNoCause() {
    if (score().accepted()) {
      return "practice-result.no-cause" + (isMine() ? ".accepted" : ".accepted-of");
    }
    boolean met =
        score().results().stream()
            .filter(PanelScore.Result::judged)
            .allMatch(r -> r.verdict() == Verdict.MET);
    return "practice-result.no-cause" + (met ? ".unmeasured" : "");
  }

  /** Whether the panel counts by its numbers, and what comes next for the person themselves. */
  public String getLead() {
    boolean change = score().accepted() || getFirst() != null;
    boolean open = isMine() && getAttempt().state() == Attempt.State.SCORED && change;
    String toDo = isDoubtFirst() && !score().accepted() ? "-doubt" : "";
    return "practice-result.lead."
        + (score().accepted() ? "accepted" : "not-yet")
        + (open ? toDo : "-plain");
  }

  /**
   * Whether what was found goes before what to do about it: that a criterion came out too near its
   * limit to call, or that no pattern fits.
   */
  public boolean isCauseFirst() {
    return isDoubtFirst()
        && (getFirst().fitsNoPattern() || score().results().stream().anyMatch(getFirst()::isAbout));
  }

  /** What speaks for the first cause, but for how well the numbers fit it. */
  public List<String> getEvidence() {
    return say.criteria().evidence(getTask(), score(), getFirst().without(FIT));
  }

  /** How well the numbers fit the first cause; empty where that was not computed. */
  public String getFit() {
    return getFirst().evidence().stream()
        .filter(e -> e.key().equals(FIT))
        .map(say::phrase)
        .collect(Collectors.joining(" "));
  }

  /** Whether the causes were weighed against each other, so that their shares mean something. */
  public boolean isWeighed() {
    // causes in the task's own words only say how surely the criterion was missed
    if (isDoubtFirst()) {
      return false;
    }
    double rivals = getFirst().rivals().stream().mapToDouble(PanelScore.Rival::support).sum();
    return getFirst().support() + rivals < 1.01;
  }

  public List<PanelScore.Finding> getOthers() {
    return score().findings().stream().skip(1).toList();
  }

  /** Where further readings would tell the likeliest cause from its rivals, with their names. */
  public List<String> getNextPlaces() {
    return NextPlaceWords.of(getTask().panel(), getFirst().nextPlaces(), say.writer());
  }

  /** What reading the panel again has changed; empty where it was read once. */
  public List<String> getAgain() {
    return AgainWords.of(getAttempt().again(), score(), say.writer());
  }

  /** What was missed first, then what is in doubt, then the rest. */
  public List<ResultRow> getRows() {
    return rows.get();
  }

  private List<ResultRow> rows() {
    CriterionWriter criteria = say.criteria();
    double weights = judgedResults().stream().mapToDouble(r -> r.criterion().weight()).sum();
    return judgedResults().stream()
        .sorted(Comparator.comparing(PanelScore.Result::verdict, Comparator.reverseOrder()))
        .map(r -> ResultRow.of(getTask(), score(), r, weights, criteria))
        .toList();
  }

  /** What the lines of the verdicts add up to. */
  public double getSum() {
    return getRows().stream().mapToDouble(ResultRow::gave).sum();
  }

  /** Whether the whole counts for less than its lines add up to, by more than rounding. */
  public boolean isLowered() {
    return getSum() - score().practiceScore() > ROUNDING;
  }

  private List<PanelScore.Result> judgedResults() {
    return score().results().stream().filter(PanelScore.Result::judged).toList();
  }

  /** What could not be judged, with what was wanted for it. */
  public List<Unjudged> getUnjudged() {
    return unjudged.get();
  }

  private List<Unjudged> unjudged() {
    return score().results().stream()
        .filter(r -> !r.judged())
        .map(r -> new Unjudged(r.criterion().label(), r.criterion().critical(), wanted(r)))
        .toList();
  }

  /**
   * A criterion without an answer.
   *
   * @param wanted labels of what was not measured
   */
  public record Unjudged(String label, boolean critical, String wanted) {}

  private String wanted(PanelScore.Result result) {
    List<Cell> open = result.missing().stream().map(Cell::of).toList();
    return Gap.among(open).stream().map(this::told).collect(Collectors.joining("; "));
  }

  private String told(Gap gap) {
    String label =
        tasks.measurands().find(gap.measurand()).map(Measurand::label).orElse(gap.measurand());
    return say.writer().say("practice-result.gap." + gap.kind(), (Object[]) gap.args(label));
  }

  /** Begins the next panel of the task, with the change noted on it where one is to be made. */
  public String next() {
    String change = isChangeTold() ? say.phrase(getFirst().change()) : "";
    Attempt begun =
        start.run(signedIn.person(), judged().task().id(), judged().attempt().gunCard(), change);
    return StartPage.sheet(begun);
  }

  /** Whether the next panel is to differ in one thing; a doubt asks for more care, no change. */
  public boolean isChangeTold() {
    return getFirst() != null && !isDoubtFirst();
  }

  /** Whether further readings of this panel would settle something, and may still be taken. */
  public boolean isWorthMeasuringAgain() {
    return isMine()
        && getAttempt().state() == Attempt.State.SCORED
        && (isDoubtFirst()
            || isMoreKeyable()
            || score().results().stream().anyMatch(ResultPage::isOpen));
  }

  /** Whether the places that are advised get fields of their own when the panel is opened again. */
  public boolean isMoreKeyable() {
    return getFirst() != null
        && !getFirst().nextPlaces().isEmpty()
        && getTask().field(BuildByPlace.AFTER).isPresent();
  }

  private static boolean isOpen(PanelScore.Result r) {
    return r.judged() ? r.verdict() == Verdict.DOUBTFUL : !r.missing().isEmpty();
  }

  /** Opens this panel's readings again. */
  public String measureAgain() {
    try {
      return StartPage.entry(again.run(signedIn.person(), getAttempt().id()));
    } catch (NotAllowedException e) {
      errors.add(null, e.getMessage());
      return null;
    }
  }

  public boolean isMine() {
    return judged().attempt().belongsTo(signedIn.person().id());
  }

  /** The name of whose panel it is. */
  public String getApprentice() {
    if (isMine()) {
      return signedIn.person().name();
    }
    UUID person = judged().attempt().person();
    return people.names(Set.of(person)).getOrDefault(person, "");
  }

  public Attempt getAttempt() {
    return judged().attempt();
  }

  public PracticeTask getTask() {
    return judged().task();
  }

  public PanelScore getScore() {
    return score();
  }

  private PanelScore score() {
    return judged().score();
  }

  public void setAttemptId(String attemptId) {
    this.attemptId = attemptId;
  }
}
