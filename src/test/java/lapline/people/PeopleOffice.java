package lapline.people;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import lapline.trade.measure.UnitSystem;

/** An invented workshop's office with its registrar, wired by hand around records in memory. */
final class PeopleOffice {
  static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");

  final RememberedPeople records = new RememberedPeople();
  final Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
  final Passwords passwords = new PlainPasswords();
  final LookAfterPeople look = new LookAfterPeople(records, clock, new Random(7));
  final CorrectNames correct = new CorrectNames(records, clock);
  final ChoosePassword choose = new ChoosePassword(records, passwords, clock);
  final Person registrar = registrar();
  final Person stranger = registrar();

  private Person registrar() {
    Workshop workshop =
        new Workshop(UUID.randomUUID(), "Invented", ZoneId.of("UTC"), UnitSystem.METRIC);
    records.addWorkshop(workshop, NOW);
    Person person =
        new Person(
            UUID.randomUUID(),
            workshop.id(),
            "Rita Fielder",
            "rita" + workshop.id(),
            Set.of(Role.REGISTRAR),
            UnitSystem.METRIC,
            workshop.zone(),
            true);
    records.add(person, NOW);
    return person;
  }

  Person add(String name, String signInName) {
    return look.add(registrar, name, signInName, Set.of(Role.APPRENTICE));
  }

  /** Passwords as they are, since no test is about how they are kept. */
  private static final class PlainPasswords implements Passwords {
    @Override
    public String hash(char[] password) {
      return new String(password);
    }

    @Override
    public boolean matches(char[] password, String hash) {
      return hash.equals(new String(password));
    }
  }
}
