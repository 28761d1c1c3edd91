package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import lapline.pages.Errors;
import lapline.people.LookAfterPeople;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.people.Workshop;
import lapline.trade.measure.UnitSystem;

/** The workshop's own facts: name, time zone, usual units. */
@Named
@RequestScoped
public class WorkshopPage {
  private static final int LONGEST_NAME = 120;

  @Inject private SignedIn signedIn;
  @Inject private PeopleRecords records;
  @Inject private LookAfterPeople people;
  @Inject private Errors errors;
  @Inject private When when;
  @Inject private Clock clock;
  private Workshop now;
  private String name;
  private String zone;
  private UnitSystem units;

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR);
  }

  /** The workshop as it is kept. */
  public Workshop getNow() {
    if (now == null) {
      now = records.workshop(signedIn.person().workshop()).orElseThrow(NotFoundException::new);
    }
    return now;
  }

  public String save() {
    Optional<ZoneId> where = where();
    if (where.isEmpty()) {
      errors.add("zone", "people.setup.zone-unknown", zone);
    }
    if (name.isBlank() || name.strip().length() > LONGEST_NAME) {
      errors.add("name", "people.workshop.name-wrong", LONGEST_NAME);
    }
    if (!errors.getLines().isEmpty()) {
      return null;
    }
    people.change(signedIn.person(), new Workshop(getNow().id(), name.strip(), where.get(), units));
    errors.news("people.workshop.saved");
    return "/office/workshop.xhtml?faces-redirect=true";
  }

  private Optional<ZoneId> where() {
    try {
      return Optional.of(ZoneId.of(zone.strip()));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** What the clock of the zone shows now, for people to see whether it is theirs. */
  public String getTimeThere() {
    return when.time(clock.instant());
  }

  public List<String> getZones() {
    return SetupPage.knownZones();
  }

  public UnitSystem[] getUnitSystems() {
    return UnitSystem.values();
  }

  public String getName() {
    return name == null ? getNow().name() : name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getZone() {
    return zone == null ? getNow().zone().getId() : zone;
  }

  public void setZone(String zone) {
    this.zone = zone;
  }

  public UnitSystem getUnits() {
    return units == null ? getNow().units() : units;
  }

  public void setUnits(UnitSystem units) {
    this.units = units;
  }
}
