package lapline.lessons;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Set;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** A learner answers a check in a lesson, or has read the lesson to its end. */
@ApplicationScoped
public class LearnLesson {
  private Curriculum curriculum;
  private LessonRecords records;
  private Clock clock;

  protected LearnLesson() {}

  @Inject
  public LearnLesson(Curriculum curriculum, LessonRecords records, Clock clock) {
    this.curriculum = curriculum;
    this.records = records;
    this.clock = clock;
  }

  /** Answers at once, and keeps the answer. */
  @Transactional
  public Check.Answer answer(Person by, String unit, String checkId, Set<Integer> chosen) {
    Check check = lesson(unit).check(checkId).orElseThrow(NotFoundException::new);
    Check.Answer answer = check.answer(chosen);
    records.answered(by.id(), unit, checkId, chosen, answer.right(), clock.instant());
    return answer;
  }

  @Transactional
  public void read(Person by, String unit) {
    records.read(by.id(), unit, lesson(unit).version(), clock.instant());
  }

  private Lesson lesson(String unit) {
    return curriculum.lesson(unit).orElseThrow(NotFoundException::new);
  }
}
