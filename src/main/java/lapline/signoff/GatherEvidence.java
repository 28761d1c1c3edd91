package lapline.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.exams.PaperRecords;
import lapline.exams.Sitting;
import lapline.lessons.Curriculum;
import lapline.lessons.LessonProgress;
import lapline.lessons.LessonRecords;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.AttemptQuery;
import lapline.practice.AttemptRecords;

/** Gathers what speaks for a person having a skill, from lessons, exams, panels and the bench. */
@ApplicationScoped
public class GatherEvidence {
  private static final State[] SCORED = {State.SCORED, State.RETURNED, State.ACCEPTED};

  private Curriculum curriculum;
  private LessonRecords lessons;
  private AttemptRecords attempts;
  private PaperRecords exams;
  private SignOffRecords signOffs;

  protected GatherEvidence() {}

  @Inject
  public GatherEvidence(
      Curriculum curriculum,
      LessonRecords lessons,
      AttemptRecords attempts,
      PaperRecords exams,
      SignOffRecords signOffs) {
    this.signOffs = signOffs;
    this.exams = exams;
    this.curriculum = curriculum;
    this.lessons = lessons;
    this.attempts = attempts;
  }

  @Transactional
  public Evidence of(UUID person, UUID workshop, Skill skill, Instant now) {
    Instant since = since(person, skill, now);
    AttemptQuery all = wanted(workshop, person, skill);
    List<Evidence.Panel> panels =
        attempts.page(all).stream()
            .filter(a -> skill.rule().covers(a.task()))
            .filter(a -> a.outcome().scored().isAfter(since))
            .map(GatherEvidence::panel)
            .toList();
    LessonProgress lesson =
        lessons.progress(person).getOrDefault(skill.unit(), LessonProgress.NONE);
    Optional<Sitting> exam = Optional.ofNullable(exams.passed(person).get(skill.unit()));
    return new Evidence(
        person,
        skill,
        curriculum.lesson(skill.unit()).map(lesson::finished).orElse(false),
        exam.isPresent(),
        panels,
        attempts.count(all),
        learnt(lesson, exam));
  }

  private static Evidence.Learnt learnt(LessonProgress lesson, Optional<Sitting> exam) {
    Optional<Sitting.Outcome> outcome = exam.map(Sitting::outcome);
    return new Evidence.Learnt(
        lesson.read(),
        outcome.map(Sitting.Outcome::handedIn).orElse(null),
        exam.map(Sitting::id).orElse(null),
        outcome.map(Sitting.Outcome::score).orElse(null));
  }

  /** Where the rule names one task, panels under others push none of it out of the last so many. */
  private static AttemptQuery wanted(UUID workshop, UUID person, Skill skill) {
    AttemptQuery all =
        AttemptQuery.of(workshop, 0, skill.rule().ofLast())
            .by(person)
            .towards(skill.id())
            .in(SCORED);
    return skill.rule().onlyTask().map(all::under).orElse(all);
  }

  /**
   * Panels count from here on: young enough for the rule, and done since the last withdrawal, after
   * which a person proves themselves anew.
   */
  private Instant since(UUID person, Skill skill, Instant now) {
    Instant young = now.atOffset(ZoneOffset.UTC).minus(skill.rule().within()).toInstant();
    return signOffs
        .withdrawnAt(person, skill.id())
        .filter(withdrawn -> withdrawn.isAfter(young))
        .orElse(young);
  }

  private static Evidence.Panel panel(Attempt a) {
    Attempt.Outcome outcome = a.outcome();
    return new Evidence.Panel(
        a.id(),
        a.task(),
        outcome.scored(),
        outcome.practiceScore(),
        outcome.accepted(),
        a.state() == State.ACCEPTED,
        a.state() == State.RETURNED);
  }
}
