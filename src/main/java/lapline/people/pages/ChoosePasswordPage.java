package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.pages.Errors;
import lapline.people.ChoosePassword;
import lapline.people.Passwords;
import lapline.people.Person;

/** Choose your password, by a link from the registrar. */
@Named
@RequestScoped
public class ChoosePasswordPage {
  @Inject private ChoosePassword choosePassword;
  @Inject private Errors errors;

  // known before the form is read, since what is on the page depends on it
  @Inject
  @ManagedProperty("#{param.code}")
  private String code;

  private String password;

  public Person getOwner() {
    return choosePassword.owner(code).orElse(null);
  }

  /** Why the link opens nothing. */
  public String getWhyNot() {
    return choosePassword.isOfClosedAccount(code)
        ? "people.password.closed"
        : "people.password.link-bad";
  }

  public String save() {
    if (password.length() < Passwords.LEAST_LENGTH) {
      errors.add("password", "people.password.short", Passwords.LEAST_LENGTH);
      return null;
    }
    // the next page has it in its field, so that only the password is left to type
    FacesContext.getCurrentInstance()
        .getExternalContext()
        .getFlash()
        .put(SignInPage.NAME, getOwner().signInName());
    choosePassword.run(code, password.toCharArray());
    errors.news("people.password.chosen");
    return "/sign-in.xhtml?faces-redirect=true";
  }

  public String getCode() {
    return code;
  }

  public String getPassword() {
    return password;
  }

  public void setPassword(String password) {
    this.password = password;
  }
}
