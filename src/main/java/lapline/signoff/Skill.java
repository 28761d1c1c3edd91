package lapline.signoff;

import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * What a person may do unsupervised, and by what rule it is shown; as listed in {@code
 * curriculum/skills.yaml}.
 *
 * @param allows the operation in words
 * @param valid how long a sign-off is good
 * @param why the reasons for the rule, in words
 */
public record Skill(
    String id, String title, String unit, String allows, Rule rule, Period valid, String why) {

  /**
   * @param accepted how many of the last {@code ofLast} scored panels have to count
   * @param tasks ids of practice tasks, or {@code unit/*} for all of a unit
   * @param within how old a panel may be and still count: last year's hand is not today's
   * @param graded how many of those that count an instructor has to have accepted at the bench
   */
  public record Rule(
      String version,
      boolean lesson,
      boolean exam,
      int accepted,
      int ofLast,
      List<String> tasks,
      Period within,
      int graded) {

    /** The one task whose panels count; empty where those of several do. */
    public Optional<String> onlyTask() {
      return tasks.size() == 1 && !tasks.get(0).endsWith("/*")
          ? Optional.of(tasks.get(0))
          : Optional.empty();
    }

    public boolean covers(String task) {
      return tasks.stream()
          .anyMatch(
              t ->
                  t.endsWith("/*")
                      ? task.startsWith(t.substring(0, t.length() - 1))
                      : t.equals(task));
    }
  }
}
