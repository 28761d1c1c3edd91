package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.SignedIn;

/** The signed-in person as the frame of every page knows them. */
@Named("me")
@RequestScoped
public class Me {
  @Inject private SignedIn signedIn;

  public boolean isHere() {
    return signedIn.maybe().isPresent();
  }

  public Person getPerson() {
    return signedIn.person();
  }

  public boolean is(String role) {
    return signedIn.maybe().map(p -> p.is(Role.valueOf(role))).orElse(false);
  }

  /** The first page of the day for this person's foremost role. */
  public String start() {
    Person p = signedIn.person();
    if (p.is(Role.APPRENTICE)) {
      return "/learn/today.xhtml?faces-redirect=true";
    }
    if (p.is(Role.INSTRUCTOR)) {
      return "/teach/needs.xhtml?faces-redirect=true";
    }
    if (p.is(Role.EXAMINER)) {
      return "/examine/decisions.xhtml?faces-redirect=true";
    }
    return p.is(Role.OWNER)
        ? "/shop/skills-board.xhtml?faces-redirect=true"
        : "/office/people.xhtml?faces-redirect=true";
  }
}
