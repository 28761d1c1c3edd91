package lapline.board;

import java.time.Instant;
import java.util.UUID;

/** A panel an instructor sent back, after which its apprentice has begun no other of the task. */
public record ReturnedPanel(
    UUID attempt, UUID person, String name, String task, Instant returned, String remark) {}
