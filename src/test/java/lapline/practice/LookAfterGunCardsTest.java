package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import org.junit.jupiter.api.Test;

class LookAfterGunCardsTest {
  private final PracticeShop shop = new PracticeShop();

  private static GunCard.Ranges figures(String distance, String pressure, String overlap) {
    return new GunCard.Ranges(distance, pressure, overlap, "", "");
  }

  private List<String> wrong(String name, GunCard.Ranges ranges) {
    return shop.cards.add(shop.instructor, name, ranges).stream()
        .map(p -> p.cell() + " " + p.key().replace("targets.wrong.", ""))
        .toList();
  }

  private GunCard onlyCard() {
    assertThat(shop.cards.inUse(shop.instructor)).hasSize(1);
    return shop.cards.inUse(shop.instructor).get(0);
  }

  @Test
  void a_bare_figure_is_in_the_readers_own_unit() {
    assertThat(wrong("Gun 1", figures("100 to 150", "150-180", "65 to 75"))).isEmpty();
    assertThat(onlyCard().ranges())
        .isEqualTo(new GunCard.Ranges("100 to 150 mm", "150-180 kPa", "65 to 75 %", "", ""));
  }

  @Test
  void a_bare_figure_that_would_be_odd_in_that_unit_asks_for_one() {
    assertThat(wrong("Gun 1", figures("4 to 6", "22 to 26", "")))
        .containsExactly("distance card-unit", "pressure card-unit");
    assertThat(wrong("Gun 1", figures("4 to 6 in", "22 to 26 psi", ""))).isEmpty();
  }

  @Test
  void figures_that_no_gun_has_are_refused_each_beside_its_field() {
    assertThat(wrong("Gun 1", figures("-4 to 6 in", "at most 400 psi", "60 to 120 %")))
        .containsExactly("distance below", "pressure above", "overlap above");
  }

  @Test
  void a_card_has_a_name_of_its_own_and_says_something() {
    assertThat(wrong(" ", figures("", "", "")))
        .containsExactly("name card-name", "distance card-empty");
    assertThat(wrong("Gun 1", figures("4 to 6 in", "", ""))).isEmpty();
    assertThat(wrong(" gun 1", figures("5 to 7 in", "", ""))).containsExactly("name card-twice");
  }

  @Test
  void a_corrected_card_follows_the_former_and_takes_the_open_drafts_along() {
    wrong("Gun 1", figures("4 to 6 in", "", ""));
    GunCard former = onlyCard();
    UUID draft = shop.start.run(shop.apprentice, PracticeShop.TASK, former.id(), "").id();
    assertThat(
            shop.cards.correct(shop.instructor, former.id(), "Gun 1", figures("5 to 7 in", "", "")))
        .isEmpty();
    GunCard corrected = onlyCard();
    assertThat(corrected.ranges().distance()).isEqualTo("5 to 7 in");
    assertThat(shop.attempts.attempt(draft).orElseThrow().gunCard()).isEqualTo(corrected.id());
    assertThat(shop.cards.before(shop.instructor, corrected))
        .singleElement()
        .satisfies(c -> assertThat(c.ranges().distance()).isEqualTo("4 to 6 in"))
        .satisfies(c -> assertThat(c.retiredBy()).isEqualTo(shop.instructor.id()));
  }

  @Test
  void a_panel_keeps_the_card_it_was_begun_with_though_it_was_put_away() {
    wrong("Gun 1", figures("4 to 6 in", "", ""));
    GunCard card = onlyCard();
    wrong("Gun 2", figures("5 to 7 in", "", ""));
    assertThat(shop.cards.choosable(shop.apprentice, card.id())).hasSize(2);
    shop.cards.retire(shop.instructor, card.id());
    assertThat(shop.cards.choosable(shop.apprentice, card.id()))
        .extracting(GunCard::name)
        .containsExactly("Gun 2", "Gun 1");
    assertThat(shop.cards.choosable(shop.apprentice, null)).hasSize(1);
    assertThat(shop.cards.choosable(shop.stranger, card.id())).as("another workshop's").isEmpty();
  }

  @Test
  void a_card_put_away_cannot_be_corrected_and_nobody_else_touches_a_card() {
    wrong("Gun 1", figures("4 to 6 in", "", ""));
    UUID id = onlyCard().id();
    assertThatThrownBy(() -> shop.cards.find(shop.apprentice, id))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.cards.find(shop.stranger, id))
        .isInstanceOf(NotFoundException.class);
    shop.cards.retire(shop.instructor, id);
    assertThat(shop.cards.inUse(shop.instructor)).isEmpty();
    assertThat(shop.cards.correct(shop.instructor, id, "Gun 1", figures("4 to 7 in", "", "")))
        .as("who was slower is told so")
        .extracting(FieldProblem::key)
        .containsExactly("targets.wrong.card-followed");
    assertThat(shop.cards.inUse(shop.instructor)).isEmpty();
  }
}
