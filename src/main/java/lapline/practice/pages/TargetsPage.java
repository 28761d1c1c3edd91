package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.pages.Errors;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.ChangeTargets;
import lapline.practice.Criterion;
import lapline.practice.FieldProblem;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.TargetOverride;

/** Which targets does our own data sheet change, who changed them and why? */
@Named
@RequestScoped
public class TargetsPage {
  @Inject private SignedIn signedIn;
  @Inject private PracticeTasks tasks;
  @Inject private ChangeTargets targets;
  @Inject private PeopleRecords people;
  @Inject private Errors errors;

  @Inject
  @ManagedProperty("#{param.task}")
  private String taskId;

  private String criterion;
  private String target = "";
  private String sheet = "";
  private String reason = "";
  private List<TargetOverride> history;
  private Map<UUID, String> names;

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
  }

  public List<PracticeTask> getTasks() {
    return tasks.all();
  }

  /** The chosen task, or the first of the course. */
  public PracticeTask getTask() {
    return taskId == null || taskId.isBlank()
        ? tasks.all().stream().findFirst().orElseThrow(NotFoundException::new)
        : tasks.find(taskId).orElseThrow(NotFoundException::new);
  }

  public List<TargetOverride> getHistory() {
    if (history == null) {
      history = targets.history(signedIn.person(), getTask().id());
      names =
          people.names(
              history.stream()
                  .flatMap(o -> Stream.of(o.madeBy(), o.retiredBy()))
                  .filter(java.util.Objects::nonNull)
                  .distinct()
                  .toList());
    }
    return history;
  }

  /** The workshop's own target for a criterion; null where the task's holds. */
  public TargetOverride own(Criterion c) {
    return getHistory().stream()
        .filter(o -> o.inForce() && o.criterion().equals(c.id()))
        .findFirst()
        .orElse(null);
  }

  public String name(UUID person) {
    getHistory();
    return names.getOrDefault(person, "–");
  }

  public String label(TargetOverride o) {
    return getTask().criterion(o.criterion()).map(Criterion::label).orElse(o.criterion());
  }

  public String save() {
    List<FieldProblem> problems =
        targets.run(signedIn.person(), getTask().id(), criterion, target, sheet, reason);
    problems.forEach(p -> errors.add(p.cell(), p.key(), p.args().toArray()));
    return problems.isEmpty() ? again("targets.saved") : null;
  }

  public String retire(String criterionId) {
    targets.retire(signedIn.person(), getTask().id(), criterionId);
    return again("targets.retired");
  }

  private String again(String news) {
    errors.news(news);
    return "/office/targets.xhtml?faces-redirect=true&task=" + getTask().id();
  }

  public String getTaskId() {
    return getTask().id();
  }

  public String getCriterion() {
    return criterion;
  }

  public void setCriterion(String criterion) {
    this.criterion = criterion;
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
