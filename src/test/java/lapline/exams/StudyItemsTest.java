package lapline.exams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import lapline.content.ContentFiles;
import lapline.exams.ItemRecords.Answered;
import lapline.exams.ItemRecords.Given;
import lapline.exams.ItemStudied.Worth;
import lapline.exams.SetItemAside.Outcome;
import lapline.exams.bank.Bank;
import lapline.exams.bank.BankReader;
import lapline.exams.bank.Item;
import lapline.exams.bank.QuestionBanks;
import lapline.judgement.items.ItemSums;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.RememberedPeople;
import lapline.people.Role;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Which questions ask for a look, and what comes of setting one aside. Invented answers. */
class StudyItemsTest {
  private static final UUID WORKSHOP = UUID.randomUUID();
  private static final String UNIT = "preparing";
  private static final String ITEM = "coarse-scratch";
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2031-03-04T14:05:00Z"), ZoneOffset.UTC);

  private final QuestionBanks banks = new BankReader(ContentFiles.fromClasspath()).read();
  private final Bank bank = banks.bank(UNIT).orElseThrow();
  private final RememberedItems records = new RememberedItems();
  private final StudyItems study = new StudyItems(records, banks);
  private final SetItemAside aside =
      new SetItemAside(records, banks, new RememberedPeople(), CLOCK);
  private final Person instructor = person(Role.INSTRUCTOR);

  private static Person person(Role role) {
    return new Person(
        UUID.randomUUID(),
        WORKSHOP,
        "A",
        "a",
        Set.of(role),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }

  private String version() {
    return item().version();
  }

  private Item item() {
    return bank.items().stream().filter(i -> i.id().equals(ITEM)).findFirst().orElseThrow();
  }

  /** So many papers that ticked this choice, with this sum of other marks each. */
  private void ticked(int papers, int choice, double rest) {
    boolean right = ((Item.ChoiceItem) item()).choices().get(choice - 1).right();
    ItemSums sums = ItemSums.NONE;
    for (int i = 0; i < papers; i++) {
      sums = sums.and(ItemSums.ofPaper(right ? 1 : 0, rest));
    }
    records.answered.add(new Answered(ITEM, version(), sums));
    records.given.add(new Given(ITEM, version(), "" + choice, sums));
  }

  private ItemStudied studied() {
    ItemStudied amongAll =
        study.run(instructor, UNIT).stream()
            .filter(s -> s.item().id().equals(ITEM))
            .findFirst()
            .orElseThrow();
    assertThat(study.one(instructor, UNIT, ITEM)).as("by itself").isEqualTo(amongAll);
    return amongAll;
  }

  @Test
  void a_question_that_those_who_know_the_rest_get_right_is_good() {
    ticked(20, 3, 6);
    ticked(10, 1, 4);

    assertThat(studied().worth()).isEqualTo(Worth.GOOD);
    assertThat(studied().needsALook()).isFalse();
    assertThat(studied().choices().get(2).share()).isEqualTo(20 / 30.0);
    assertThat(studied().choices().get(0).rest()).hasValue(4);
    assertThat(studied().choices().get(1).rest()).isEmpty();
  }

  @Test
  void a_wrong_choice_that_those_who_know_most_tick_puts_the_key_in_doubt() {
    ticked(20, 3, 4);
    ticked(10, 1, 6);

    assertThat(studied().worth()).isEqualTo(Worth.KEY_DOUBTFUL);
    assertThat(study.run(instructor, UNIT).get(0).item().id()).isEqualTo(ITEM);
  }

  @Test
  void what_all_get_right_and_what_hardly_anybody_does_ask_for_a_look() {
    ticked(40, 3, 5);
    ticked(1, 1, 4);
    assertThat(studied().worth()).isEqualTo(Worth.TOO_EASY);

    records.answered.clear();
    records.given.clear();
    ticked(5, 3, 6);
    ticked(35, 1, 5);
    assertThat(studied().worth()).isEqualTo(Worth.TOO_HARD);
  }

  @Test
  void a_question_that_tells_nobody_apart_says_so() {
    ticked(10, 3, 5);
    ticked(9, 3, 3);
    ticked(4, 2, 5);
    ticked(4, 2, 3);

    assertThat(studied().worth()).isEqualTo(Worth.TELLS_LITTLE);
  }

  @Test
  void few_papers_and_papers_with_another_wording_say_nothing() {
    ticked(19, 1, 6);
    records.answered.add(
        new Answered(ITEM, "an older wording", new ItemSums(500, 0, 0, 3000, 18_000, 0)));

    assertThat(studied().worth()).isEqualTo(Worth.TOO_FEW);
    assertThat(studied().sums().papers()).isEqualTo(19);
  }

  @Test
  void what_is_set_aside_is_drawn_no_more_until_it_is_brought_back() {
    assertThat(aside.run(instructor, UNIT, ITEM, "Two answers fit.")).isEqualTo(Outcome.DONE);
    assertThat(aside.run(instructor, UNIT, ITEM, "Again.")).isEqualTo(Outcome.ALREADY);
    assertThat(drawn()).doesNotContain(ITEM);

    assertThat(aside.bringBack(instructor, UNIT, ITEM)).isEqualTo(Outcome.DONE);
    assertThat(aside.bringBack(instructor, UNIT, ITEM)).isEqualTo(Outcome.ALREADY);

    assertThat(drawn()).contains(ITEM);
    assertThat(aside.history(instructor, UNIT, ITEM))
        .singleElement()
        .satisfies(
            a -> {
              assertThat(a.reason()).isEqualTo("Two answers fit.");
              assertThat(a.by()).isEqualTo(instructor.id());
              assertThat(a.back()).isEqualTo(CLOCK.instant());
            });
  }

  /** Of forty papers. */
  private Set<String> drawn() {
    Set<String> drawn = new HashSet<>();
    for (int seed = 0; seed < 40; seed++) {
      RememberedPapers papers = new RememberedPapers();
      DrawPaper draw = new DrawPaper(papers, records, banks, CLOCK, new SplittableRandom(seed));
      DrawPaper.Ready ready = (DrawPaper.Ready) draw.run(person(Role.APPRENTICE), UNIT);
      drawn.addAll(papers.paper(ready.sitting().id()).orElseThrow().items());
    }
    return drawn;
  }

  /** The bank draws its only order question for each paper. */
  @Test
  void what_every_paper_needs_cannot_be_set_aside() {
    assertThat(aside.run(instructor, UNIT, "order-of-work", "Why not.")).isEqualTo(Outcome.NEEDED);
    assertThat(records.aside(WORKSHOP, UNIT)).isEmpty();
  }

  @Test
  void only_an_instructor_studies_and_only_what_there_is() {
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> study.run(person(Role.APPRENTICE), UNIT));
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> aside.run(person(Role.EXAMINER), UNIT, ITEM, "x"));
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> study.one(person(Role.APPRENTICE), UNIT, ITEM));
    assertThatExceptionOfType(NotFoundException.class)
        .isThrownBy(() -> study.one(instructor, UNIT, "no-such-item"));
    assertThatExceptionOfType(NotFoundException.class)
        .isThrownBy(() -> aside.run(instructor, UNIT, "no-such-item", "x"));
    assertThat(List.of(study.run(instructor, UNIT).size())).containsExactly(bank.items().size());
  }
}
