package lapline.people;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;

/** A name or sign-in name that a registrar corrected: what it was, by whom and when. */
public record NameChange(
    UUID id, UUID person, What what, String before, String after, UUID by, Instant at) {

  /** Which of the two names. */
  public enum What {
    NAME,
    SIGN_IN_NAME
  }

  /** The name a person had at a time, such as when a certificate was printed. */
  public static String nameAt(Instant then, List<NameChange> changes, String now) {
    return changes.stream()
        .filter(c -> c.what() == What.NAME && c.at().isAfter(then))
        .min(Comparator.comparing(NameChange::at))
        .map(NameChange::before)
        .orElse(now);
  }
}
