package lapline.grading.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.grading.DefectMark;
import lapline.grading.GradePanel;
import lapline.grading.Grading.Decision;
import lapline.grading.KeepGrading;
import lapline.grading.SeeGradings;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.people.pages.When;
import lapline.practice.Attempt;
import lapline.practice.PanelOutline;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.RubricItem;
import lapline.practice.pages.ResultPage;
import lapline.practice.pages.Say;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Unit;

/** The instructor's bench: is this panel acceptable to the eye? */
@Named
@RequestScoped
public class BenchPage {
  @Inject private SignedIn signedIn;
  @Inject private ResultPage result;
  @Inject private GradePanel grade;
  @Inject private KeepGrading keep;
  @Inject private EyePage eye;
  @Inject private SeeGradings see;
  @Inject private When when;
  @Inject private Errors errors;
  @Inject private Messages messages;
  @Inject private Say say;

  // known before the form is read, since what is on the page depends on it
  @Inject
  @ManagedProperty("#{param.attempt}")
  private String attemptId;

  private boolean judged;
  private BenchForm form;
  private List<DefectMark> defects;
  private DefectSpot.Wrong spotProblem = new DefectSpot.Wrong("", "");
  private final Map<String, String> problems = new HashMap<>();

  /** A panel without numbers is not for the bench yet. */
  public String open() {
    signedIn.person().mustBe(Role.INSTRUCTOR);
    result.setAttemptId(attemptId);
    judged = result.load() == null;
    if (judged) {
      return null;
    }
    errors.news("grading.bench.not-scored");
    return "/teach/needs.xhtml?faces-redirect=true";
  }

  /** Keeps what a sent form holds, whatever was pressed, before anything else is done with it. */
  public void keepSent() {
    if (FacesContext.getCurrentInstance().isPostback()) {
      keep.run(signedIn.person(), id(), getRemark(), form().marks(), defects());
    }
  }

  private UUID id() {
    return ResultPage.id(attemptId);
  }

  /** The numbers in short. */
  public ResultPage getResult() {
    if (!judged) {
      open();
    }
    return result;
  }

  public String getTitle() {
    Attempt attempt = getResult().getAttempt();
    long score = Math.round(attempt.outcome().practiceScore());
    return switch (attempt.state()) {
      case ACCEPTED -> messages.say("grading.bench.title.again-accepted", score);
      case RETURNED -> messages.say("grading.bench.title.again-returned", score);
      default ->
          messages.say(
              attempt.outcome().accepted()
                  ? "grading.bench.title.accepted"
                  : "grading.bench.title.not-yet",
              score);
    };
  }

  public String getApprentice() {
    return getResult().getApprentice();
  }

  /** Places one more defect where it was tapped or said. */
  public void place() {
    PracticeTask task = getResult().getTask();
    String kind = form().text("kind");
    DefectSpot spot = new DefectSpot(form(), task.panel(), say.writer(), signedIn.person().units());
    if (task.defects().stream().noneMatch(k -> k.id().equals(kind))) {
      spotProblem = new DefectSpot.Wrong("kinds", messages.get("grading.bench.kind-missing"));
    } else if (spot.wrong().isPresent()) {
      spotProblem = spot.wrong().get();
    } else if (defects().size() >= BenchForm.MOST_DEFECTS) {
      String tooMany = messages.say("grading.bench.too-many", BenchForm.MOST_DEFECTS);
      spotProblem = new DefectSpot.Wrong("defects", tooMany);
    } else {
      add(kind, spot.found().orElseThrow());
    }
  }

  private void add(String kind, PanelOutline.Point at) {
    defects().add(new DefectMark(kind, at.x(), at.y(), form().note()));
    keepSent();
  }

  public String accept() {
    return decide(Decision.ACCEPTED, "grading.bench.accepted");
  }

  public String giveBack() {
    return decide(Decision.RETURNED, "grading.bench.returned");
  }

  private String decide(Decision decision, String news) {
    Person by = signedIn.person();
    var bench = new GradePanel.Bench(decision, getRemark(), form().marks(), defects());
    List<GradePanel.Refusal> refusals =
        grade.run(by, getResult().getAttempt().id(), bench, seenAsSent());
    refusals.forEach(this::tell);
    if (!refusals.isEmpty()) {
      return null;
    }
    errors.news(news, getApprentice(), getResult().getTask().title());
    return "/teach/needs.xhtml?faces-redirect=true";
  }

  private UUID seenAsSent() {
    try {
      return UUID.fromString(form().text("seen"));
    } catch (IllegalArgumentException none) {
      return null;
    }
  }

  /** The latest grading that the page shows; empty for none. */
  public String getSeen() {
    return eye.of(getResult().getAttempt()).stream()
        .findFirst()
        .map(s -> s.grading().id().toString())
        .orElse("");
  }

  private void decidedSince() {
    SeeGradings.Signed latest = see.of(signedIn.person(), id()).get(0);
    String eyeKey = "grading.eye." + latest.grading().decision();
    String what = messages.say(eyeKey, latest.grader(), when.time(latest.grading().at()));
    errors.add(null, GradePanel.DECIDED_SINCE, what);
  }

  private void tell(GradePanel.Refusal refusal) {
    if (refusal.key().equals(GradePanel.DECIDED_SINCE)) {
      decidedSince();
      return;
    }
    boolean aboutRemark = refusal.key().contains("remark");
    String field =
        !refusal.item().isEmpty()
            ? "mark-" + refusal.item()
            : aboutRemark ? "remark" : refusal.key().endsWith("defect") ? "defects" : null;
    errors.add(field, refusal.key(), refusal.label());
    if (field != null) {
      problems.put(field, messages.say(refusal.key(), refusal.label()));
    }
  }

  /** What is wrong with a field; empty where nothing is. */
  public String problem(String field) {
    return problems.getOrDefault(field, "");
  }

  public boolean isMarked(RubricItem item, int mark) {
    return Integer.valueOf(mark).equals(form().marks().get(item.id()));
  }

  public DefectMap getMap() {
    return DefectMap.of(getResult().getTask(), defects(), say.writer());
  }

  /** The placed defects as hidden fields carry them. */
  public List<String> getLines() {
    return defects().stream().map(BenchForm::line).toList();
  }

  /** Text of a field as it was sent. */
  public String sent(String field) {
    return form().text(field);
  }

  public String getRemark() {
    return form().text("remark");
  }

  public String getLengthUnit() {
    return Unit.preferred(Dimension.LENGTH, signedIn.person().units()).symbol();
  }

  /** What keeps the defect from being placed, and the field it is about; both empty for nothing. */
  public DefectSpot.Wrong getSpotProblem() {
    return spotProblem;
  }

  /** Text of a field that is emptied once its defect has been placed. */
  public String untilPlaced(String field) {
    return spotProblem.says().isEmpty() ? "" : sent(field);
  }

  public Person getGrader() {
    return signedIn.person();
  }

  private List<DefectMark> defects() {
    if (defects == null) {
      defects = new ArrayList<>(form().defects());
    }
    return defects;
  }

  /** What was sent; on a page opened afresh, what was kept before. */
  private BenchForm form() {
    if (form == null) {
      FacesContext faces = FacesContext.getCurrentInstance();
      BenchForm sent = new BenchForm(faces.getExternalContext().getRequestParameterValuesMap());
      form =
          faces.isPostback()
              ? sent
              : keep.of(signedIn.person(), id()).map(BenchForm::of).orElse(sent);
    }
    return form;
  }
}
