package lapline.board;

import java.time.Instant;
import java.util.UUID;

/** A panel on which a cause stood first among the findings. */
public record FoundPanel(
    UUID attempt, UUID person, String name, String task, Instant scored, double practiceScore) {}
