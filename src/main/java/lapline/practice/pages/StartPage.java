package lapline.practice.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.Attempt;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.practice.GunCard;
import lapline.practice.LookAfterGunCards;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.StartAttempt;

/** Which panel do I begin? Starts its record, or goes on with the one that is open. */
@Named
@RequestScoped
public class StartPage {
  @Inject private SignedIn signedIn;
  @Inject private PracticeTasks tasks;
  @Inject private StartAttempt start;
  @Inject private FindAttempts find;
  @Inject private LookAfterGunCards gunCards;
  @Inject private LastAdvice advice;
  private String taskId;
  private String gunCard;
  private String changedWhat;
  private String code;

  /** Known from the start: the fields are looked up before a page's parameters are set. */
  @PostConstruct
  void know() {
    taskId =
        FacesContext.getCurrentInstance().getExternalContext().getRequestParameterMap().get("task");
  }

  /** The task must be there before the page is shown. */
  public void open() {
    getTask();
  }

  public String begin() {
    UUID card = gunCard == null || gunCard.isEmpty() ? null : EntryPage.uuid(gunCard);
    return sheet(start.run(person(), taskId, card, changedWhat));
  }

  /** Where the code on a task sheet leads. */
  public String scan() {
    String tidy = code == null ? "" : code.strip().toLowerCase(Locale.ROOT);
    Attempt attempt = find.bySheetCode(person(), tidy);
    return attempt.isDraft() ? entry(attempt) : ResultLink.to(attempt);
  }

  /** A new panel begins with what it is about: its task sheet. */
  static String sheet(Attempt attempt) {
    return "/learn/task-sheet.xhtml?faces-redirect=true&attempt=" + attempt.id();
  }

  static String entry(Attempt attempt) {
    return "/learn/entry.xhtml?faces-redirect=true&attempt=" + attempt.id();
  }

  public PracticeTask getTask() {
    return tasks.find(taskId).orElseThrow(NotFoundException::new);
  }

  /** The draft that is open already; null for none. */
  public Attempt getDraft() {
    return start.open(person(), taskId).orElse(null);
  }

  public List<GunCard> getGunCards() {
    return gunCards.inUse(person());
  }

  private Person person() {
    return signedIn.person();
  }

  public String getTaskId() {
    return taskId;
  }

  public void setTaskId(String taskId) {
    this.taskId = taskId;
  }

  public String getGunCard() {
    return gunCard;
  }

  public void setGunCard(String gunCard) {
    this.gunCard = gunCard;
  }

  public String getChangedWhat() {
    return changedWhat == null ? getLastAdvice() : changedWhat;
  }

  /** The one change that the last result of this task asks for; empty for none. */
  public String getLastAdvice() {
    AttemptQuery last = AttemptQuery.of(person().workshop(), 0, 1).by(person().id()).under(taskId);
    return find.page(person(), last).stream()
        .map(attempt -> advice.of(person(), attempt))
        .findFirst()
        .orElse("");
  }

  public void setChangedWhat(String changedWhat) {
    this.changedWhat = changedWhat;
  }

  public String getCode() {
    return code;
  }

  public void setCode(String code) {
    this.code = code;
  }
}
