package lapline.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A board asks its database as often for three hundred people as for fourteen. */
class BoardQueriesTest {

  @Test
  void no_board_asks_more_often_where_there_are_more_people_and_panels() throws Exception {
    Map<String, Long> small = statements(14, 2);
    Map<String, Long> large = statements(300, 8);
    assertThat(large).isEqualTo(small);
    assertThat(large.values()).as("%s", large).allMatch(n -> n <= 9);
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
      assertThat(shop.cohort.mostOnTheWay(shop.instructor)).isPresent();
    }
  }

  private static Map<String, Long> statements(int people, int panels) throws Exception {
    Map<String, Long> all = new TreeMap<>();
    try (BoardShop shop = BoardShop.of(people, panels)) {
      shop.pages().forEach((name, page) -> all.put(name, shop.statements(page)));
    }
    return all;
  }
}
