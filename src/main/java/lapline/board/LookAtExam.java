package lapline.board;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.Optional;
import lapline.exams.AnswerReader;
import lapline.exams.DrawPaper;
import lapline.exams.ReadPapers;
import lapline.lessons.ExamFacts;
import lapline.people.Person;

/** Where a learner is with the exam of a unit, while it is not passed. */
@ApplicationScoped
public class LookAtExam {
  private ReadPapers papers;
  private DrawPaper draw;

  protected LookAtExam() {}

  @Inject
  public LookAtExam(ReadPapers papers, DrawPaper draw) {
    this.papers = papers;
    this.draw = draw;
  }

  /** When the next paper can be drawn; empty when at once. */
  public Optional<Instant> from(Person learner, String unit) {
    return draw.restUntil(learner, unit);
  }

  public ExamFacts facts(Person learner, String unit) {
    return papers
        .open(learner, unit)
        .map(LookAtExam::begun)
        .orElseGet(() -> new ExamFacts(0, 0, from(learner, unit).isPresent()));
  }

  private static ExamFacts begun(ReadPapers.Written written) {
    int answered = new AnswerReader(written.paper(), written.answers()).answered();
    return new ExamFacts(answered, written.paper().questions().size(), false);
  }
}
