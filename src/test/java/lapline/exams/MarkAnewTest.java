package lapline.exams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import lapline.content.ContentFiles;
import lapline.exams.MarkAnew.Outcome;
import lapline.exams.bank.BankReader;
import lapline.exams.bank.Item;
import lapline.exams.bank.ItemKind;
import lapline.exams.bank.QuestionBanks;
import lapline.people.LearnerAdvanced;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.RememberedPeople;
import lapline.people.Role;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Papers handed in are marked without a question that was set aside, seen before it is done. */
class MarkAnewTest {
  private static final UUID WORKSHOP = UUID.randomUUID();
  private static final String UNIT = "preparing";
  private static final String ITEM = "coarse-scratch";
  private static final double PASS = 0.75;
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2031-03-04T14:05:00Z"), ZoneOffset.UTC);

  private final QuestionBanks banks = new BankReader(ContentFiles.fromClasspath()).read();
  private final RememberedItems items = new RememberedItems();
  private final RememberedPapers papers = new RememberedPapers();
  private final RememberedPeople people = new RememberedPeople();
  private final List<LearnerAdvanced> told = new ArrayList<>();
  private final SetItemAside aside = new SetItemAside(items, banks, people, CLOCK);
  private final MarkAnew anew = new MarkAnew(papers, items, banks, people, told::add, CLOCK);
  private final Person instructor = person(WORKSHOP, Role.INSTRUCTOR);

