package lapline.board;

import java.time.Instant;
import java.util.UUID;

/** A panel that is good by its numbers and that an instructor's eye has still to look at. */
public record WaitingPanel(
    UUID attempt, UUID person, String name, String task, Instant scored, double practiceScore) {}
