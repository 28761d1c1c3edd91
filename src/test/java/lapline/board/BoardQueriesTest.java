package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import lapline.practice.Attempt;
import org.junit.jupiter.api.Test;

/** A board asks its database as often for three hundred people as for three. */
class BoardQueriesTest {

  @Test
  void no_board_asks_more_often_where_there_are_more_people_and_panels() throws Exception {
    // less than a page of anything, so that a query for each row would show
    Map<String, Long> small = statements(3, 2, BoardShop::pages);
    Map<String, Long> large = statements(300, 8, BoardShop::pages);
    assertThat(large).isEqualTo(small);
    assertThat(large.values()).as("%s", large).allMatch(n -> n <= 9);
  }

  @Test
  void no_learners_page_asks_more_often_the_more_they_have_done() throws Exception {
    Map<String, Long> little = statements(2, 1, BoardShop::learnersPages);
    Map<String, Long> much = statements(14, 60, BoardShop::learnersPages);
    assertThat(much).isEqualTo(little);
    assertThat(much.values()).as("a dozen for each unit: %s", much).allMatch(n -> n <= 48);
  }

  @Test
  void a_result_page_asks_as_often_after_sixty_panels_as_after_six() throws Exception {
    long few = resultPage(1, 6);
    assertThat(resultPage(8, 60)).isEqualTo(few);
    assertThat(few).isLessThanOrEqualTo(10);
  }

  /** By the rows: every third panel of a task has the cause, the last of six among them. */
  @Test
  void a_panels_cause_is_told_to_have_come_back_by_one_query() throws Exception {
    try (BoardShop shop = BoardShop.of(1, 12)) {
      List<Attempt> low = shop.found("film.low");
      Attempt last = low.get(0);
      Attempt first = low.get(low.size() - 1);
      assertThat(shop.back.on(shop.owner, last, "film.low")).contains(new CameBack(2, 6));
      assertThat(shop.back.on(shop.owner, last, "film.high")).isEmpty();
      assertThat(shop.back.on(shop.owner, first, "film.low"))
          .as("nothing comes back that was found for the first time")
          .isEmpty();
      assertThat(shop.statements(() -> shop.back.on(shop.owner, last, "film.low"))).isEqualTo(1);
    }
  }

  private static long resultPage(int people, int panels) throws Exception {
    try (BoardShop shop = BoardShop.of(people, panels)) {
      return shop.statements(shop.resultPage());
    }
  }

  @Test
  void what_the_boards_count_is_there_to_be_counted() throws Exception {
    try (BoardShop shop = BoardShop.of(60, 6)) {
      SeeNeeds.Counts counts = shop.needs.counts(shop.instructor);
      assertThat(counts.waiting()).isPositive();
      assertThat(counts.stuck()).isEqualTo(60 / 7);
      assertThat(counts.returned()).isPositive();
      assertThat(shop.board.rows(shop.owner, "", 3).rows()).hasSize(10);
      assertThat(shop.due.count(shop.owner, 90)).isPositive();
      assertThat(shop.cohort.findings(shop.instructor)).hasSize(4);
      assertThat(shop.cohort.onTheWay(shop.instructor)).hasSize(4);
      int found = shop.cohort.found(shop.instructor, "clear", "film.low", 1).paging().getCount();
      assertThat(found).isGreaterThan(60);
      assertThat(shop.board.good(shop.owner, "")).allMatch(skill -> skill.people() > 0);
      assertThat(shop.board.rows(shop.owner, "clear", 1).rows())
          .as("who may comes first")
          .allMatch(row -> row.marks().get(0).isGood());
      assertThat(shop.board.learners(shop.instructor, "clear", 1).rows().get(0).marks().get(0))
          .as("who waits for the examiner comes first")
          .extracting(SkillMark::kind)
          .isEqualTo(SkillMark.Kind.READY);
    }
  }

  private static Map<String, Long> statements(
      int people, int panels, Function<BoardShop, Map<String, Runnable>> which) throws Exception {
    Map<String, Long> all = new TreeMap<>();
    try (BoardShop shop = BoardShop.of(people, panels)) {
      which.apply(shop).forEach((name, page) -> all.put(name, shop.statements(page)));
    }
    return all;
  }
}
