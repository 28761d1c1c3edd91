package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Objects;
import lapline.board.FoundPanel;
import lapline.board.LookAtCohort;
import lapline.board.Paged;
import lapline.pages.Messages;
import lapline.people.SignedIn;

/** To whom did this happen, on which panels? */
@Named
@RequestScoped
public class FindingPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtCohort cohort;
  @Inject private Messages messages;
  @Inject private TaskWords words;
  private String unit = "";
  private String finding = "";
  private int page = 1;
  private Paged<FoundPanel> panels;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getPanels();
  }

  public Paged<FoundPanel> getPanels() {
    if (panels == null) {
      panels = cohort.found(signedIn.person(), unit, finding, page);
    }
    return panels;
  }

  public String getTitle() {
    return getPanels().rows().stream()
        .map(FoundPanel::task)
        .findFirst()
        .map(this::title)
        .orElseGet(() -> messages.say("board.found.title.none", LookAtCohort.DAYS));
  }

  private String title(String task) {
    return messages.say(
        "board.found.title",
        words.cause(task, finding),
        getPanels().paging().getCount(),
        LookAtCohort.DAYS);
  }

  public String getCaption() {
    return messages.say("board.found.caption", words.unit(unit));
  }

  public String getUnit() {
    return unit;
  }

  public void setUnit(String unit) {
    this.unit = Objects.requireNonNullElse(unit, "");
  }

  public String getFinding() {
    return finding;
  }

  public void setFinding(String finding) {
    this.finding = Objects.requireNonNullElse(finding, "");
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
