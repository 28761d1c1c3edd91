package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.random.RandomGenerator;
import lapline.exams.bank.Bank;
import lapline.exams.bank.QuestionBanks;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Draws a paper for an apprentice; one that is open is offered again. Between handing in one paper
 * and drawing the next lies the rest that the bank asks for, so that the reasons are read, and the
 * next paper begins with the items that the last one did not have.
 */
@ApplicationScoped
public class DrawPaper {
  private PaperRecords records;
  private ItemRecords items;
  private QuestionBanks banks;
  private Clock clock;
  private RandomGenerator chance;

  protected DrawPaper() {}

  @Inject
  public DrawPaper(
      PaperRecords records,
      ItemRecords items,
      QuestionBanks banks,
      Clock clock,
      RandomGenerator chance) {
    this.records = records;
    this.items = items;
    this.banks = banks;
    this.clock = clock;
    this.chance = chance;
  }

  /** What became of the wish for a paper. */
  public sealed interface Outcome {}

  /** It lies there to be sat. */
  public record Ready(Sitting sitting) implements Outcome {}

  /**
   * Not yet.
   *
   * @param from when it may be drawn
   */
  public record TooSoon(Instant from) implements Outcome {}

  public Outcome run(Person by, String unit) {
    by.mustBe(Role.APPRENTICE);
    Bank bank = banks.bank(unit).orElseThrow(NotFoundException::new);
    Optional<Sitting> open = records.open(by.id(), unit);
    if (open.isPresent()) {
      return new Ready(open.get());
    }
    return restUntil(by, bank)
        .<Outcome>map(TooSoon::new)
        .orElseGet(() -> new Ready(draw(by, bank)));
  }

  /** When the person may draw the next paper; empty when at once. */
  public Optional<Instant> restUntil(Person by, String unit) {
    return banks.bank(unit).flatMap(bank -> restUntil(by, bank));
  }

  private Optional<Instant> restUntil(Person by, Bank bank) {
    return records
        .lastHandedIn(by.id(), bank.unit())
        .map(last -> last.outcome().handedIn().plus(bank.blueprint().rest()))
        .filter(clock.instant()::isBefore);
  }

  private Sitting draw(Person by, Bank bank) {
    Set<String> before =
        records
            .lastHandedIn(by.id(), bank.unit())
            .flatMap(last -> records.paper(last.id()))
            .map(Paper::items)
            .orElse(Set.of());
    Paper paper = new PaperDraw(chance).draw(usable(by, bank), by.units(), before);
    Sitting sitting =
        new Sitting(UUID.randomUUID(), by.workshop(), by.id(), bank.unit(), clock.instant(), null);
    try {
      records.add(sitting, paper);
      return sitting;
    } catch (OpenPaperException tappedTwice) {
      return records.open(by.id(), bank.unit()).orElseThrow(() -> tappedTwice);
    }
  }

  /**
   * What the workshop has not set aside; all of it where a changed bank would be left too small.
   */
  private Bank usable(Person by, Bank bank) {
    Set<String> aside = items.aside(by.workshop(), bank.unit());
    Bank left = bank.without(aside);
    return aside.isEmpty() || !PaperDraw.isPossible(left) ? bank : left;
  }
}
