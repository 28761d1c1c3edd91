package lapline.demo;

import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lapline.exams.DrawPaper;
import lapline.exams.PaperKey;
import lapline.lessons.Check;
import lapline.people.Person;

/** Invented learning: lessons read, checks answered, exams failed and passed. */
final class DemoLessons {
  private final DemoDesk desk;

  DemoLessons(DemoDesk desk) {
    this.desk = desk;
  }

  void read(Person learner, String unit) {
    desk.curriculum
        .lesson(unit)
        .ifPresent(
            lesson -> {
              lesson.checks().forEach(check -> answer(learner, unit, check));
              desk.learn.read(learner, unit);
            });
  }

  /** Now and then the first choice was wrong; the lesson said why, and the second was right. */
  private void answer(Person learner, String unit, Check check) {
    desk.clock.pass(Duration.ofMinutes(2));
    Set<Integer> right =
        IntStream.range(0, check.choices().size())
            .filter(i -> check.choices().get(i).right())
            .boxed()
            .collect(Collectors.toSet());
    if (desk.chance.nextDouble() < 0.25) {
      desk.learn.answer(learner, unit, check.id(), Set.of(wrong(right)));
    }
    desk.learn.answer(learner, unit, check.id(), right);
  }

  private static int wrong(Set<Integer> right) {
    return right.contains(0) ? 1 : 0;
  }

  /** Sits exams until one is passed: the first with many gaps where {@code fails}. */
  void pass(Person learner, String unit, boolean fails) {
    if (fails) {
      sit(learner, unit, 0.6);
      desk.clock.pass(Duration.ofDays(2));
    }
    sit(learner, unit, 0);
  }

  private void sit(Person learner, String unit, double left) {
    if (desk.draw.run(learner, unit) instanceof DrawPaper.Ready ready) {
      desk.clock.pass(Duration.ofMinutes(14));
      var id = ready.sitting().id();
      // in the order of the places, so that the same seed leaves the same ones out
      Map<String, String> typed =
          new TreeMap<>(PaperKey.rightAnswers(desk.papers.paper(id).orElseThrow()));
      typed.keySet().removeIf(cell -> desk.chance.nextDouble() < left);
      desk.answer.run(learner, id, typed);
      desk.handIn.run(learner, id);
    }
  }
}
