package lapline.practice.photographs;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.practice.Attempt;
import lapline.practice.AttemptRecords;
import lapline.practice.FindAttempts;
import lapline.practice.photographs.PhotographRefusedException.Reason;

/** Adds, shows and takes away the photographs of a panel, for those who may. */
@ApplicationScoped
public class LookAfterPhotographs {
  /** Enough for every defect of a panel, from near and from far. */
  public static final int MOST = 12;

  private static final int LONGEST_CAPTION = 200;

  private PhotographRecords records;
  private AttemptRecords attempts;
  private FindAttempts find;
  private PhotographFiles files;
  private SweepPhotographs sweep;
  private Clock clock;

  protected LookAfterPhotographs() {}

  @Inject
  public LookAfterPhotographs(
      PhotographRecords records,
      AttemptRecords attempts,
      FindAttempts find,
      PhotographFiles files,
      SweepPhotographs sweep,
      Clock clock) {
    this.records = records;
    this.attempts = attempts;
    this.find = find;
    this.files = files;
    this.sweep = sweep;
    this.clock = clock;
  }

  /**
   * Adds a picture to a panel; one that is there already is not added twice.
   *
   * @throws PhotographRefusedException when the file or their number is not right
   */
  @Transactional(dontRollbackOn = PhotographRefusedException.class)
  public Photograph add(Person by, UUID attempt, byte[] file, String caption) {
    mustWrite(by, find.attempt(by, attempt));
    CleanPicture picture = CleanPicture.of(file);
    String hash = files.keep(picture);
    // one after the other for one panel: the second press of two finds what the first added
    attempts.attemptToChange(attempt);
    List<Photograph> there = records.of(attempt);
    return there.stream()
        .filter(p -> p.hash().equals(hash))
        .findFirst()
        .orElseGet(() -> add(attempt, there.size(), hash, picture, caption));
  }

  private Photograph add(
      UUID attempt, int there, String hash, CleanPicture picture, String caption) {
    if (there >= MOST) {
      throw new PhotographRefusedException(Reason.TOO_MANY);
    }
    Photograph added =
        new Photograph(
            UUID.randomUUID(),
            attempt,
            hash,
            tidy(caption),
            picture.width(),
            picture.height(),
            clock.instant());
    records.add(added);
    return added;
  }

  /** A caption without blanks around it, as long as one is kept. */
  public static String tidy(String caption) {
    String plain = caption == null ? "" : caption.strip();
    return plain.substring(0, Math.min(plain.length(), LONGEST_CAPTION));
  }

  @Transactional
  public List<Photograph> of(Person by, UUID attempt) {
    find.attempt(by, attempt);
    return records.of(attempt);
  }

  /** One that this person may see. */
  @Transactional
  public Photograph photograph(Person by, UUID id) {
    Photograph found = records.photograph(id).orElseThrow(NotFoundException::new);
    find.attempt(by, found.attempt());
    return found;
  }

  public byte[] picture(Photograph of, boolean small) {
    return files.read(of.hash(), small);
  }

  /** What an instructor has looked at and decided on is evidence and stays. */
  public static boolean mayLose(Attempt attempt) {
    return attempt.state() == Attempt.State.DRAFT || attempt.state() == Attempt.State.SCORED;
  }

  @Transactional
  public void remove(Person by, UUID id) {
    Photograph found = photograph(by, id);
    Attempt attempt = find.attempt(by, found.attempt());
    mustWrite(by, attempt);
    if (!mayLose(attempt)) {
      throw new PhotographRefusedException(Reason.GRADED);
    }
    records.remove(id);
    files.mark(found.hash());
    sweep.ifDue();
  }

  /** Who did the panel and who teaches may add to it, until it is accepted. */
  private static void mustWrite(Person by, Attempt attempt) {
    if (attempt.state() == Attempt.State.ACCEPTED) {
      throw new NotAllowedException("practice-photographs.settled");
    }
    if (!attempt.belongsTo(by.id())) {
      by.mustBe(Role.INSTRUCTOR);
    }
  }
}
