package lapline.board;

import java.util.UUID;

/** Somebody on the board. */
public record Named(UUID id, String name) {}
