package lapline.demo;

import jakarta.enterprise.context.Dependent;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.random.RandomGenerator;
import lapline.exams.DrawPaper;
import lapline.exams.HandInPaper;
import lapline.exams.ItemRecords;
import lapline.exams.PaperRecords;
import lapline.exams.SavePaperAnswers;
import lapline.exams.bank.QuestionBanks;
import lapline.grading.GradePanel;
import lapline.grading.GradingRecords;
import lapline.lessons.Curriculum;
import lapline.lessons.LearnLesson;
import lapline.lessons.LessonRecords;
import lapline.people.Advances;
import lapline.people.PeopleRecords;
import lapline.practice.AttemptRecords;
import lapline.practice.ChangeTargets;
import lapline.practice.ChooseGunCard;
import lapline.practice.KeepReadings;
import lapline.practice.LookAfterGunCards;
import lapline.practice.PracticeTasks;
import lapline.practice.ReadPanel;
import lapline.practice.ScoreAttempt;
import lapline.practice.StartAttempt;
import lapline.practice.TargetRecords;
import lapline.practice.TargetsInForce;
import lapline.signoff.AdvanceSkills;
import lapline.signoff.ChangeSignOff;
import lapline.signoff.DecideSkill;
import lapline.signoff.ForecastRecords;
import lapline.signoff.GatherEvidence;
import lapline.signoff.KeepForecasts;
import lapline.signoff.KeepStandings;
import lapline.signoff.SignOffRecords;
import lapline.signoff.Skills;

/** Sets up the workshop's own use cases with a clock that stands in the invented past. */
@Dependent
class DemoDesk {
  @Inject Curriculum curriculum;
  @Inject PracticeTasks tasks;
  @Inject Skills skills;
  @Inject AttemptRecords attempts;
  @Inject SignOffRecords signOffs;
  @Inject private QuestionBanks banks;
  @Inject private LessonRecords lessons;
  @Inject PaperRecords papers;
  @Inject private ItemRecords items;
  @Inject private TargetRecords targets;
  @Inject private GradingRecords gradings;
  @Inject private PeopleRecords people;
  @Inject private ReadPanel readPanel;
  @Inject private GatherEvidence gather;
  @Inject private ForecastRecords forecasts;

  ScenarioClock clock;
  RandomGenerator chance;
  LearnLesson learn;
  StartAttempt start;
  KeepReadings keep;
  ScoreAttempt score;
  GradePanel grade;
  DrawPaper draw;
  SavePaperAnswers answer;
  HandInPaper handIn;
  DecideSkill decide;
  ChangeSignOff change;
  LookAfterGunCards guns;
  ChangeTargets sheets;

  /** Opens the desk anew: from here on its clock and its chance are the story's. */
  void open(Instant now, RandomGenerator seeded) {
    clock = new ScenarioClock(now);
    chance = seeded;
    KeepStandings standings = new KeepStandings(skills, gather, signOffs, clock);
    AdvanceSkills advance =
        new AdvanceSkills(skills, standings, new KeepForecasts(forecasts, clock));
    learning(advance::advanced);
    practising(advance::advanced);
    decide = new DecideSkill(skills, standings, signOffs, gradings, people, clock, chance);
    change = new ChangeSignOff(signOffs, skills, standings, clock);
  }

  private void learning(Advances advances) {
    learn = new LearnLesson(curriculum, lessons, advances, clock);
    draw = new DrawPaper(papers, items, banks, clock, chance);
    answer = new SavePaperAnswers(papers, clock);
    handIn = new HandInPaper(papers, advances, clock);
  }

  private void practising(Advances advances) {
    start = new StartAttempt(attempts, tasks, new ChooseGunCard(attempts, targets), clock, chance);
    keep = new KeepReadings(attempts, readPanel, clock);
    score = new ScoreAttempt(attempts, readPanel, new TargetsInForce(targets), advances, clock);
    grade = new GradePanel(attempts, gradings, advances, clock);
    guns = new LookAfterGunCards(targets, attempts, people, clock);
    sheets = new ChangeTargets(targets, tasks, people, clock);
  }
}
