package lapline.board.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.context.ExternalContext;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.ZoneId;
import java.util.List;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.QrCode;
import lapline.pages.drawing.SvgWriter;
import lapline.people.SignedIn;
import lapline.server.Settings;
import lapline.signoff.Skills;

/** The sentences of a training record on its page: {@code #{recordWords.step(s)}}. */
@Named
@RequestScoped
public class RecordWords {
  private static final double CODE = 22;

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

  public String title(TrainingRecord record) {
    return writer.title(record);
  }

  public String mineTitle(TrainingRecord record) {
    return writer.mineTitle(record);
  }

  public List<RecordWriter.Obstacle> inTheWay(TrainingRecord record) {
    return writer.inTheWay(record);
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

  /** The square code that opens the check, as a drawing for the page that is printed. */
  public String code(TrainingRecord.Line line) {
    String title = line.mark().skill().title();
    return SvgWriter.write(
        new Drawing(
            "check-" + line.mark().skill().id(),
            CODE,
            CODE,
            messages.say("record.code", title),
            messages.say("record.code.opens", writer.checkOf(line)),
            List.of(QrCode.at(writer.checkOf(line), 0, 0, CODE))));
  }

  public String step(TakenStep step) {
    return writer.step(step);
  }
}
