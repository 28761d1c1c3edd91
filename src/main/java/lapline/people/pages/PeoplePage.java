package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.pages.Errors;
import lapline.pages.Messages;
import lapline.pages.Paging;
import lapline.people.AccountProblem;
import lapline.people.AccountRefusedException;
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
  @Inject private Messages messages;
  private String part = "";
  private Role role;
  private int page = 1;
  private String name;
  private String signInName;
  private Role[] roles = {};
  private String askedAbout;

  @Inject
  @ManagedProperty("#{param.namesake}")
  private String namesakeSeen;

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

  /** The answer the list gives, to a search too. */
  public String getTitle() {
    int count = getPaging().count();
    return part.isBlank()
        ? messages.say("people.list.title", count)
        : messages.say("people.list.found", count, part);
  }

  public String add() {
    Person by = signedIn.person();
    Set<Role> chosen = roles.length == 0 ? Set.of() : EnumSet.copyOf(List.of(roles));
    List<AccountProblem> wrong = people.wrong(by, given(name), given(signInName), chosen);
    tell(wrong);
    if (!wrong.isEmpty() || isToBeAskedBack(by)) {
      return null;
    }
    try {
      return "/office/person.xhtml?faces-redirect=true&id="
          + people.add(by, name, signInName, chosen).id();
    } catch (AccountRefusedException e) {
      tell(e.problems());
      return null;
    }
  }

  private void tell(List<AccountProblem> wrong) {
    wrong.forEach(p -> errors.add(p.field(), p.key(), p.args().toArray()));
  }

  /** Two people may have one name; but most often somebody is about to be added twice. */
  private boolean isToBeAskedBack(Person by) {
    List<Person> same = people.namesakes(by, name);
    if (same.isEmpty() || name.equals(namesakeSeen)) {
      return false;
    }
    String signIns = same.stream().map(Person::signInName).collect(Collectors.joining(", "));
    errors.add("name", "people.add.namesake", name.strip(), signIns);
    askedAbout = name;
    return true;
  }

  private static String given(String text) {
    return text == null ? "" : text;
  }

  /** The name that was asked back, so that a second press means another person; else null. */
  public String getAskedAbout() {
    return askedAbout;
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
