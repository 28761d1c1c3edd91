package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Optional;
import lapline.lessons.Curriculum;
import lapline.lessons.Unit;
import lapline.pages.Messages;
import lapline.practice.Criterion;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTask.FindingRule;
import lapline.practice.PracticeTasks;
import lapline.practice.pages.Say;
import lapline.signoff.Skill;
import lapline.signoff.Skills;

/**
 * Names tasks, units and causes that rows hold only by their ids: {@code #{taskWords.task(id)}}.
 */
@Named
@RequestScoped
public class TaskWords {
  @Inject private PracticeTasks tasks;
  @Inject private Curriculum curriculum;
  @Inject private Skills skills;
  @Inject private Messages messages;
  @Inject private Say say;

  /** A task that is no longer in the course keeps its id. */
  public String task(String id) {
    return tasks.find(id).map(PracticeTask::title).orElse(id);
  }

  public String unit(String id) {
    return curriculum.unit(id).map(Unit::title).orElse(id);
  }

  public String skill(String id) {
    return skills.find(id).map(Skill::title).orElse(id);
  }

  /**
   * What is shared by all tasks has its own sentence; the others stand in the task's file. Without
   * a full stop, since other words follow in headings and lists.
   */
  public String cause(String taskId, String finding) {
    return withoutStop(sentence(taskId, finding));
  }

  static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  private String sentence(String taskId, String finding) {
    String key = "cause." + finding;
    if (messages.has(key)) {
      return messages.get(key);
    }
    return tasks
        .find(taskId)
        .flatMap(t -> doubt(t, finding).or(() -> rule(t, finding).map(r -> say.words(r.cause()))))
        .orElse(finding);
  }

  /** What the criterion that a finding is about is called; empty for a cause of the film. */
  public Optional<String> criterion(String taskId, String finding) {
    return criterion(tasks, taskId, finding);
  }

  static Optional<String> criterion(PracticeTasks tasks, String taskId, String finding) {
    String criterion = finding.substring(0, Math.max(0, finding.lastIndexOf('.')));
    return tasks.find(taskId).flatMap(t -> t.criterion(criterion)).map(Criterion::label);
  }

  /** What is in doubt is named after its criterion. */
  private Optional<String> doubt(PracticeTask task, String finding) {
    return finding.endsWith(".doubt")
        ? task.criterion(finding.replace(".doubt", ""))
            .map(c -> messages.say("score.doubt", c.label()))
        : Optional.empty();
  }

  /** A finding is named after its criterion and the side it came out on. */
  private static Optional<FindingRule> rule(PracticeTask task, String finding) {
    int dot = finding.lastIndexOf('.');
    String criterion = dot < 0 ? finding : finding.substring(0, dot);
    String side = dot < 0 ? "any" : finding.substring(dot + 1);
    return task.findings().stream()
        .filter(r -> r.criterion().equals(criterion))
        .filter(r -> r.side().equals("any") || r.side().equals(side))
        .filter(r -> r.beyond() == 0)
        .findFirst();
  }
}
