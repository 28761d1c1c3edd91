package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import org.junit.jupiter.api.Test;

class StartAttemptTest {
  private final PracticeShop shop = new PracticeShop();

  @Test
  void an_open_draft_of_the_same_task_is_offered_again() {
    Attempt first = shop.draft();
    assertThat(shop.draft()).isEqualTo(first);
    assertThat(shop.start.run(shop.other, PracticeShop.TASK, null, "").id())
        .isNotEqualTo(first.id());
  }

  @Test
  void the_code_on_the_sheet_finds_the_panel_for_those_who_may_see_it() {
    Attempt draft = shop.draft();
    assertThat(draft.sheetCode()).hasSize(8);
    assertThat(shop.find.bySheetCode(shop.instructor, draft.sheetCode())).isEqualTo(draft);
    assertThatThrownBy(() -> shop.find.bySheetCode(shop.other, draft.sheetCode()))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.find.bySheetCode(shop.stranger, draft.sheetCode()))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void only_an_apprentice_begins_a_panel_and_only_of_a_task_that_is_there() {
    assertThatThrownBy(() -> shop.start.run(shop.instructor, PracticeShop.TASK, null, ""))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.start.run(shop.apprentice, "clear/none", null, ""))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void an_apprentice_lists_their_own_and_an_instructor_everybodys() {
    Attempt own = shop.draft();
    AttemptQuery all = AttemptQuery.of(shop.workshop, 0, 20);
    assertThat(shop.find.page(shop.apprentice, all.by(shop.apprentice.id()))).containsExactly(own);
    assertThat(shop.find.page(shop.instructor, all)).containsExactly(own);
    assertThatThrownBy(() -> shop.find.page(shop.other, all))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> shop.find.page(shop.stranger, all))
        .isInstanceOf(NotFoundException.class);
  }
}
