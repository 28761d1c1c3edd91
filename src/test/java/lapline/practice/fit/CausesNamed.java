package lapline.practice.fit;

import java.util.Arrays;
import java.util.List;

/** The ids of all causes that the film of a panel can name. */
public final class CausesNamed {
  private CausesNamed() {}

  public static List<String> all() {
    return Arrays.stream(Cause.values()).map(Cause::id).toList();
  }
}
