package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.practice.ChangeTargets;
import lapline.practice.Criterion;
import lapline.practice.FieldProblem;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.RestingTargets;
import lapline.practice.TargetOverride;
import lapline.practice.TargetText;
import lapline.trade.measure.TargetRange;

/** What does our data sheet say here? Asked, shown as understood, and only then set. */
@Named
@RequestScoped
public class TargetPage {
  private static final String COURSE = "course";

  @Inject private SignedIn signedIn;
  @Inject private PracticeTasks tasks;
  @Inject private ChangeTargets targets;
  @Inject private Errors errors;
  @Inject private Say say;

  @Inject
  @ManagedProperty("#{param.task}")
  private String taskId;

  @Inject
  @ManagedProperty("#{param.criterion}")
  private String criterionId;

  /** Sent by the second step's form, so that it is there to be read when it comes back. */
  @Inject
  @ManagedProperty("#{param.asking}")
  private String askingAlready;

  @Inject
  @ManagedProperty("#{param.seen}")
  private String seen;

  private Boolean asking;
  private boolean changedSince;
  private String target = "";
  private String sheet = "";
  private String reason = "";

  public PracticeTask getTask() {
    return tasks.find(taskId).orElseThrow(NotFoundException::new);
  }

  public Criterion getCriterion() {
    return targets.criterion(person(), taskId, criterionId);
  }

  /** The workshop's own target now; null where the course's holds. */
  public TargetOverride getOwn() {
    return targets.history(person(), taskId).stream()
        .filter(o -> o.inForce() && o.criterion().equals(criterionId))
        .findFirst()
        .orElse(null);
  }

  /** The first step: is it a target at all? */
  public void ask() {
    asking = told(targets.look(person(), taskId, criterionId, target, sheet, reason));
  }

  /** The second step: yes, this is what we mean. */
  public String set() {
    asking = false;
    return told(targets.run(person(), taskId, criterionId, target, sheet, reason, seenAsSent()))
        ? saved()
        : null;
  }

  /**
   * The workshop's own target that was looked at before anything was asked, or that the course's
   * held.
   */
  public String getSeen() {
    boolean first = seen == null || seen.isEmpty();
    if (!first && !changedSince) {
      return seen;
    }
    TargetOverride own = getOwn();
    return own == null ? COURSE : own.id().toString();
  }

  private UUID seenAsSent() {
    try {
      return UUID.fromString(String.valueOf(seen));
    } catch (IllegalArgumentException none) {
      return null;
    }
  }

  public void again() {
    asking = false;
  }

  private String saved() {
    errors.news("targets.saved");
    return "/office/targets.xhtml?faces-redirect=true&task=" + taskId;
  }

  private boolean told(List<FieldProblem> problems) {
    changedSince = problems.stream().anyMatch(p -> p.key().startsWith(ChangeTargets.CHANGED_SINCE));
    problems.forEach(p -> errors.add(p.cell(), p.key(), p.args().toArray()));
    return problems.isEmpty();
  }

  public boolean isAsking() {
    return asking == null ? "yes".equals(askingAlready) : asking;
  }

  /** What is to be set, as it was understood, in the reader's units. */
  public String getWanted() {
    return say.written(target, getCriterion().spoken());
  }

  /** Whether nothing that the course accepts would be accepted any more: most likely a slip. */
  public boolean isElsewhere() {
    TargetRange course = getCriterion().target();
    return TargetText.understand(target, getCriterion().spoken(), person().units())
        .asRange()
        .filter(wanted -> wanted.least() > course.most() || wanted.most() < course.least())
        .isPresent();
  }

  /** The sign of the unit that a bare figure is in, as it stands behind a figure. */
  public String getUnit() {
    String sign = getCriterion().spoken().in(person().units()).symbol();
    return sign.isEmpty() ? "" : "\u00a0" + sign;
  }

  public RestingTargets getResting() {
    return RestingTargets.on(getCriterion(), getTask());
  }

  private Person person() {
    return signedIn.person();
  }

  public String getTarget() {
    return target;
  }

  public void setTarget(String target) {
    this.target = target;
  }

  public String getSheet() {
    return sheet;
  }

  public void setSheet(String sheet) {
    this.sheet = sheet;
  }

  public String getReason() {
    return reason;
  }

  public void setReason(String reason) {
    this.reason = reason;
  }
}
