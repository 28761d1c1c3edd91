package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import lapline.content.ContentFiles;
import lapline.content.WrittenProblems;
import lapline.lessons.Curriculum;
import lapline.lessons.CurriculumReader;
import lapline.lessons.Unit;
import lapline.practice.PracticeTask;
import lapline.practice.PracticeTasks;
import org.junit.jupiter.api.Test;

/** The skills as they are written: every rule can be met, by work that shows the skill. */
class SkillsContentTest {
  private static final String FILE = "curriculum/skills.yaml";
  private static final ContentFiles FILES = ContentFiles.fromClasspath();
  private static final Curriculum COURSE = new CurriculumReader(FILES).read();
  private static final List<PracticeTask> TASKS = PracticeTasks.read(FILES).all();

  private final Skills skills =
      new SkillsReader(COURSE.units().stream().map(Unit::id).collect(Collectors.toSet()))
          .read(FILES);
  private final WrittenProblems problems = new WrittenProblems(FILES, skills.problems());

  private void add(Skill skill, String whatIsWrong, String whatToWrite) {
    problems.add(FILE, "id: " + skill.id(), whatIsWrong, whatToWrite);
  }

  @Test
  void every_task_of_a_rule_is_there_and_is_evidence_for_that_skill() {
    for (Skill skill : skills.all()) {
      for (String named : skill.rule().tasks()) {
        List<PracticeTask> meant = TASKS.stream().filter(t -> covers(named, t)).toList();
        if (meant.isEmpty()) {
          add(skill, "there is no task '" + named + "'", "name one, or write unit/*");
        }
        meant.stream()
            .filter(t -> !t.skill().equals(skill.id()))
            .forEach(t -> add(skill, t.id() + " is for '" + t.skill() + "'", "name another task"));
      }
    }
    problems.none();
  }

  private static boolean covers(String named, PracticeTask task) {
    return named.endsWith("/*")
        ? task.id().startsWith(named.substring(0, named.length() - 1))
        : task.id().equals(named);
  }

  @Test
  void one_task_that_shows_less_than_the_skill_does_not_count_for_it() {
    for (Skill skill : skills.all()) {
      long kinds = TASKS.stream().filter(t -> skill.rule().covers(t.id())).count();
      if (kinds > 1) {
        add(skill, "panels under one of " + kinds + " tasks would be enough", "name the task");
      }
    }
    problems.none();
  }

  @Test
  void every_skill_asks_for_lesson_exam_an_eye_at_the_bench_and_says_why() {
    for (Skill skill : skills.all()) {
      Skill.Rule rule = skill.rule();
      if (!rule.lesson() || !rule.exam() || rule.graded() < 1) {
        add(skill, "lesson, exam or bench is not asked for", "ask for all three");
      }
      if (skill.why().length() < 80) {
        add(skill, "the reason for its numbers is thin", "say why these numbers");
      }
    }
    problems.none();
  }

  @Test
  void every_task_is_evidence_for_a_skill_of_its_unit() {
    for (PracticeTask task : TASKS) {
      assertThat(skills.ofUnit(task.unit()))
          .as(task.id())
          .extracting(Skill::id)
          .contains(task.skill());
    }
  }
}
