package lapline.practice.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.pages.Once;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.practice.ChangeTargets;
import lapline.practice.Criterion;
import lapline.practice.FieldProblem;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.RestingTargets;
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
  @Inject private Messages words;

  @Inject
  @ManagedProperty("#{param.task}")
  private String taskId;

  private boolean refused;

  private final Once<List<TargetOverride>> history =
      new Once<>(() -> targets.history(signedIn.person(), getTask().id()));
  private final Once<Map<UUID, String>> names = new Once<>(this::namesOfAll);

  /**
   * @param own the workshop's own target; null where the course's holds
   * @param changeable whether a data sheet can say another
   * @param unsure whether the course worked it out from a target that the workshop has changed
   */
  public record Row(Criterion criterion, TargetOverride own, boolean changeable, boolean unsure) {}

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

  public List<Row> getRows() {
    return getTask().criteria().stream().map(this::row).toList();
  }

  private Row row(Criterion c) {
    TargetOverride own = own(c);
    return new Row(c, own, c.hasRange(tasks.measurands()), own == null && isUnsure(c));
  }

  private boolean isUnsure(Criterion c) {
    PracticeTask task = getTask();
    return task.criteria().stream()
        .filter(other -> own(other) != null)
        .anyMatch(other -> RestingTargets.on(other, task).staying().contains(c));
  }

  private TargetOverride own(Criterion c) {
    return getHistory().stream()
        .filter(o -> o.inForce() && o.criterion().equals(c.id()))
        .findFirst()
        .orElse(null);
  }

  public List<TargetOverride> getHistory() {
    return history.get();
  }

  public String name(UUID person) {
    return names.get().getOrDefault(person, "–");
  }

  private Map<UUID, String> namesOfAll() {
    return people.names(
        getHistory().stream()
            .flatMap(o -> Stream.of(o.madeBy(), o.retiredBy()))
            .filter(Objects::nonNull)
            .distinct()
            .toList());
  }

  public String label(TargetOverride o) {
    return label(o.criterion());
  }

  private String label(String criterionId) {
    return getTask().criterion(criterionId).map(Criterion::label).orElse(criterionId);
  }

  public String retire(String criterionId) {
    Optional<FieldProblem> another =
        targets.retire(signedIn.person(), getTask().id(), criterionId, shown(criterionId));
    if (another.isPresent()) {
      refused = true;
      String says = words.say(another.get().key(), another.get().args().toArray());
      errors.add(null, "targets.in-field", label(criterionId), says);
      return null;
    }
    errors.news("targets.retired");
    return "/office/targets.xhtml?faces-redirect=true&task=" + getTask().id();
  }

  /** Whether the workshop's own target holds, or held when the page was opened that was sent. */
  public boolean isRetirable(Row row) {
    return row.own() != null || !refused && shown(row.criterion().id()) != null;
  }

  /** The workshop's own target that the page showed; null where there was none. */
  private static UUID shown(String criterionId) {
    String sent =
        FacesContext.getCurrentInstance()
            .getExternalContext()
            .getRequestParameterMap()
            .get("own:" + criterionId);
    return sent == null ? null : EntryPage.uuid(sent);
  }

  public String getTaskId() {
    return getTask().id();
  }
}
