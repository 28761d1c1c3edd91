package lapline.exams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import lapline.content.ContentFiles;
import lapline.exams.bank.Bank;
import lapline.exams.bank.BankReader;
import lapline.exams.bank.QuestionBanks;
import lapline.people.LearnerAdvanced;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** An exam from its drawing to its result, and whom the wall keeps out. */
class SitPaperTest {
  private static final UUID WORKSHOP = UUID.randomUUID();
  private static final String UNIT = "clear";

  private Instant now = Instant.parse("2031-03-04T14:05:00Z");
  private final Clock clock = clock(() -> now);
  private final RememberedItems items = new RememberedItems();
  private final RememberedPapers records = new RememberedPapers();
  private final QuestionBanks banks = new BankReader(ContentFiles.fromClasspath()).read();
  private final Bank bank = banks.bank(UNIT).orElseThrow();
  private final List<LearnerAdvanced> told = new ArrayList<>();
  private final DrawPaper draw =
      new DrawPaper(records, items, banks, clock, new SplittableRandom(5));
  private final SavePaperAnswers save = new SavePaperAnswers(records, clock);
  private final HandInPaper handIn = new HandInPaper(records, told::add, clock);
  private final ReadPapers read = new ReadPapers(records);
  private final Person apprentice = person(WORKSHOP, Role.APPRENTICE);

  private static Clock clock(InstantSource source) {
    return new Clock() {
      @Override
      public ZoneId getZone() {
        return ZoneOffset.UTC;
      }

      @Override
      public Clock withZone(ZoneId zone) {
        return this;
      }

      @Override
      public Instant instant() {
        return source.instant();
      }
    };
  }

  private static Person person(UUID workshop, Role role) {
    return new Person(
        UUID.randomUUID(),
        workshop,
        "Somebody Invented",
        "somebody",
        Set.of(role),
        UnitSystem.METRIC,
        ZoneOffset.UTC,
        true);
  }

  private UUID drawn() {
    return ((DrawPaper.Ready) draw.run(apprentice, UNIT)).sitting().id();
  }

  @Test
  void a_paper_that_is_open_is_offered_again_and_not_a_second_one() {
    assertThat(drawn()).isEqualTo(drawn());
  }

  @Test
  void only_an_apprentice_sits_an_exam() {
    assertThatThrownBy(() -> draw.run(person(WORKSHOP, Role.OWNER), UNIT))
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void there_is_no_exam_of_a_unit_without_a_bank() {
    assertThatThrownBy(() -> draw.run(apprentice, "welding")).isInstanceOf(NotFoundException.class);
  }

  @Test
  void what_is_written_stays_as_typed_and_other_places_with_it() {
    UUID id = drawn();
    List<String> cells = List.copyOf(records.paper(id).orElseThrow().cells());
    save.run(apprentice, id, Map.of(cells.get(0), "half a mil?", cells.get(1), "3"));
    save.run(apprentice, id, Map.of(cells.get(1), ""));
    assertThat(records.answers(id))
        .containsExactlyInAnyOrderEntriesOf(Map.of(cells.get(0), "half a mil?", cells.get(1), ""));
  }

  @Test
  void places_that_the_paper_does_not_have_are_passed_over() {
    UUID id = drawn();
    save.run(apprentice, id, Map.of("99", "x", "workshop_id", "x"));
    assertThat(records.answers(id)).isEmpty();
  }

  @Test
  void the_right_answers_pass_and_the_learners_standing_is_told() {
    UUID id = drawn();
    save.run(apprentice, id, PaperKey.rightAnswers(records.paper(id).orElseThrow()));
    PaperResult result = handIn.run(apprentice, id);
    assertThat(result.passed()).isTrue();
    assertThat(told).containsExactly(new LearnerAdvanced(apprentice.id(), WORKSHOP, UNIT));
    assertThat(records.passed(apprentice.id())).containsOnlyKeys(UNIT);
  }

  @Test
  void an_empty_paper_does_not_pass_and_says_what_was_not_answered() {
    PaperResult result = handIn.run(apprentice, drawn());
    assertThat(result.passed()).isFalse();
    assertThat(result.unanswered()).isEqualTo(bank.blueprint().size());
  }

  @Test
  void handing_in_twice_marks_once() {
    UUID id = drawn();
    PaperResult first = handIn.run(apprentice, id);
    save.run(apprentice, id, PaperKey.rightAnswers(records.paper(id).orElseThrow()));
    assertThat(handIn.run(apprentice, id)).isEqualTo(first);
    assertThat(told).hasSize(1);
  }

  @Test
  void nothing_is_kept_on_a_paper_that_was_handed_in_and_that_is_said() {
    UUID id = drawn();
    handIn.run(apprentice, id);
    assertThat(save.run(apprentice, id, Map.of("1", "2"))).isEmpty();
    assertThat(records.answers(id)).isEmpty();
  }

  @Test
  void the_next_paper_waits_until_the_rest_is_over_to_the_second() {
    handIn.run(apprentice, drawn());
    Duration rest = bank.blueprint().rest();
    Instant from = now.plus(rest);
    now = from.minusSeconds(1);
    assertThat(draw.run(apprentice, UNIT)).isEqualTo(new DrawPaper.TooSoon(from));
    now = from;
    assertThat(draw.run(apprentice, UNIT)).isInstanceOf(DrawPaper.Ready.class);
  }

  @Test
  void the_rest_of_one_unit_does_not_hold_up_another() {
    handIn.run(apprentice, drawn());
    assertThat(draw.run(apprentice, "masking")).isInstanceOf(DrawPaper.Ready.class);
  }

  @Test
  void the_key_is_not_shown_before_handing_in() {
    UUID id = drawn();
    assertThat(read.marked(apprentice, id)).isEmpty();
    handIn.run(apprentice, id);
    assertThat(read.marked(apprentice, id)).isPresent();
  }

  @Test
  void another_workshops_paper_does_not_exist_for_anybody() {
    UUID id = drawn();
    for (Role role : Role.values()) {
      Person other = person(UUID.randomUUID(), role);
      assertThatThrownBy(() -> read.marked(other, id)).isInstanceOf(NotFoundException.class);
      assertThatThrownBy(() -> read.toWrite(other, id)).isInstanceOf(NotFoundException.class);
      assertThatThrownBy(() -> save.run(other, id, Map.of())).isInstanceOf(NotFoundException.class);
      assertThatThrownBy(() -> handIn.run(other, id)).isInstanceOf(NotFoundException.class);
    }
  }

  @Test
  void nobody_else_writes_on_a_paper_and_instructors_see_it_when_it_is_marked() {
    UUID id = drawn();
    Person instructor = person(WORKSHOP, Role.INSTRUCTOR);
    Person mate = person(WORKSHOP, Role.APPRENTICE);
    assertThatThrownBy(() -> save.run(instructor, id, Map.of()))
        .isInstanceOf(NotFoundException.class);
    assertThatThrownBy(() -> handIn.run(mate, id)).isInstanceOf(NotFoundException.class);
    handIn.run(apprentice, id);
    assertThat(read.marked(instructor, id)).isPresent();
    assertThatThrownBy(() -> read.marked(mate, id)).isInstanceOf(NotAllowedException.class);
  }
}
