package lapline.exams;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.RowsInMemory;
import lapline.exams.ItemRecords.Answered;
import lapline.exams.ItemRecords.Given;
import lapline.exams.bank.ItemKind;
import lapline.exams.store.StoredItemRecords;
import lapline.exams.store.StoredPaperRecords;
import lapline.judgement.items.ItemSums;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the exams' stores add up and keep, on the real schema. */
class ExamRowsTest {
  private static final Instant NOW = Instant.parse("2031-03-04T14:05:00Z");
  private static final UUID SHOP = new UUID(0, 1);
  private static final UUID LEARNER = new UUID(1, 1);
  private static final UUID OTHER_SHOP = new UUID(0, 2);
  private static final UUID NEIGHBOUR = new UUID(1, 2);
  private static final String PEOPLE =
      """
      insert into workshop (id, name, zone, units, created_at) values
        ('%1$s', 'Shop', 'UTC', 'METRIC', now()), ('%2$s', 'Other shop', 'UTC', 'METRIC', now());
      insert into person (id, workshop_id, name, sign_in_name, units, active, created_at) values
        ('%3$s', '%1$s', 'Learner', 'learner', 'METRIC', true, now()),
        ('%4$s', '%2$s', 'Neighbour', 'neighbour', 'METRIC', true, now());
      """
          .formatted(SHOP, OTHER_SHOP, LEARNER, NEIGHBOUR);

  private RowsInMemory rows;
  private StoredPaperRecords papers;
  private StoredItemRecords items;

  @BeforeEach
  void open() throws Exception {
    rows = RowsInMemory.filledBy(PEOPLE);
    papers = rows.with(new StoredPaperRecords());
    items = rows.with(new StoredItemRecords());
  }

  @AfterEach
  void close() {
    rows.close();
  }

  private static ItemMark mark(String item, String version, double mark, String given) {
    return new ItemMark(
        item, version, ItemKind.SINGLE, mark, ItemMark.State.ANSWERED, given, List.of(), "");
  }

  private UUID handedIn(UUID workshop, UUID person, ItemMark... marks) {
    Sitting sitting = new Sitting(UUID.randomUUID(), workshop, person, "clear", NOW, null);
    double score = List.of(marks).stream().mapToDouble(ItemMark::mark).average().orElse(0);
    PaperResult result = new PaperResult(score, 0.6, score >= 0.6, List.of(marks));
    rows.kept(
        () -> {
          papers.add(sitting, new Paper("clear", "Clear", UnitSystem.METRIC, 0.6, List.of()));
          papers.keepResult(sitting.handedIn(NOW, result), result);
        });
    return sitting.id();
  }

  private void someHandedIn() {
    handedIn(SHOP, LEARNER, mark("a", "1", 1, "2"), mark("b", "1", 1, "1"), mark("c", "1", 0, "1"));
    handedIn(SHOP, LEARNER, mark("a", "1", 0, "1"), mark("b", "1", 0, "2"), mark("d", "1", 1, "1"));
    handedIn(SHOP, LEARNER, mark("a", "older", 1, "2"), mark("b", "1", 1, "1"));
    handedIn(SHOP, LEARNER, mark("b", "1", 1, "1"), mark("d", "1", 1, "1"));
    handedIn(OTHER_SHOP, NEIGHBOUR, mark("a", "1", 1, "2"), mark("b", "1", 1, "1"));
  }

  @Test
  void one_question_is_added_up_from_the_papers_that_had_its_wording() {
    someHandedIn();
    ItemSums a = items.answered(SHOP, "clear", "a", "1");
    assertThat(a).isEqualTo(ItemSums.ofPaper(1, 1).and(ItemSums.ofPaper(0, 1)));
    assertThat(a.difficulty()).hasValueCloseTo(0.5, within(1e-12));
    assertThat(items.answered(SHOP, "clear", "a", "never written")).isEqualTo(ItemSums.NONE);
    assertThat(items.given(SHOP, "clear", "a", "1"))
        .containsExactlyInAnyOrder(
            new Given("a", "1", "2", ItemSums.ofPaper(1, 1)),
            new Given("a", "1", "1", ItemSums.ofPaper(0, 1)));
  }

  @Test
  void one_question_by_itself_says_what_it_says_among_all() {
    someHandedIn();
    List<Answered> all = items.answered(SHOP, "clear");
    assertThat(all).hasSize(5);
    for (Answered each : all) {
      assertThat(items.answered(SHOP, "clear", each.item(), each.version())).isEqualTo(each.sums());
    }
    List<Given> given = new ArrayList<>();
    all.forEach(e -> given.addAll(items.given(SHOP, "clear", e.item(), e.version())));
    assertThat(given).containsExactlyInAnyOrderElementsOf(items.given(SHOP, "clear"));
  }

  @Test
  void a_paper_marked_anew_counts_so_and_keeps_how_it_stood() {
    UUID paper =
        handedIn(
            SHOP, LEARNER, mark("a", "1", 1, "2"), mark("b", "1", 1, "1"), mark("c", "1", 0, ""));
    handedIn(SHOP, LEARNER, mark("a", "older", 1, "2"), mark("b", "1", 0, "1"));
    PaperHandedIn found = papers.counting(SHOP, "clear", "a", "1").get(0);
    assertThat(papers.counting(SHOP, "clear", "a", "1")).hasSize(1);
    assertThat(papers.counting(OTHER_SHOP, "clear", "a", "1")).isEmpty();
    assertThat(found.sitting().id()).isEqualTo(paper);
    MarkedAnew anew =
        new MarkedAnew(
            UUID.randomUUID(),
            paper,
            NOW,
            LEARNER,
            "a",
            true,
            "Two answers fit.",
            found.markedWithout(Set.of()),
            found.markedWithout(Set.of("a")));

    rows.kept(() -> papers.keep(anew));

    assertThat(papers.counting(SHOP, "clear", "a", "1")).isEmpty();
    assertThat(papers.leavingOut(SHOP, "clear", "a"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.without()).containsExactly("a");
              assertThat(p.sitting().outcome().score()).isEqualTo(0.5);
              assertThat(p.sitting().outcome().passed()).isFalse();
              assertThat(p.result().score()).as("of that day").isEqualTo(2 / 3.0);
            });
    assertThat(papers.without(paper)).containsExactly("a");
    assertThat(papers.markedAnew(paper)).containsExactly(anew);
    assertThat(papers.passed(LEARNER)).isEmpty();
  }

  @Test
  void the_papers_of_a_question_are_read_in_two_queries_however_many() {
    handedIn(SHOP, LEARNER, mark("a", "1", 1, "2"));
    long one = rows.statements(() -> papers.counting(SHOP, "clear", "a", "1"));
    someHandedIn();
    someHandedIn();
    assertThat(rows.statements(() -> papers.counting(SHOP, "clear", "a", "1"))).isEqualTo(one);
    assertThat(one).isEqualTo(2);
  }
}
