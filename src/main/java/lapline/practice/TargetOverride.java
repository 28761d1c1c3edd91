package lapline.practice;

import java.time.Instant;
import java.util.UUID;

/**
 * A workshop's own target for one criterion of a task, from its coating's data sheet.
 *
 * @param target as typed, such as {@code 50 to 65 µm}
 * @param sheet the data sheet it is taken from
 * @param retired null while it is in force
 */
public record TargetOverride(
    UUID id,
    UUID workshop,
    String task,
    String criterion,
    String target,
    String sheet,
    String reason,
    UUID madeBy,
    Instant made,
    UUID retiredBy,
    Instant retired) {

  public boolean inForce() {
    return retired == null;
  }
}
