package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.random.RandomGenerator;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Secrets;

/** Begins the record of a panel; a draft of the same task that is open is offered again. */
@ApplicationScoped
public class StartAttempt {
  /** Short enough to be typed from paper; unique all the same, the database sees to that. */
  private static final int CODE_LETTERS = 8;

  private AttemptRecords records;
  private PracticeTasks tasks;
  private ChooseGunCard choose;
  private Clock clock;
  private RandomGenerator chance;

  protected StartAttempt() {}

  @Inject
  public StartAttempt(
      AttemptRecords records,
      PracticeTasks tasks,
      ChooseGunCard choose,
      Clock clock,
      RandomGenerator chance) {
    this.records = records;
    this.tasks = tasks;
    this.choose = choose;
    this.clock = clock;
    this.chance = chance;
  }

  /** The draft of this task that the person has open. */
  public Optional<Attempt> open(Person by, String taskId) {
    return records.openDraft(by.id(), taskId);
  }

  /**
   * @param gunCard null for none
   * @param changedWhat the one thing that is changed this time; may be empty
   */
  public Attempt run(Person by, String taskId, UUID gunCard, String changedWhat) {
    by.mustBe(Role.APPRENTICE);
    PracticeTask task = tasks.find(taskId).orElseThrow(NotFoundException::new);
    choose.mustBeThere(by, gunCard);
    return open(by, taskId).orElseGet(() -> begin(draft(by, task, gunCard, changedWhat)));
  }

  private Attempt begin(Attempt draft) {
    try {
      records.add(draft);
      return draft;
    } catch (OpenDraftException tappedTwice) {
      return records.openDraft(draft.person(), draft.task()).orElseThrow(() -> tappedTwice);
    }
  }

  private Attempt draft(Person by, PracticeTask task, UUID gunCard, String changedWhat) {
    return new Attempt(
        UUID.randomUUID(),
        by.workshop(),
        by.id(),
        task.id(),
        task.version(),
        task.unit(),
        task.skill(),
        Secrets.code(chance, CODE_LETTERS),
        ChooseGunCard.tidy(changedWhat),
        gunCard,
        by.units(),
        Attempt.State.DRAFT,
        0,
        clock.instant(),
        null);
  }
}
