package lapline.board;

/** How many panels somebody tried for a skill, and how many were accepted by their numbers. */
public record PanelCount(String skill, long tried, long accepted) {}
