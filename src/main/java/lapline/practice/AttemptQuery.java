package lapline.practice;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * Which attempts are wanted, newest first, one page of them.
 *
 * @param person whose; null for everybody's
 * @param task under which task; null for any
 * @param skill for which skill; null for any
 * @param states in which states; empty for any
 * @param until begun no later than this; null for any
 * @param first how many to leave out before the page begins, ≥ 0
 * @param size how many at most, 1 to {@value #MOST}
 */
public record AttemptQuery(
    UUID workshop,
    UUID person,
    String task,
    String skill,
    Set<Attempt.State> states,
    Instant until,
    int first,
    int size) {

  /** Largest page that is handed out. */
  public static final int MOST = 200;

  public AttemptQuery {
    states = Set.copyOf(states);
    if (first < 0 || size < 1 || size > MOST) {
      throw new IllegalArgumentException("page from " + first + " of " + size);
    }
  }

  /** Everybody's attempts of a workshop. */
  public static AttemptQuery of(UUID workshop, int first, int size) {
    return new AttemptQuery(workshop, null, null, null, Set.of(), null, first, size);
  }

  public AttemptQuery by(UUID somebody) {
    return new AttemptQuery(workshop, somebody, task, skill, states, until, first, size);
  }

  public AttemptQuery under(String taskId) {
    return new AttemptQuery(workshop, person, taskId, skill, states, until, first, size);
  }

  public AttemptQuery towards(String skillId) {
    return new AttemptQuery(workshop, person, task, skillId, states, until, first, size);
  }

  public AttemptQuery in(Attempt.State... some) {
    return new AttemptQuery(workshop, person, task, skill, Set.of(some), until, first, size);
  }

  public AttemptQuery begunBy(Instant latest) {
    return new AttemptQuery(workshop, person, task, skill, states, latest, first, size);
  }
}
