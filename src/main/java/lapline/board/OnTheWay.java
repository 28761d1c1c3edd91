package lapline.board;

/** How many people are on their way to a skill. */
public record OnTheWay(String skill, long people) {}
