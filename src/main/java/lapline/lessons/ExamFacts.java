package lapline.lessons;

/**
 * Where one learner is with the exam of a unit.
 *
 * @param answered how many questions of the open paper have an answer
 * @param questions how many it has; 0 where no paper is open
 * @param rests whether the next paper cannot be drawn yet
 */
public record ExamFacts(int answered, int questions, boolean rests) {
  /** No paper is open, and one can be drawn at once. */
  public static final ExamFacts NONE = new ExamFacts(0, 0, false);
}
