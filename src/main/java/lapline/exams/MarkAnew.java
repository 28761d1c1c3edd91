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
import lapline.exams.bank.Item;
import lapline.exams.bank.QuestionBanks;
import lapline.people.Advances;
import lapline.people.LearnerAdvanced;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Marks the papers that were handed in anew: without a question that is set aside, or with it again
 * once it is brought back. Nobody's result changes unseen: what would change is shown first, and
 * exactly that is done or nothing. A sign-off that was given on such a paper is not touched, and
 * keeps the evidence it was given on.
 */
@ApplicationScoped
public class MarkAnew {
  private PaperRecords papers;
  private ItemRecords items;
  private QuestionBanks banks;
  private PeopleRecords people;
  private Advances advances;
  private Clock clock;

  protected MarkAnew() {}

  @Inject
  public MarkAnew(
      PaperRecords papers,
      ItemRecords items,
      QuestionBanks banks,
      PeopleRecords people,
      Advances advances,
      Clock clock) {
    this.papers = papers;
    this.items = items;
    this.banks = banks;
    this.people = people;
    this.advances = advances;
    this.clock = clock;
  }

  /** What became of the wish. */
  public enum Outcome {
    DONE,
    /** What would happen is no longer what was shown. */
    CHANGED_SINCE
  }

  /** What marking anew would do; its papers are none where all are marked as they should be. */
  @Transactional
  public MarkingEffect effect(Person by, String unit, String id) {
    by.mustBe(Role.INSTRUCTOR);
    Item item = item(unit, id);
    boolean aside = items.aside(by.workshop(), unit).contains(id);
    List<PaperHandedIn> found =
        aside
            ? papers.counting(by.workshop(), unit, id, item.version())
            : papers.leavingOut(by.workshop(), unit, id);
    return new MarkingEffect(aside, found.stream().map(p -> change(p, id, aside)).toList());
  }

  private static MarkingEffect.Change change(PaperHandedIn paper, String item, boolean aside) {
    Set<String> without = new HashSet<>(paper.without());
    if (aside) {
      without.add(item);
    } else {
      without.remove(item);
    }
    return new MarkingEffect.Change(
        paper.sitting(), paper.markedWithout(paper.without()), paper.markedWithout(without));
  }

  /**
   * @param shown the seal of the effect that was looked at
   */
  @Transactional
  public Outcome run(Person by, String unit, String item, String shown) {
    by.mustBe(Role.INSTRUCTOR);
    people.hold(by.workshop());
    MarkingEffect effect = effect(by, unit, item);
    if (!effect.seal().equals(shown)) {
      return Outcome.CHANGED_SINCE;
    }
    String reason = effect.leavesOut() ? reason(by, unit, item) : "";
    for (MarkingEffect.Change change : effect.papers()) {
      papers.keep(anew(by, item, effect.leavesOut(), reason, change));
    }
    // where a learner stands hangs on what they passed, not on their marks
    effect.papers().stream()
        .filter(c -> c.passes() || c.falls())
        .map(c -> c.sitting().person())
        .distinct()
        .forEach(person -> advances.tell(new LearnerAdvanced(person, by.workshop(), unit)));
    return Outcome.DONE;
  }

  private String reason(Person by, String unit, String item) {
    return items.history(by.workshop(), unit, item).stream()
        .findFirst()
        .map(SetAside::reason)
        .orElse("");
  }

  private MarkedAnew anew(
      Person by, String item, boolean leftOut, String reason, MarkingEffect.Change change) {
    return new MarkedAnew(
        UUID.randomUUID(),
        change.sitting().id(),
        clock.instant(),
        by.id(),
        item,
        leftOut,
        reason,
        change.before(),
        change.after());
  }

  private Item item(String unit, String id) {
    return banks
        .bank(unit)
        .flatMap(bank -> bank.items().stream().filter(i -> i.id().equals(id)).findFirst())
        .orElseThrow(NotFoundException::new);
  }
}
