package lapline.board;

/**
 * How often a cause stood first among the findings of a unit's panels.
 *
 * @param task one of the tasks it was found under, whose file may name it
 * @param people how many different apprentices it happened to
 */
public record FindingCount(String unit, String task, String finding, long panels, long people) {}
