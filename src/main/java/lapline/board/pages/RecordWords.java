package lapline.board.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.ExternalContext;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.ZoneId;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.pages.Messages;
import lapline.people.SignedIn;
import lapline.server.Settings;
import lapline.signoff.Skills;

/** The sentences of a training record on its page: {@code #{recordWords.step(s)}}. */
@Named
@RequestScoped
public class RecordWords {
  @Inject private SignedIn signedIn;
  @Inject private Messages messages;
  @Inject private Skills skills;
  @Inject private Settings settings;
  private RecordWriter writer;

  @PostConstruct
  void begin() {
    ZoneId zone = signedIn.person().zone();
    String address =
        settings.addressOr(here(FacesContext.getCurrentInstance().getExternalContext()));
    writer = new RecordWriter(messages, skills, zone, address + "/check");
  }

  /** Where this page was opened. */
  private static String here(ExternalContext page) {
    return page.getRequestScheme()
        + "://"
        + page.getRequestServerName()
        + ":"
        + page.getRequestServerPort()
        + page.getRequestContextPath();
  }

  public String signed(TrainingRecord.Line line) {
    return writer.signed(line);
  }

  public String proof(TrainingRecord.Line line) {
    return writer.proof(line);
  }

  public String check(TrainingRecord.Line line) {
    return writer.check(line);
  }

  public String step(TakenStep step) {
    return writer.step(step);
  }
}
