package lapline.practice;

import java.util.List;
import java.util.Optional;
import lapline.trade.measure.TargetRange;

/** What was understood of a target as somebody wrote it. */
public sealed interface ReadTarget {

  /**
   * @param range in the SI unit of the quantity
   */
  record Understood(TargetRange range) implements ReadTarget {}

  /**
   * @param key message key: which part is wrong and what would be right
   * @param args what goes into the message
   */
  record NotUnderstood(String key, List<String> args) implements ReadTarget {
    public NotUnderstood {
      args = List.copyOf(args);
    }
  }

  /** The range where there is one. */
  default Optional<TargetRange> asRange() {
    return this instanceof Understood u ? Optional.of(u.range()) : Optional.empty();
  }
}
