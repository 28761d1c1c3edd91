package lapline.lessons;

/**
 * What is next for a learner in a unit. It is advice and bars nothing: whoever wants to take a
 * panel before the exam may.
 *
 * @param have how much of it is done
 * @param need how much of it there is; 1 where it is not counted
 */
public record NextStep(Step step, int have, int need) {

  /** The steps of a unit in their order. */
  public enum Step {
    FINISH_ENTRY,
    READ_LESSON,
    ANSWER_CHECKS,
    FINISH_EXAM,
    SIT_EXAM,
    TAKE_PANEL,
    REST_BEFORE_EXAM,
    WAIT_FOR_INSTRUCTOR,
    WAIT_FOR_EXAMINER,
    DONE;

    /** Whether the learner can do it now, and nothing has to be waited for. */
    public boolean yours() {
      return compareTo(REST_BEFORE_EXAM) < 0;
    }
  }

  /**
   * A begun entry comes before all else, whatever the unit's standing, because readings are
   * forgotten sooner than lessons. The exam comes before further panels because the cautions are in
   * it. While an exam that was not passed rests, panels go on.
   */
  public static NextStep of(UnitFacts facts) {
    if (facts.entryOpen()) {
      return once(Step.FINISH_ENTRY);
    }
    if (facts.signedOff()) {
      return once(Step.DONE);
    }
    if (!facts.lessonRead()) {
      return once(Step.READ_LESSON);
    }
    if (facts.checksRight() < facts.checks()) {
      return new NextStep(Step.ANSWER_CHECKS, facts.checksRight(), facts.checks());
    }
    return facts.examPassed() ? panels(facts) : exam(facts);
  }

  private static NextStep exam(UnitFacts facts) {
    if (facts.exam().questions() > 0) {
      return new NextStep(Step.FINISH_EXAM, facts.exam().answered(), facts.exam().questions());
    }
    if (!facts.exam().rests()) {
      return once(Step.SIT_EXAM);
    }
    NextStep meanwhile = panels(facts);
    return meanwhile.step().yours() ? meanwhile : once(Step.REST_BEFORE_EXAM);
  }

  private static NextStep panels(UnitFacts facts) {
    int counting = facts.panelsCounting();
    if (counting >= facts.panelsNeeded()) {
      return once(Step.WAIT_FOR_EXAMINER);
    }
    boolean enoughIfAccepted = counting + facts.panelsWaiting() >= facts.panelsNeeded();
    Step step = enoughIfAccepted ? Step.WAIT_FOR_INSTRUCTOR : Step.TAKE_PANEL;
    return new NextStep(step, counting, facts.panelsNeeded());
  }

  private static NextStep once(Step step) {
    return new NextStep(step, step == Step.DONE ? 1 : 0, 1);
  }
}
