package lapline.people.pages;

import static jakarta.security.enterprise.authentication.mechanism.http.AuthenticationParameters.withParams;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.ExternalContext;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.security.enterprise.AuthenticationStatus;
import jakarta.security.enterprise.SecurityContext;
import jakarta.security.enterprise.credential.Password;
import jakarta.security.enterprise.credential.UsernamePasswordCredential;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import lapline.pages.Errors;
import lapline.people.CheckPassword;
import lapline.people.SetUpWorkshop;
import lapline.people.SignInThrottle;

/** Who are you? Leads back to the page that asked. */
@Named
@RequestScoped
public class SignInPage {
  /** Under which the page before hands on who is about to sign in. */
  static final String NAME = "sign-in-name";

  @Inject private SecurityContext security;
  @Inject private SignInThrottle throttle;
  @Inject private Errors errors;
  @Inject private SetUpWorkshop setUp;
  private String name;
  private String password;
  private boolean back;

  public void signIn() throws IOException {
    ExternalContext outside = FacesContext.getCurrentInstance().getExternalContext();
    HttpServletRequest request = (HttpServletRequest) outside.getRequest();
    if (request.getUserPrincipal() != null) {
      // somebody signed in from another tab since: the server would keep them, whatever the
      // password, and the newcomer would work in their name
      errors.add(null, "people.sign-in.taken");
      return;
    }
    String tidy = CheckPassword.tidy(name);
    if (!throttle.open(tidy, request.getRemoteAddr())) {
      errors.add("name", "people.sign-in.wait");
      return;
    }
    // a session id from before the sign-in must be worth nothing after it
    request.getSession();
    request.changeSessionId();
    AuthenticationStatus status =
        security.authenticate(
            request,
            (HttpServletResponse) outside.getResponse(),
            withParams()
                .credential(new UsernamePasswordCredential(tidy, new Password(password)))
                .newAuthentication(!back));
    follow(status, tidy, request, outside);
  }

  private void follow(
      AuthenticationStatus status, String tidy, HttpServletRequest request, ExternalContext outside)
      throws IOException {
    switch (status) {
      case SUCCESS -> {
        throttle.rightPassword(tidy);
        outside.redirect(outside.getRequestContextPath() + "/");
      }
      case SEND_CONTINUE -> {
        throttle.rightPassword(tidy);
        FacesContext.getCurrentInstance().responseComplete();
      }
      default -> {
        throttle.wrongPassword(tidy, request.getRemoteAddr());
        errors.add("name", "people.sign-in.wrong");
      }
    }
  }

  /** Whether there is nobody yet who could sign in. */
  public boolean isTooEarly() {
    return setUp.isWaiting();
  }

  /** As typed, or as the page before knew it. */
  public String getName() {
    Object known =
        FacesContext.getCurrentInstance().getExternalContext().getFlash().get(SignInPage.NAME);
    return name == null && known != null ? known.toString() : name;
  }

  public void setName(String name) {
    this.name = name;
  }

  public String getPassword() {
    return password;
  }

  public void setPassword(String password) {
    this.password = password;
  }

  public boolean isBack() {
    return back;
  }

  public void setBack(boolean back) {
    this.back = back;
  }
}
