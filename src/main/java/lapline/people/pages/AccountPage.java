package lapline.people.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.pages.Errors;
import lapline.people.AccessToken;
import lapline.people.ChangeAccount;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.SignedIn;
import lapline.trade.measure.UnitSystem;

/** My account: units, password, and the tokens that let a program act for me. */
@Named
@RequestScoped
public class AccountPage {
  @Inject private SignedIn signedIn;
  @Inject private ChangeAccount change;
  @Inject private PeopleRecords records;
  @Inject private Errors errors;
  @Inject private When when;
  private UnitSystem units;
  private String oldPassword;
  private String newPassword;
  private String tokenName;
  private String freshToken;

  public String saveUnits() {
    change.units(signedIn.person(), units);
    errors.news("account.units.saved");
    return "/account.xhtml?faces-redirect=true";
  }

  public String savePassword() {
    String refusal =
        change.password(signedIn.person(), oldPassword.toCharArray(), newPassword.toCharArray());
    if (refusal != null) {
      errors.add(
          refusal.contains("old") ? "oldPassword" : "newPassword",
          refusal,
          lapline.people.Passwords.LEAST_LENGTH);
      return null;
    }
    errors.news("account.password.saved");
    return "/account.xhtml?faces-redirect=true";
  }

  /** Makes a token and shows it this once. */
  public void makeToken() {
    String name = tokenName.strip();
    freshToken = change.makeToken(signedIn.person(), name).orElse(null);
    if (freshToken == null) {
      change
          .goodToken(signedIn.person(), name)
          .ifPresent(t -> errors.add("name", "account.token.twice", name, when.time(t.created())));
    } else {
      tokenName = "";
    }
  }

  public String revoke(AccessToken token) {
    change.revokeToken(signedIn.person(), token.id());
    errors.news("account.token.revoked", token.name());
    return "/account.xhtml?faces-redirect=true";
  }

  public List<AccessToken> getTokens() {
    return records.tokens(signedIn.person().id());
  }

  public Person getPerson() {
    return signedIn.person();
  }

  public UnitSystem[] getUnitSystems() {
    return UnitSystem.values();
  }

  public UnitSystem getUnits() {
    return units == null ? signedIn.person().units() : units;
  }

  public void setUnits(UnitSystem units) {
    this.units = units;
  }

  public String getOldPassword() {
    return oldPassword;
  }

  public void setOldPassword(String oldPassword) {
    this.oldPassword = oldPassword;
  }

  public String getNewPassword() {
    return newPassword;
  }

  public void setNewPassword(String newPassword) {
    this.newPassword = newPassword;
  }

  public String getTokenName() {
    return tokenName;
  }

  public void setTokenName(String tokenName) {
    this.tokenName = tokenName;
  }

  public String getFreshToken() {
    return freshToken;
  }
}
