package lapline.board;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody whose last panels of a task were all not accepted, each with the same first finding.
 *
 * @param panels how many in a row
 */
public record StuckLearner(
    UUID person, String name, String task, String finding, int panels, Instant last) {}
