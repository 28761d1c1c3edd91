package lapline.signoff.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.signoff.CheckSignOff;
import lapline.signoff.CheckSignOff.Answer;

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
    if (answer == null && code != null) {
      answer = checkSignOff.run(code).orElse(null);
    }
    return answer;
  }

  public String getTitleKey() {
    return getAnswer() == null
        ? "signoff.check.unknown"
        : "signoff.check." + getAnswer().standing().name().toLowerCase(java.util.Locale.ROOT);
  }

  public String getCode() {
    return code;
  }
}
