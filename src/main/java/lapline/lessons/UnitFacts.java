package lapline.lessons;

/**
 * Where one learner is in one unit, gathered from the features that know it.
 *
 * @param lessonRead whether the lesson was read to its end
 * @param checks how many checks the lesson has
 * @param checksRight how many of them were answered right
 * @param exam where the exam stands while it is not passed
 * @param entryOpen whether a panel's entry was begun and not scored
 * @param panelsNeeded how many panels the skill's rule asks for
 * @param panelsCounting how many count under that rule now
 * @param panelsWaiting how many scored panels lie with the instructor
 */
public record UnitFacts(
    boolean lessonRead,
    int checks,
    int checksRight,
    boolean examPassed,
    ExamFacts exam,
    boolean entryOpen,
    int panelsNeeded,
    int panelsCounting,
    int panelsWaiting,
    boolean signedOff) {}
