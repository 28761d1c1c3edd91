package lapline.signoff.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.signoff.CheckSignOff;
import lapline.signoff.CheckSignOff.Answer;
import lapline.signoff.SignOff;

/** Is this sign-off good now? For anybody who holds its code. */
@Named
@RequestScoped
public class CheckPage {
  @Inject private CheckSignOff checkSignOff;

  @Inject
  @ManagedProperty("#{param.code}")
  private String code;

  private Answer answer;

  /** Null when no sign-off has this code. */
  public Answer getAnswer() {
    if (answer == null && isAsked()) {
      answer = checkSignOff.run(code).orElse(null);
    }
    return answer;
  }

  private boolean isAsked() {
    return code != null && !code.isBlank();
  }

  public String getTitleKey() {
    if (!isAsked()) {
      return "signoff.check.ask";
    }
    return getAnswer() == null
        ? "signoff.check.unknown"
        : "signoff.check." + getAnswer().standing().name().toLowerCase(java.util.Locale.ROOT);
  }

  public boolean isGood() {
    return getAnswer().standing() == SignOff.Standing.GOOD;
  }

  /** Whether somebody put an end to it, for a while or for good. */
  public boolean isStopped() {
    SignOff.Standing now = getAnswer().standing();
    return now == SignOff.Standing.SUSPENDED || now == SignOff.Standing.WITHDRAWN;
  }

  public String getCode() {
    return code;
  }
}
