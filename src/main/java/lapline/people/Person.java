package lapline.people;

import java.time.ZoneId;
import java.util.Set;
import java.util.UUID;
import lapline.trade.measure.UnitSystem;

/**
 * Somebody with an account in one workshop, as the use cases know them.
 *
 * @param units the units this person reads and writes
 * @param zone the workshop's time zone
 */
public record Person(
    UUID id,
    UUID workshop,
    String name,
    String signInName,
    Set<Role> roles,
    UnitSystem units,
    ZoneId zone,
    boolean active) {

  public Person {
    roles = Set.copyOf(roles);
  }

  /** The same person under corrected names. */
  Person called(String otherName, String otherSignInName) {
    return new Person(id, workshop, otherName, otherSignInName, roles, units, zone, active);
  }

  public boolean is(Role role) {
    return roles.contains(role);
  }

  /** Lets the person pass when they have one of the roles. */
  public void mustBe(Role... any) {
    for (Role role : any) {
      if (is(role)) {
        return;
      }
    }
    throw new NotAllowedException("people.not-allowed.role");
  }

  /** Lets the person pass when the thing belongs to their workshop; another's does not exist. */
  public void mustBeIn(UUID workshopOfThing) {
    if (!workshop.equals(workshopOfThing)) {
      throw new NotFoundException();
    }
  }
}
