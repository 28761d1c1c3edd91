package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;

/** Says which gun a draft is sprayed with, and what the apprentice changes this time. */
@ApplicationScoped
public class ChooseGunCard {
  private static final int LONGEST_NOTE = 500;

  private AttemptRecords records;
  private TargetRecords targets;

  protected ChooseGunCard() {}

  @Inject
  public ChooseGunCard(AttemptRecords records, TargetRecords targets) {
    this.records = records;
    this.targets = targets;
  }

  @Transactional
  public void run(Person by, UUID attempt, UUID gunCard, String changedWhat) {
    Attempt draft = records.attemptToChange(attempt).orElseThrow(NotFoundException::new);
    draft.mustBeWrittenBy(by);
    mustBeThere(by, gunCard);
    records.changeChoices(draft.withChoices(gunCard, tidy(changedWhat)));
  }

  /** Lets pass a card of the person's own workshop, or none. */
  void mustBeThere(Person by, UUID gunCard) {
    if (gunCard != null) {
      by.mustBeIn(targets.gunCard(gunCard).orElseThrow(NotFoundException::new).workshop());
    }
  }

  static String tidy(String note) {
    String text = note == null ? "" : note.strip();
    return text.length() > LONGEST_NOTE ? text.substring(0, LONGEST_NOTE) : text;
  }
}
