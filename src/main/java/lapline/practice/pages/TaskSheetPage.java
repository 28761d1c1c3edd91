package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.stream.Collectors;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.SvgWriter;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.Criterion;
import lapline.practice.FindAttempts;
import lapline.practice.PracticeTask;

/** The task sheet on the screen: to read, to print, to save. */
@Named
@RequestScoped
public class TaskSheetPage {
  @Inject private SignedIn signedIn;
  @Inject private FindAttempts find;
  @Inject private TaskSheets sheets;
  private String attemptId;
  private String paperName;
  private Attempt attempt;
  private PracticeTask task;
  private TaskSheet sheet;

  public void load() {
    Person by = signedIn.person();
    attempt = find.attempt(by, ResultPage.id(attemptId));
    task = sheets.task(by, attempt);
    sheet = sheets.of(by, attempt.id(), here());
  }

  private static String here() {
    var outside = FacesContext.getCurrentInstance().getExternalContext();
    return outside.getRequestScheme()
        + "://"
        + outside.getRequestServerName()
        + ":"
        + outside.getRequestServerPort()
        + outside.getRequestContextPath();
  }

  public String getSvg() {
    return sheet.on(getPaper()).stream().map(SvgWriter::write).collect(Collectors.joining());
  }

  public String getTitle() {
    return sheet.title();
  }

  public Attempt getAttempt() {
    return attempt;
  }

  public PracticeTask getTask() {
    return task;
  }

  public String target(Criterion criterion) {
    return sheets.target(attempt.units(), criterion);
  }

  public boolean isMine() {
    return attempt.belongsTo(signedIn.person().id());
  }

  /** The paper asked for; else the one usual where people measure in the reader's units. */
  public Paper getPaper() {
    boolean asked = paperName != null && !paperName.isEmpty();
    return asked ? Paper.of(paperName) : Paper.usualIn(signedIn.person().units());
  }

  public Paper getOtherPaper() {
    return getPaper() == Paper.A4 ? Paper.LETTER : Paper.A4;
  }

  public String getAttemptId() {
    return attemptId;
  }

  public void setAttemptId(String attemptId) {
    this.attemptId = attemptId;
  }

  public String getPaperName() {
    return paperName;
  }

  public void setPaperName(String paperName) {
    this.paperName = paperName;
  }
}
