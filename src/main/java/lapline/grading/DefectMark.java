package lapline.grading;

/**
 * A defect placed on the panel drawing.
 *
 * @param kind id of a defect kind of the task, such as {@code run}
 * @param x metres from the panel's left edge
 * @param y metres from its lower edge
 */
public record DefectMark(String kind, double x, double y, String note) {}
