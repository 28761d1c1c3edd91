package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.trade.measure.TargetRange;
import org.junit.jupiter.api.Test;

class TargetsInForceTest {
  private final PracticeShop shop = new PracticeShop();

  private Criterion pressure(UUID gunCard) {
    PracticeTask task = shop.tasks.find(PracticeShop.TASK).orElseThrow();
    return shop.inForce.apply(shop.apprentice, task, gunCard).criterion("pressure").orElseThrow();
  }

  private void sheet(String target) {
    assertThat(
            shop.change.run(
                shop.instructor, PracticeShop.TASK, "pressure", target, "Sheet 1", "Because"))
        .isEmpty();
  }

  private UUID card(String pressure) {
    GunCard.Ranges ranges = new GunCard.Ranges("100 to 150", pressure, "", "", "");
    assertThat(shop.cards.add(shop.instructor, "Gravity gun", ranges)).isEmpty();
    return shop.cards.inUse(shop.apprentice).get(0).id();
  }

  @Test
  void the_task_file_holds_where_nobody_says_otherwise() {
    assertThat(pressure(null).target()).isEqualTo(new TargetRange(150e3, 180e3));
    assertThat(pressure(card("")).target()).isEqualTo(new TargetRange(150e3, 180e3));
  }

  @Test
  void the_data_sheet_goes_before_the_task_and_the_gun_card_before_the_sheet() {
    sheet("160 to 170");
    assertThat(pressure(null).target()).isEqualTo(new TargetRange(160e3, 170e3));
    assertThat(pressure(null).source()).isEqualTo("Sheet 1");
    Criterion byCard = pressure(card("140 to 150"));
    assertThat(byCard.target()).isEqualTo(new TargetRange(140e3, 150e3));
    assertThat(byCard.source()).isEqualTo("Gravity gun");
  }

  @Test
  void a_newer_target_retires_the_older_and_both_stay_in_the_history() {
    sheet("160 to 170");
    sheet("at least 160 kPa");
    assertThat(pressure(null).target()).isEqualTo(TargetRange.atLeast(160e3));
    assertThat(shop.change.history(shop.instructor, PracticeShop.TASK))
        .extracting(TargetOverride::target, TargetOverride::inForce)
        .containsExactlyInAnyOrder(
            org.assertj.core.api.Assertions.tuple("160 to 170 kPa", false),
            org.assertj.core.api.Assertions.tuple("at least 160 kPa", true));
    assertThat(retire(own())).isEmpty();
    assertThat(pressure(null).target()).isEqualTo(new TargetRange(150e3, 180e3));
  }

  @Test
  void who_was_slower_is_told_which_target_a_colleague_has_set_meanwhile() {
    assertThat(set("160 to 170", null)).isEmpty();
    assertThat(set("155 to 165", null))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.key()).isEqualTo(ChangeTargets.CHANGED_SINCE);
              assertThat(p.args()).containsExactly("Somebody Invented", "160 to 170 kPa");
            });
    UUID seen = own();
    assertThat(set("155 to 165", seen)).as("now it has been seen").isEmpty();
    assertThat(retire(own())).isEmpty();
    assertThat(set("150 to 160", seen))
        .extracting(FieldProblem::key)
        .containsExactly(ChangeTargets.CHANGED_SINCE + ".back");
  }

  @Test
  void going_back_to_the_course_ends_only_the_target_that_was_seen() {
    sheet("160 to 170");
    UUID seen = own();
    sheet("155 to 165");
    assertThat(retire(seen))
        .hasValueSatisfying(
            p -> assertThat(p.args()).containsExactly("Somebody Invented", "155 to 165 kPa"));
    assertThat(pressure(null).target()).isEqualTo(new TargetRange(155e3, 165e3));
    assertThat(retire(own())).isEmpty();
    assertThat(pressure(null).target()).isEqualTo(new TargetRange(150e3, 180e3));
    assertThat(retire(seen)).as("it holds already").isEmpty();
  }

  /** The workshop's own target of the pressure. */
  private UUID own() {
    return shop.targets.inForce(shop.workshop, PracticeShop.TASK).get(0).id();
  }

  private Optional<FieldProblem> retire(UUID seen) {
    return shop.change.retire(shop.instructor, PracticeShop.TASK, "pressure", seen);
  }

  private List<FieldProblem> set(String target, UUID seen) {
    return shop.change.run(
        shop.instructor, PracticeShop.TASK, "pressure", target, "Sheet 1", "Our drum.", seen);
  }

  @Test
  void a_target_that_is_no_range_or_gives_no_reason_is_sent_back_field_by_field() {
    assertThat(
            shop.change.run(shop.instructor, PracticeShop.TASK, "pressure", "much", " ", "Because"))
        .extracting(FieldProblem::cell)
        .containsExactly("target", "sheet");
    assertThatThrownBy(
            () -> shop.change.run(shop.apprentice, PracticeShop.TASK, "pressure", "1", "a", "b"))
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void a_target_that_no_panel_could_have_is_refused() {
    for (String target : new String[] {"-5 to 10 kPa", "at most -1 psi", "at least 2 MPa"}) {
      assertThat(look(target)).as(target).containsExactly("target");
    }
    for (String target : new String[] {"at least 2000 kPa", "100 to 1100 kPa", "at most 20 bar"}) {
      assertThat(look(target)).as(target).containsExactly("target");
    }
    assertThat(look("0-10 bar")).isEmpty();
    assertThat(shop.change.history(shop.instructor, PracticeShop.TASK)).as("looked only").isEmpty();
  }

  private List<String> look(String target) {
    return shop
        .change
        .look(shop.instructor, PracticeShop.TASK, "pressure", target, "Sheet", "Why")
        .stream()
        .map(FieldProblem::cell)
        .toList();
  }

  @Test
  void a_card_of_another_workshop_is_not_there() {
    shop.cards.add(shop.stranger, "Theirs", new GunCard.Ranges("", "100 to 110", "", "", ""));
    UUID theirs = shop.cards.inUse(shop.stranger).get(0).id();
    assertThatThrownBy(() -> pressure(theirs)).isInstanceOf(NotFoundException.class);
    assertThatThrownBy(() -> shop.start.run(shop.apprentice, PracticeShop.TASK, theirs, ""))
        .isInstanceOf(NotFoundException.class);
  }
}
