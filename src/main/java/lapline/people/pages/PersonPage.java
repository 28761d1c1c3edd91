package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.pages.Errors;
import lapline.people.AccountProblem;
import lapline.people.AccountRefusedException;
import lapline.people.CorrectNames;
import lapline.people.LookAfterPeople;
import lapline.people.NameChange;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;

/** One account, as a registrar mends it. */
@Named
@RequestScoped
public class PersonPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAfterPeople people;
  @Inject private CorrectNames correctNames;
  @Inject private PeopleRecords records;
  @Inject private Errors errors;

  // known before the form is read, since what is on the page depends on it
  @Inject
  @ManagedProperty("#{param.id}")
  private String id;

  private Person person;
  private String name;
  private String signInName;
  private Role[] roles;
  private Boolean active;
  private String link;

  public Person getPerson() {
    if (person == null) {
      person = people.find(signedIn.person(), uuid());
    }
    return person;
  }

  private UUID uuid() {
    try {
      return UUID.fromString(String.valueOf(id));
    } catch (IllegalArgumentException e) {
      throw new NotFoundException();
    }
  }

  public String save() {
    if (roles.length == 0) {
      errors.add("roles", "people.add.no-role");
      return null;
    }
    boolean self = signedIn.person().id().equals(uuid());
    Set<Role> chosen = EnumSet.copyOf(List.of(roles));
    if (self && (!active || !chosen.contains(Role.REGISTRAR))) {
      errors.add("roles", "people.not-allowed.self");
      return null;
    }
    people.change(signedIn.person(), uuid(), chosen, active);
    errors.news("people.person.saved", getPerson().name());
    return "/office/person.xhtml?faces-redirect=true&id=" + id;
  }

  public String saveNames() {
    List<AccountProblem> wrong = correct();
    wrong.forEach(p -> errors.add(p.field(), p.key(), p.args().toArray()));
    if (!wrong.isEmpty()) {
      return null;
    }
    errors.news("people.person.saved", name.strip());
    return "/office/person.xhtml?faces-redirect=true&id=" + id;
  }

  private List<AccountProblem> correct() {
    try {
      return correctNames.run(signedIn.person(), uuid(), given(name), given(signInName));
    } catch (AccountRefusedException e) {
      return e.problems();
    }
  }

  private static String given(String text) {
    return text == null ? "" : text;
  }

  /** How the names were corrected, newest first. */
  public List<NameChange> getNameChanges() {
    return correctNames.history(signedIn.person(), uuid());
  }

  public String name(UUID registrar) {
    return records.names(List.of(registrar)).getOrDefault(registrar, "–");
  }

  public void makeLink() {
    link = HereAddress.of("/password?code=" + people.passwordLink(signedIn.person(), uuid()));
  }

  public String getName() {
    return name == null ? getPerson().name() : name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getSignInName() {
    return signInName == null ? getPerson().signInName() : signInName;
  }

  public void setSignInName(String signInName) {
    this.signInName = signInName;
  }

  public String getLink() {
    return link;
  }

  public Role[] getAllRoles() {
    return Role.values();
  }

  public String getId() {
    return id;
  }

  public Role[] getRoles() {
    return roles == null ? getPerson().roles().toArray(Role[]::new) : roles;
  }

  public void setRoles(Role[] roles) {
    this.roles = roles;
  }

  public boolean isActive() {
    return active == null ? getPerson().active() : active;
  }

  public void setActive(boolean active) {
    this.active = active;
  }
}
