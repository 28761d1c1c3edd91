package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import lapline.pages.Errors;
import lapline.people.AccountProblem;
import lapline.people.CheckPassword;
import lapline.people.Passwords;
import lapline.people.SetUpWorkshop;
import lapline.trade.measure.UnitSystem;

/** The first page of a new Lapline: what is the workshop called, and who looks after it? */
@Named
@RequestScoped
public class SetupPage {
  @Inject private SetUpWorkshop setUp;
  @Inject private Errors errors;

  // known before the form is read, since what is on the page depends on it
  @Inject
  @ManagedProperty("#{param.code}")
  private String code;

  private String workshop;
  private String zone = ZoneId.systemDefault().getId();
  private UnitSystem units = UnitSystem.METRIC;
  private String name;
  private String signInName;
  private String password;

  public boolean isGood() {
    return setUp.good(code);
  }

  public String open() {
    if (!isGood()) {
      return null;
    }
    ZoneId where = zoneOrNull();
    if (where == null) {
      errors.add("zone", "people.setup.zone-unknown", zone);
    }
    for (AccountProblem p : setUp.wrong(name, signInName)) {
      errors.add(p.field().equals("name") ? "person" : p.field(), p.key(), p.args().toArray());
    }
    if (password.length() < Passwords.LEAST_LENGTH) {
      errors.add("password", "people.password.short", Passwords.LEAST_LENGTH);
    }
    if (!errors.getLines().isEmpty()) {
      return null;
    }
    setUp.run(
        code,
        workshop.strip(),
        where,
        units,
        name.strip(),
        CheckPassword.tidy(signInName),
        password.toCharArray());
    errors.news("people.setup.done");
    return "/sign-in.xhtml?faces-redirect=true";
  }

  private ZoneId zoneOrNull() {
    try {
      return ZoneId.of(zone.strip());
    } catch (DateTimeException e) {
      return null;
    }
  }

  public List<String> getZones() {
    return knownZones();
  }

  /** Zone names of the form Area/City, for a list to choose from. */
  static List<String> knownZones() {
    return ZoneId.getAvailableZoneIds().stream().filter(z -> z.contains("/")).sorted().toList();
  }

  public UnitSystem[] getUnitSystems() {
    return UnitSystem.values();
  }

  public String getCode() {
    return code;
  }

  public String getWorkshop() {
    return workshop;
  }

  public void setWorkshop(String workshop) {
    this.workshop = workshop;
  }

  public String getZone() {
    return zone;
  }

  public void setZone(String zone) {
    this.zone = zone;
  }

  public UnitSystem getUnits() {
    return units;
  }

  public void setUnits(UnitSystem units) {
    this.units = units;
  }

  public String getName() {
    return name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getSignInName() {
    return signInName;
  }

  public void setSignInName(String signInName) {
    this.signInName = signInName;
  }

  public String getPassword() {
    return password;
  }

  public void setPassword(String password) {
    this.password = password;
  }
}
