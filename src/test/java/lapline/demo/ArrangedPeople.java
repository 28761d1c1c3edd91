package lapline.demo;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.people.Passwords;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Secrets;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;

/**
 * Somebody for every role in a new workshop; besides, a beginner who has done nothing yet, and a
 * grader who both teaches and examines. All carry the workshop's surname, so that a test can look
 * for it where it must not stand.
 */
public final class ArrangedPeople {
  private static final Map<Role, String> FIRST_NAMES =
      Map.of(
          Role.APPRENTICE, "Ansel",
          Role.INSTRUCTOR, "Ida",
          Role.EXAMINER, "Emory",
          Role.OWNER, "Odile",
          Role.REGISTRAR, "Rufus");

  private final PeopleRecords records;
  private final Workshop workshop;
  private final String surname;
  private final Map<String, Person> all = new LinkedHashMap<>();

  ArrangedPeople(PeopleRecords records, String surname) {
    this.records = records;
    this.surname = surname;
    this.workshop =
        new Workshop(
            UUID.randomUUID(),
            surname + " Panel Works",
            ZoneId.of("Europe/Dublin"),
            UnitSystem.METRIC);
  }

  void make(Passwords passwords, String password) {
    records.addWorkshop(workshop, Instant.now());
    for (Role role : Role.values()) {
      add(role.name().toLowerCase(Locale.ROOT), FIRST_NAMES.get(role), EnumSet.of(role));
    }
    add("beginner", "Bea", EnumSet.of(Role.APPRENTICE));
    add("grader", "Gregor", EnumSet.of(Role.INSTRUCTOR, Role.EXAMINER));
    String hash = passwords.hash(password.toCharArray());
    all.values().forEach(p -> records.setPasswordHash(p.id(), hash));
  }

  private void add(String what, String firstName, Set<Role> roles) {
    String signIn = (what + "." + surname).toLowerCase(Locale.ROOT) + "." + mark();
    Person person =
        new Person(
            UUID.randomUUID(),
            workshop.id(),
            firstName + " " + surname,
            signIn,
            roles,
            workshop.units(),
            workshop.zone(),
            true);
    records.add(person, Instant.now());
    all.put(what, person);
  }

  /** Sign-in names are unique over all workshops, and a test may be run again. */
  private static String mark() {
    return Secrets.code(new java.security.SecureRandom(), 5);
  }

  Person the(String what) {
    return all.get(what);
  }

  Workshop workshop() {
    return workshop;
  }

  Map<String, Person> all() {
    return all;
  }
}
