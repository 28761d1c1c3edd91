package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
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
  @Inject private SignedIn signedIn;
  @Inject private PeopleRecords records;
  @Inject private LookAfterPeople people;
  @Inject private Errors errors;
  private Workshop now;
  private String name;
  private String zone;
  private UnitSystem units;

  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR);
  }

  private Workshop now() {
    if (now == null) {
      now = records.workshop(signedIn.person().workshop()).orElseThrow(NotFoundException::new);
    }
    return now;
  }

  public String save() {
    ZoneId where;
    try {
      where = ZoneId.of(zone.strip());
    } catch (DateTimeException e) {
      errors.add("zone", "people.setup.zone-unknown", zone);
      return null;
    }
    people.change(signedIn.person(), new Workshop(now().id(), name.strip(), where, units));
    errors.news("people.workshop.saved");
    return "/office/workshop.xhtml?faces-redirect=true";
  }

  public List<String> getZones() {
    return SetupPage.knownZones();
  }

  public UnitSystem[] getUnitSystems() {
    return UnitSystem.values();
  }

  public String getName() {
    return name == null ? now().name() : name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getZone() {
    return zone == null ? now().zone().getId() : zone;
  }

  public void setZone(String zone) {
    this.zone = zone;
  }

  public UnitSystem getUnits() {
    return units == null ? now().units() : units;
  }

  public void setUnits(UnitSystem units) {
    this.units = units;
  }
}
