package lapline.practice.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.ChooseGunCard;
import lapline.practice.FieldProblem;
import lapline.practice.FindAttempts;
import lapline.practice.GunCard;
import lapline.practice.KeepReadings;
import lapline.practice.KeptReading;
import lapline.practice.KeptReadings;
import lapline.practice.LookAfterGunCards;
import lapline.practice.PanelReading;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.ReadPanel;
import lapline.practice.ScoreAttempt;
import lapline.practice.TypedReading;
import lapline.trade.measure.UnitSystem;

/** Have I written everything down? The readings of one panel, kept as they are typed. */
@Named
@RequestScoped
public class EntryPage {
  /** Begins the names of the fields that hold readings. */
  static final String CELL = "cell:";

  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private ReadPanel read;
  @Inject private KeepReadings keep;
  @Inject private ScoreAttempt score;
  @Inject private ChooseGunCard choose;
  @Inject private LookAfterGunCards gunCards;
  @Inject private PracticeTasks tasks;
  @Inject private Errors errors;
  @Inject private Messages words;

  private String attemptId;
  private String gunCard;
  private String changedWhat;
  private Attempt attempt;
  private EntryForm form;
  private final Map<String, String> notKept = new LinkedHashMap<>();
  private final List<FieldProblem> problems = new ArrayList<>();

  /** Known from the start: the fields are looked up before a page's parameters are set. */
  @PostConstruct
  void know() {
    attemptId = parameters().get("attempt");
  }

  /** Opens the draft; a panel that has been scored leads to its result. */
  public String open() {
    load();
    if (!attempt.isDraft()) {
      return ResultLink.to(attempt);
    }
    if (!attempt.belongsTo(person().id())) {
      throw new NotAllowedException("entry.not-yours");
    }
    return null;
  }

  /** Keeps what is in the fields, for a browser without scripts. */
  public void save() {
    if (keepTyped()) {
      errors.newsHere("entry.kept");
    }
    load();
  }

  /** Keeps what is in the fields and has the panel judged; sent again, it leads to the result. */
  public String scorePanel() {
    try {
      return keepAndScore();
    } catch (NotAllowedException e) {
      load();
      if (attempt.isDraft() || !attempt.belongsTo(person().id())) {
        throw e;
      }
      return ResultLink.to(attempt);
    }
  }

  private String keepAndScore() {
    boolean kept = keepTyped();
    ScoreAttempt.Outcome outcome = kept ? score.run(person(), id(), submitKey()) : null;
    if (outcome instanceof ScoreAttempt.Scored scored) {
      return ResultLink.to(scored.attempt());
    }
    if (outcome instanceof ScoreAttempt.NotYet notYet) {
      tell(notYet.problems());
    }
    load();
    return null;
  }

  private boolean keepTyped() {
    choose.run(person(), id(), chosenGunCard(), changedWhat);
    KeptReadings kept = keep.run(person(), id(), base(), typed());
    kept.conflicts().forEach(c -> notKept.put(c.cell(), c.yours()));
    tell(
        kept.conflicts().stream()
            .map(c -> new FieldProblem(c.cell(), "entry.conflict", List.of(c.theirs(), c.yours())))
            .toList());
    tell(kept.refused());
    return kept.complete();
  }

  private List<TypedReading> typed() {
    List<TypedReading> typed = new ArrayList<>();
    parameters()
        .forEach(
            (name, text) -> {
              if (name.startsWith(CELL)) {
                typed.add(new TypedReading(name.substring(CELL.length()), text, base()));
              }
            });
    return typed;
  }

  /** Says what is wrong in the summary, in the words that stand beside the field. */
  private void tell(List<FieldProblem> found) {
    problems.addAll(found);
    form = null;
    for (EntryProblems.Line line : entryProblems().lines(found)) {
      EntryForm.Field field = getForm().field(line.cell());
      errors.add(field == null ? null : field.id(), line.key(), line.args().toArray());
    }
  }

  private EntryProblems entryProblems() {
    PhraseWriter writer = new PhraseWriter(words, units());
    return new EntryProblems(new GapWords(tasks.measurands(), writer), writer, this::label);
  }

  private String label(String cell) {
    EntryForm.Field field = getForm().field(cell);
    return field == null ? cell : field.label();
  }

  private void load() {
    attempt = find.attempt(person(), id());
    form = null;
  }

  public EntryForm getForm() {
    if (form == null) {
      List<KeptReading> kept = find.readings(person(), id());
      PanelReading reading = read.run(units(), getTask(), kept);
      EntryValues values =
          new EntryValues(kept, read.understood(reading.entry(), units()))
              .withTyped(notKept)
              .withProblems(problems, words)
              .withProblems(reading.problems(), words)
              .withQuestions(reading.questions(), words);
      form = new EntryFormWriter(getTask(), tasks.measurands(), units(), values, words).form();
    }
    return form;
  }

  public PracticeTask getTask() {
    return read.task(getAttempt());
  }

  public Attempt getAttempt() {
    if (attempt == null) {
      load();
    }
    return attempt;
  }

  public List<GunCard> getGunCards() {
    return gunCards.choosable(person(), getAttempt().gunCard());
  }

  /** The panel with the places at which this part of the record is read. */
  public EntryDrawing drawing(EntryForm.Part part) {
    return EntryDrawing.of(getTask().panel(), part.places());
  }

  /** The panel's own units, where the person has changed theirs since it was begun; else null. */
  public UnitSystem getOtherUnits() {
    return units() == person().units() ? null : units();
  }

  private UnitSystem units() {
    return getAttempt().units();
  }

  private Person person() {
    return signedIn.person();
  }

  private UUID id() {
    return uuid(attemptId);
  }

  private UUID chosenGunCard() {
    return gunCard == null || gunCard.isEmpty() ? null : uuid(gunCard);
  }

  /** Another's or a mistyped id looks like one that is not there. */
  static UUID uuid(String text) {
    try {
      return UUID.fromString(text);
    } catch (IllegalArgumentException | NullPointerException e) {
      throw new NotFoundException();
    }
  }

  private long base() {
    try {
      return Long.parseLong(parameters().getOrDefault("base", "0"));
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  private String submitKey() {
    String key = parameters().getOrDefault("submit", "");
    return key.isBlank() || key.length() > 80 ? id() + "/" + base() : key;
  }

  private static Map<String, String> parameters() {
    return FacesContext.getCurrentInstance().getExternalContext().getRequestParameterMap();
  }

  public String getAttemptId() {
    return attemptId;
  }

  public void setAttemptId(String attemptId) {
    this.attemptId = attemptId;
  }

  public String getGunCard() {
    return gunCard != null
        ? gunCard
        : getAttempt().gunCard() == null ? "" : "" + getAttempt().gunCard();
  }

  public void setGunCard(String gunCard) {
    this.gunCard = gunCard;
  }

  public String getChangedWhat() {
    return changedWhat != null ? changedWhat : getAttempt().changedWhat();
  }

  public void setChangedWhat(String changedWhat) {
    this.changedWhat = changedWhat;
  }
}
