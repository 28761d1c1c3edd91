package lapline.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.people.Passwords;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;

/** The invented people of the demo workshop. Any likeness to real ones is chance. */
@ApplicationScoped
public class DemoPeople {
  private static final List<String> APPRENTICES =
      List.of(
          "Ada Quillfeather",
          "Bram Oakhollow",
          "Cilla Marrowby",
          "Dov Tindersley",
          "Esme Larkwater",
          "Finn Copperdale",
          "Gita Windlass",
          "Hale Brackenford",
          "Ines Saltmarsh",
          "Jory Pebblewick",
          "Kit Thornbury-Vale",
          "Lena Ashgrove-Tull",
          "Milo Fernhaugh",
          "Nell Drystone");

  /** Where they stand among all, in the order in which they are made. */
  static final int EXAMINER = 2;

  static final int FIRST_INSTRUCTOR = 3;
  static final int FIRST_APPRENTICE = 5;

  private static final Workshop WORKSHOP =
      new Workshop(
          id("workshop"),
          "Harrowgate Lane Panel School",
          ZoneId.of("America/Chicago"),
          UnitSystem.METRIC);

  private PeopleRecords records;
  private Passwords passwords;

  protected DemoPeople() {}

  @Inject
  public DemoPeople(PeopleRecords records, Passwords passwords) {
    this.records = records;
    this.passwords = passwords;
  }

  /** Makes the workshop and its nineteen accounts, all with the one password given. */
  @Transactional
  public void make(String password, Instant at) {
    records.addWorkshop(WORKSHOP, at);
    String hash = passwords.hash(password.toCharArray());
    for (Person p : all()) {
      records.add(p, at);
      records.setPasswordHash(p.id(), hash);
    }
  }

  /** They as they are now; nobody where another workshop is in this database. */
  @Transactional
  public List<Person> made() {
    return all().stream().flatMap(p -> records.person(p.id()).stream()).toList();
  }

  /** They as they are invented, in order. */
  static List<Person> all() {
    List<Person> all = new ArrayList<>();
    all.add(person("Rhoda Millrace", "registrar", Role.REGISTRAR));
    all.add(person("Otto Granary", "owner", Role.OWNER));
    all.add(person("Xenia Holloway-Pike", "examiner", Role.EXAMINER));
    all.add(person("Ivo Stanchion", "instructor1", Role.INSTRUCTOR));
    all.add(person("Juno Weatherell", "instructor2", Role.INSTRUCTOR));
    for (int i = 0; i < APPRENTICES.size(); i++) {
      all.add(person(APPRENTICES.get(i), "apprentice" + (i + 1), Role.APPRENTICE));
    }
    return List.copyOf(all);
  }

  private static Person person(String name, String signIn, Role role) {
    // every third apprentice thinks in US units, so that both are seen in the demo
    UnitSystem units = signIn.matches("apprentice(3|6|9|12)") ? UnitSystem.US : UnitSystem.METRIC;
    return new Person(
        id(signIn), WORKSHOP.id(), name, signIn, Set.of(role), units, WORKSHOP.zone(), true);
  }

  private static UUID id(String name) {
    return UUID.nameUUIDFromBytes(
        ("demo " + name).getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }
}
