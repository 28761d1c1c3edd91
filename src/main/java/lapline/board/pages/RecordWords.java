package lapline.board.pages;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.ZoneId;
import lapline.board.TakenStep;
import lapline.board.TrainingRecord;
import lapline.pages.Messages;
import lapline.people.SignedIn;
import lapline.signoff.Skills;

/** The sentences of a training record on its page: {@code #{recordWords.step(s)}}. */
@Named
@RequestScoped
public class RecordWords {
  @Inject private SignedIn signedIn;
  @Inject private Messages messages;
  @Inject private Skills skills;
  private RecordWriter writer;

  @PostConstruct
  void begin() {
    ZoneId zone = signedIn.person().zone();
    writer = new RecordWriter(messages, skills, zone);
  }

  public String signed(TrainingRecord.Line line) {
    return writer.signed(line);
  }

  public String proof(TrainingRecord.Line line) {
    return writer.proof(line);
  }

  public String step(TakenStep step) {
    return writer.step(step);
  }
}
