package lapline.grading;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.grading.TaskStudyRecords.Tries;
import lapline.grading.TaskStudyRecords.Verdicts;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Criterion;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import lapline.practice.TargetsInForce;

/**
 * Are our practice tasks any good? What the panels of the instructor's workshop say about each, in
 * one query for all tasks and three for one, however many panels there are. A task whose file was
 * changed, and a target that was, begin anew: what was judged before was another target.
 */
@ApplicationScoped
public class StudyTasks {
  private TaskStudyRecords records;
  private PracticeTasks tasks;
  private TargetsInForce targets;

  protected StudyTasks() {}

  @Inject
  public StudyTasks(TaskStudyRecords records, PracticeTasks tasks, TargetsInForce targets) {
    this.records = records;
    this.tasks = tasks;
    this.targets = targets;
  }

  /** A task of the course and how it went. */
  public record Row(PracticeTask task, Tries tries) {}

  /** Every task of the course, in its order. */
  @Transactional
  public List<Row> all(Person by) {
    by.mustBe(Role.INSTRUCTOR);
    Map<String, Tries> tries = tries(by.workshop());
    return tasks.all().stream().map(t -> new Row(t, of(t, tries))).toList();
  }

  /** One task. */
  @Transactional
  public TaskStudied one(Person by, String id) {
    by.mustBe(Role.INSTRUCTOR);
    PracticeTask task =
        tasks.find(id).map(t -> targets.apply(by, t, null)).orElseThrow(NotFoundException::new);
    Map<String, Verdicts> verdicts =
        records.verdicts(by.workshop(), id, task.version()).stream()
            .collect(Collectors.toMap(Verdicts::criterion, Function.identity()));
    List<CriterionStudied> criteria =
        task.criteria().stream()
            .map(c -> new CriterionStudied(c, verdicts.getOrDefault(c.id(), none(c))))
            .sorted(Comparator.comparing(CriterionStudied::worth))
            .toList();
    return new TaskStudied(
        task, of(task, tries(by.workshop())), criteria, records.agreed(by.workshop(), id));
  }

  private Map<String, Tries> tries(UUID workshop) {
    return records.tries(workshop).stream()
        .collect(Collectors.toMap(Tries::task, Function.identity()));
  }

  private static Tries of(PracticeTask task, Map<String, Tries> tries) {
    return tries.getOrDefault(task.id(), new Tries(task.id(), 0, 0, 0, 0, 0, 0));
  }

  private static Verdicts none(Criterion c) {
    return new Verdicts(c.id(), 0, 0, 0, 0, null, 0);
  }
}
