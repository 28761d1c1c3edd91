package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.board.ShowTrainingRecord;
import lapline.board.TrainingRecord;
import lapline.people.SignedIn;
import lapline.practice.pages.ResultPage;

/** What do I show the inspector about this person? */
@Named
@RequestScoped
public class TrainingRecordPage {
  @Inject private SignedIn signedIn;
  @Inject private ShowTrainingRecord show;
  private String person;
  private TrainingRecord shown;

  public void open() {
    shown = show.of(signedIn.person(), ResultPage.id(person));
  }

  public TrainingRecord getShown() {
    return shown;
  }

  public String getPerson() {
    return person;
  }

  public void setPerson(String person) {
    this.person = person;
  }
}
