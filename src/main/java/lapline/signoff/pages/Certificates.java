package lapline.signoff.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
import lapline.pages.Messages;
import lapline.people.Person;
import lapline.server.Settings;
import lapline.signoff.ShowCertificate;

/** Makes the certificate of a sign-off for who may see it. */
@ApplicationScoped
public class Certificates {
  private ShowCertificate show;
  private Messages messages;
  private Settings settings;

  protected Certificates() {}

  @Inject
  public Certificates(ShowCertificate show, Messages messages, Settings settings) {
    this.show = show;
    this.messages = messages;
    this.settings = settings;
  }

  /**
   * @param here address under which the page was opened
   */
  public Certificate of(Person by, UUID signOff, String here) {
    return new Certificate(
        show.of(by, signOff), by.zone(), settings.addressOr(here) + "/check", messages);
  }
}
