package lapline.board;

import java.time.Instant;
import lapline.signoff.Step;

/**
 * A step about a person and a skill, with the name of who took it.
 *
 * @param evidence as it was then, as JSON
 */
public record TakenStep(
    String skill, Step.Kind kind, Instant at, String by, String reason, String evidence) {}
