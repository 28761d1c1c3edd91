package lapline.board;

/** How many people something is true of, for one skill. */
public record SkillCount(String skill, long people) {}
