package lapline.board.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.UUID;
import lapline.board.ShowTrainingRecord;
import lapline.pages.Messages;
import lapline.pages.drawing.Drawing;
import lapline.pages.drawing.Paper;
import lapline.people.Person;
import lapline.server.Settings;
import lapline.signoff.Skills;

/** Makes the sheet of a person's training record for who may see it. */
@ApplicationScoped
public class RecordSheets {
  private ShowTrainingRecord show;
  private Messages messages;
  private Skills skills;
  private Settings settings;

  protected RecordSheets() {}

  @Inject
  public RecordSheets(
      ShowTrainingRecord show, Messages messages, Skills skills, Settings settings) {
    this.settings = settings;
    this.show = show;
    this.messages = messages;
    this.skills = skills;
  }

  /**
   * @param here address under which the page was opened
   */
  public Drawing of(Person by, UUID person, Paper paper, String here) {
    String check = settings.addressOr(here) + "/check";
    RecordWriter words = new RecordWriter(messages, skills, by.zone(), check);
    return new RecordSheet(show.of(by, person), words, paper).drawing();
  }
}
