package lapline.board;

/**
 * That the cause of a panel is no new one to whoever sprayed it.
 *
 * @param times on how many panels of the task it was found, the last of them among them; 2 or more
 * @param looked among how many, the latest ones up to that panel
 */
public record CameBack(int times, int looked) {}
