package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.exams.ItemRecords.SetAside;
import lapline.exams.bank.Bank;
import lapline.exams.bank.QuestionBanks;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Takes an item out of what a workshop's papers are drawn from, until it is brought back. Papers
 * that have it keep it and their marks until an instructor has them marked anew ({@link MarkAnew}).
 */
@ApplicationScoped
public class SetItemAside {
  private ItemRecords records;
  private QuestionBanks banks;
  private PeopleRecords people;
  private Clock clock;

  protected SetItemAside() {}

  @Inject
  public SetItemAside(ItemRecords records, QuestionBanks banks, PeopleRecords people, Clock clock) {
    this.records = records;
    this.banks = banks;
    this.people = people;
    this.clock = clock;
  }

  /** What became of the wish. */
  public enum Outcome {
    DONE,
    /** Somebody was quicker. */
    ALREADY,
    /** Without it no paper could be drawn as the bank says. */
    NEEDED
  }

  /**
   * @param reason for those who meet it later
   */
  @Transactional
  public Outcome run(Person by, String unit, String item, String reason) {
    Bank bank = bank(by, unit, item);
    people.hold(by.workshop());
    Set<String> aside = new HashSet<>(records.aside(by.workshop(), unit));
    if (!aside.add(item)) {
      return Outcome.ALREADY;
    }
    if (!PaperDraw.isPossible(bank.without(aside))) {
      return Outcome.NEEDED;
    }
    records.add(
        new SetAside(
            UUID.randomUUID(),
            by.workshop(),
            unit,
            item,
            clock.instant(),
            by.id(),
            reason,
            null,
            null));
    return Outcome.DONE;
  }

  /**
   * @return ALREADY where somebody was quicker
   */
  @Transactional
  public Outcome bringBack(Person by, String unit, String item) {
    bank(by, unit, item);
    people.hold(by.workshop());
    if (!records.aside(by.workshop(), unit).contains(item)) {
      return Outcome.ALREADY;
    }
    records.bringBack(by.workshop(), unit, item, clock.instant(), by.id());
    return Outcome.DONE;
  }

  /** When it was set aside and brought back, the newest first. */
  @Transactional
  public List<SetAside> history(Person by, String unit, String item) {
    bank(by, unit, item);
    return records.history(by.workshop(), unit, item);
  }

  private Bank bank(Person by, String unit, String item) {
    by.mustBe(Role.INSTRUCTOR);
    return banks
        .bank(unit)
        .filter(b -> b.items().stream().anyMatch(i -> i.id().equals(item)))
        .orElseThrow(NotFoundException::new);
  }
}
