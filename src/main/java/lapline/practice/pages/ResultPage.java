package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.pages.Once;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.SignedIn;
import lapline.practice.Again;
import lapline.practice.Attempt;
import lapline.practice.Cell;
import lapline.practice.FindAttempts;
import lapline.practice.FurtherPlaces;
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
  private final Once<FirstCause> first = new Once<>(this::first);
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
    return new ResultTitle(getTask(), score(), say.criteria(), isStrayStands()).written();
  }

  /** The likeliest cause; null where the numbers point to none. */
  public FirstCause getFirst() {
    return first.get();
  }

  private FirstCause first() {
    return score().findings().stream()
        .findFirst()
        .map(f -> new FirstCause(f, getTask(), score(), say.criteria()))
        .orElse(null);
  }

  /** Whether the panel can be sprayed again with one thing changed. */
  public boolean isStrokeRead() {
    return PanelWhatIfPage.canRead(score());
  }

  public String getChangeHeading() {
    String kind = score().accepted() && getFirst().isDoubt() ? ".accepted" : getFirst().kind();
    return "practice-result.change" + (isMine() ? "" : "-of") + kind;
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
    String toDo = getFirst() != null && !isChangeTold() && !score().accepted() ? "-doubt" : "";
    return "practice-result.lead."
        + (score().accepted() ? "accepted" : "not-yet")
        + (open ? toDo : "-plain");
  }

  /** What else was found, each with its change where that is decided. */
  public List<String> getOthers() {
    return score().findings().stream().skip(1).map(this::other).toList();
  }

  private String other(PanelScore.Finding f) {
    return f.undecided()
        ? say.writer().say("practice-result.several", FirstCause.possible(f, say.writer()))
        : say.writer()
            .say("practice-result.other", say.sentence(f.cause()), say.sentence(f.change()));
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
    return new GapWords(tasks.measurands(), say.writer()).among(open);
  }

  /** Begins the next panel of the task, with the change noted on it where one is to be made. */
  public String next() {
    String change = isChangeTold() ? say.writer().noted(getFirst().getFinding().change()) : "";
    Attempt begun =
        start.run(signedIn.person(), judged().task().id(), judged().attempt().gunCard(), change);
    return StartPage.sheet(begun);
  }

  /** Whether the next panel is to differ in one thing; what is open asks for readings first. */
  public boolean isChangeTold() {
    return getFirst() != null && getFirst().isDecided();
  }

  /** Whether further readings of this panel would settle something, and may still be taken. */
  public boolean isWorthMeasuringAgain() {
    return isMine()
        && getAttempt().state() == Attempt.State.SCORED
        && (getFirst() != null && getFirst().isDoubt()
            || isMoreKeyable()
            || score().results().stream().anyMatch(ResultPage::isOpen));
  }

  /** Whether further readings are the main thing to do now, before the next panel. */
  public boolean isReadingsFirst() {
    return isWorthMeasuringAgain()
        && isMoreKeyable()
        && (getFirst().isOneOfSeveral() || isStrayInTheWay());
  }

  /** Whether it is accepted or not only shows when a reading that strays is taken again. */
  private boolean isStrayInTheWay() {
    return getFirst().isStray() && !score().accepted() && !isStrayStands();
  }

  /** Whether the readings that stray were opened to be read again, and stray as before. */
  public boolean isStrayStands() {
    Again before = getAttempt().again();
    return before != null
        && getFirst() != null
        && getFirst().isStray()
        && getFirst().getFinding().cause().equals(before.cause());
  }

  /** What one reading that strays is told of beside another cause; empty where there is none. */
  public Optional<PanelScore.Finding> getAlsoStrays() {
    return score().strays().filter(s -> getFirst() != null && !getFirst().isStray());
  }

  /** What the button says that opens this panel's readings again, as a message key. */
  public String getReadAgain() {
    if (!isReadingsFirst()) {
      return "practice-result.again";
    }
    return getFirst().isStray() ? "practice-result.correct" : "practice-result.add";
  }

  /** Whether the places that are advised get fields of their own when the panel is opened again. */
  public boolean isMoreKeyable() {
    return getFirst() != null
        && !getFirst().getFinding().nextPlaces().isEmpty()
        && getTask().field(BuildByPlace.AFTER).isPresent();
  }

  private static boolean isOpen(PanelScore.Result r) {
    return r.judged() ? r.verdict() == Verdict.DOUBTFUL : !r.missing().isEmpty();
  }

  /** Opens this panel's readings again. */
  public String measureAgain() {
    String field = getFirst() != null && getFirst().isStray() ? "&at=" + fieldOfFirstStray() : "";
    try {
      return StartPage.entry(again.run(signedIn.person(), getAttempt().id())) + field;
    } catch (NotAllowedException e) {
      errors.add(null, e.getMessage());
      return null;
    }
  }

  /** Of the entry page, so that nobody has to look for it among all others. */
  private String fieldOfFirstStray() {
    int place =
        FurtherPlaces.of(getTask().panel(), getFirst().getFinding().nextPlaces()).get(0).number();
    return EntryForm.Field.idOf(Cell.place(BuildByPlace.AFTER, place).key());
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
