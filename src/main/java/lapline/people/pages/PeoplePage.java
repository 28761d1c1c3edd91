package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lapline.pages.Errors;
import lapline.pages.Paging;
import lapline.people.LookAfterPeople;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;

/** The workshop's people: is everybody here, with the right roles? */
@Named
@RequestScoped
public class PeoplePage {
  @Inject private SignedIn signedIn;
  @Inject private PeopleRecords records;
  @Inject private LookAfterPeople people;
  @Inject private Errors errors;
  private String part = "";
  private Role role;
  private int page = 1;
  private String name;
  private String signInName;
  private Role[] roles = {};

  /** Refuses everybody but the workshop's registrars and owners before anything is shown. */
  public void check() {
    signedIn.person().mustBe(Role.REGISTRAR, Role.OWNER);
  }

  public List<Person> getPeople() {
    return records.page(signedIn.person().workshop(), part, role, getPaging().first(), Paging.SIZE);
  }

  public Paging getPaging() {
    return new Paging(page, records.count(signedIn.person().workshop(), part, role));
  }

  public String add() {
    if (roles.length == 0) {
      errors.add("roles", "people.add.no-role");
      return null;
    }
    Set<Role> chosen = EnumSet.copyOf(List.of(roles));
    return people
        .add(signedIn.person(), name, signInName, chosen)
        .map(p -> "/office/person.xhtml?faces-redirect=true&id=" + p.id())
        .orElseGet(
            () -> {
              errors.add("signInName", "people.add.taken", signInName);
              return null;
            });
  }

  public Role[] getAllRoles() {
    return Role.values();
  }

  public String getPart() {
    return part;
  }

  public void setPart(String part) {
    this.part = part == null ? "" : part;
  }

  public Role getRole() {
    return role;
  }

  public void setRole(Role role) {
    this.role = role;
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
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

  public Role[] getRoles() {
    return roles;
  }

  public void setRoles(Role[] roles) {
    this.roles = roles;
  }
}
