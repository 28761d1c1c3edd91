package lapline.lessons;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Set;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** A learner answers a check in a lesson, or has read the lesson to its end. */
@ApplicationScoped
public class LearnLesson {
  private Curriculum curriculum;
  private LessonRecords records;
  private Advances advances;
  private Clock clock;

  protected LearnLesson() {}

  @Inject
  public LearnLesson(Curriculum curriculum, LessonRecords records, Advances advances, Clock clock) {
    this.curriculum = curriculum;
    this.records = records;
    this.advances = advances;
    this.clock = clock;
  }

  /** Answers at once, and keeps the answer. */
  @Transactional
  public Check.Answer answer(Person by, String unit, String checkId, Set<Integer> chosen) {
    Check check = lesson(unit).in(by.units()).check(checkId).orElseThrow(NotFoundException::new);
    Check.Answer answer = check.answer(chosen);
    records.answered(by.id(), unit, checkId, chosen, answer.right(), clock.instant());
    advances.tell(new LearnerAdvanced(by.id(), by.workshop(), unit));
    return answer;
  }

  @Transactional
  public void read(Person by, String unit) {
    records.read(by.id(), unit, lesson(unit).version(), clock.instant());
    advances.tell(new LearnerAdvanced(by.id(), by.workshop(), unit));
  }

  private Lesson lesson(String unit) {
    return curriculum.lesson(unit).orElseThrow(NotFoundException::new);
  }
}