  private static Person person(UUID workshop, Role role) {
    return new Person(
        UUID.randomUUID(),
        workshop,
        "A",
        "a",
        Set.of(role),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }

  private String version() {
    return banks.bank(UNIT).orElseThrow().items().stream()
        .filter(i -> i.id().equals(ITEM))
        .map(Item::version)
        .findFirst()
        .orElseThrow();
  }

  /** A paper of eight questions that was handed in: so many of the other seven right. */
  private UUID handedIn(int others, boolean thisOne, String version) {
    List<ItemMark> marks = new ArrayList<>();
    IntStream.range(0, 7).forEach(i -> marks.add(mark("other-" + i, "v", i < others)));
    marks.add(mark(ITEM, version, thisOne));
    double score = (others + (thisOne ? 1 : 0)) / 8.0;
    PaperResult result = new PaperResult(score, PASS, score >= PASS, marks);
    Sitting sitting =
        new Sitting(UUID.randomUUID(), WORKSHOP, UUID.randomUUID(), UNIT, CLOCK.instant(), null);
    papers.add(sitting, null);
    papers.keepResult(sitting.handedIn(CLOCK.instant(), result), result);
    return sitting.id();
  }

  private static ItemMark mark(String item, String version, boolean right) {
    return new ItemMark(
        item, version, ItemKind.SINGLE, right ? 1 : 0, ItemMark.State.ANSWERED, "1", List.of(), "");
  }

  private Sitting.Outcome outcome(UUID paper) {
    return papers.sitting(paper).orElseThrow().outcome();
  }

  private MarkingEffect effect() {
    return anew.effect(instructor, UNIT, ITEM);
  }

  private void setAside() {
    aside.run(instructor, UNIT, ITEM, "Two answers fit.");
  }

  @Test
  void what_would_change_is_told_before_anything_does() {
    UUID passes = handedIn(5, false, version()); // 5 of 8, without it 5 of 7 = 71 %: still short
    UUID turns = handedIn(6, false, version()); // 6 of 8 passes already
    UUID falls = handedIn(5, true, version()); // 6 of 8 passes, 5 of 7 does not
    handedIn(7, true, version()); // all right, with it and without
    handedIn(2, false, "an older wording");
    assertThat(effect().isEmpty()).as("nothing while the question counts").isTrue();

    setAside();

    assertThat(effect().papers()).hasSize(4);
    assertThat(effect().changing()).isEqualTo(3);
    assertThat(effect().passing()).isEmpty();
    assertThat(effect().falling()).extracting(c -> c.sitting().id()).containsExactly(falls);
    assertThat(outcome(falls).passed()).as("nothing has been done yet").isTrue();
    assertThat(outcome(passes).score()).isEqualTo(5 / 8.0);
    assertThat(outcome(turns).score()).isEqualTo(6 / 8.0);
  }

  @Test
  void a_paper_marked_anew_keeps_how_it_was_marked_and_why() {
    UUID paper = handedIn(5, true, version());
    setAside();

    assertThat(anew.run(instructor, UNIT, ITEM, effect().seal())).isEqualTo(Outcome.DONE);

    assertThat(outcome(paper).score()).isEqualTo(5 / 7.0);
    assertThat(outcome(paper).passed()).isFalse();
    assertThat(papers.result(paper).orElseThrow().passed()).as("of that day").isTrue();
    assertThat(papers.markedAnew(paper))
        .singleElement()
        .satisfies(
            a -> {
              assertThat(a.by()).isEqualTo(instructor.id());
              assertThat(a.at()).isEqualTo(CLOCK.instant());
              assertThat(a.reason()).isEqualTo("Two answers fit.");
              assertThat(a.before()).isEqualTo(new MarkedAnew.Mark(6 / 8.0, true, Set.of()));
              assertThat(a.after()).isEqualTo(new MarkedAnew.Mark(5 / 7.0, false, Set.of(ITEM)));
            });
    assertThat(told).extracting(LearnerAdvanced::unit).containsExactly(UNIT);
    assertThat(effect().isEmpty()).as("done once").isTrue();
  }

  @Test
  void what_is_brought_back_counts_again_when_the_papers_are_marked_anew() {
    UUID paper = handedIn(6, false, version());
    setAside();
    anew.run(instructor, UNIT, ITEM, effect().seal());
    assertThat(outcome(paper).score()).isEqualTo(6 / 7.0);
    assertThat(told).as("still passed: they stand where they stood").isEmpty();
    aside.bringBack(instructor, UNIT, ITEM);
    assertThat(effect().leavesOut()).isFalse();

    anew.run(instructor, UNIT, ITEM, effect().seal());

    assertThat(outcome(paper).score()).isEqualTo(6 / 8.0);
    assertThat(papers.markedAnew(paper)).hasSize(2);
    assertThat(effect().isEmpty()).isTrue();
  }

  @Test
  void who_looked_at_something_else_marks_nothing() {
    UUID first = handedIn(5, true, version());
    setAside();
    String shown = effect().seal();
    handedIn(6, true, version());

    assertThat(anew.run(instructor, UNIT, ITEM, shown)).isEqualTo(Outcome.CHANGED_SINCE);
    assertThat(outcome(first).passed()).isTrue();
    assertThat(papers.markedAnew(first)).isEmpty();
    assertThat(told).isEmpty();
  }

  @Test
  void a_paper_of_which_nothing_would_be_left_counts_as_it_is() {
    PaperResult one = new PaperResult(1, PASS, true, List.of(mark(ITEM, "v", true)));
    assertThat(PaperMarking.without(one, Set.of(ITEM))).isEqualTo(one);
  }

  @Test
  void only_an_instructor_marks_and_only_papers_of_the_workshop() {
    handedIn(5, true, version());
    setAside();
    String shown = effect().seal();
    Person neighbour = person(UUID.randomUUID(), Role.INSTRUCTOR);
    assertThat(anew.effect(neighbour, UNIT, ITEM).isEmpty()).isTrue();
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> anew.run(person(WORKSHOP, Role.EXAMINER), UNIT, ITEM, shown));
    assertThatExceptionOfType(NotAllowedException.class)
        .isThrownBy(() -> anew.effect(person(WORKSHOP, Role.APPRENTICE), UNIT, ITEM));
    assertThatExceptionOfType(NotFoundException.class)
        .isThrownBy(() -> anew.effect(instructor, UNIT, "no-such-item"));
  }
}
