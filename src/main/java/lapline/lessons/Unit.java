package lapline.lessons;

/**
 * One step of the trade, taught as a whole: a lesson with its checks, practice tasks, a short exam
 * and a skill. Its place in the course is the number in front of its folder's name.
 *
 * @param id the folder's name without that number, such as {@code masking}
 * @param folder from the content root, such as {@code curriculum/20-masking}
 * @param title what the step is called in the shop
 * @param what one line: what you can do after it
 * @param skill id of the skill it leads to, in {@code curriculum/skills.yaml}
 */
public record Unit(String id, String folder, String title, String what, String skill) {}
