package lapline.board;

import java.time.Instant;
import java.util.UUID;

/**
 * A panel that is good by its numbers and that an instructor's eye has still to look at.
 *
 * @param number which panel of its task it is for this person, from 1
 */
public record WaitingPanel(
    UUID attempt,
    UUID person,
    String skill,
    String task,
    long number,
    Instant scored,
    double practiceScore) {}
