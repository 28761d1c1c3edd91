package lapline.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.ZoneId;
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
  public List<Person> make(String password, Instant at) {
    Workshop workshop =
        new Workshop(
            id("workshop"),
            "Harrowgate Lane Panel School",
            ZoneId.of("America/Chicago"),
            UnitSystem.METRIC);
    records.addWorkshop(workshop, at);
    String hash = passwords.hash(password.toCharArray());
    List<Person> all = new java.util.ArrayList<>();
    all.add(person(workshop, "Rhoda Millrace", "registrar", Role.REGISTRAR));
    all.add(person(workshop, "Otto Granary", "owner", Role.OWNER));
    all.add(person(workshop, "Xenia Holloway-Pike", "examiner", Role.EXAMINER));
    all.add(person(workshop, "Ivo Stanchion", "instructor1", Role.INSTRUCTOR));
    all.add(person(workshop, "Juno Weatherell", "instructor2", Role.INSTRUCTOR));
    for (int i = 0; i < APPRENTICES.size(); i++) {
      all.add(person(workshop, APPRENTICES.get(i), "apprentice" + (i + 1), Role.APPRENTICE));
    }
    for (Person p : all) {
      records.add(p, at);
      records.setPasswordHash(p.id(), hash);
    }
    return List.copyOf(all);
  }

  private static Person person(Workshop workshop, String name, String signIn, Role role) {
    // every third apprentice thinks in US units, so that both are seen in the demo
    UnitSystem units = signIn.matches("apprentice(3|6|9|12)") ? UnitSystem.US : UnitSystem.METRIC;
    return new Person(
        id(signIn), workshop.id(), name, signIn, Set.of(role), units, workshop.zone(), true);
  }

  private static UUID id(String name) {
    return UUID.nameUUIDFromBytes(
        ("demo " + name).getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }
}
