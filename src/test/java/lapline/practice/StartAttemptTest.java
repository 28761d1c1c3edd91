package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.trade.measure.UnitSystem;
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
  void two_taps_at_once_begin_one_panel() {
    Attempt first = shop.draft();
    AtomicInteger asked = new AtomicInteger();
    // the second tap looked before the first one's draft was there
    AttemptRecords late =
        (AttemptRecords)
            Proxy.newProxyInstance(
                AttemptRecords.class.getClassLoader(),
                new Class<?>[] {AttemptRecords.class},
                (proxy, method, args) ->
                    method.getName().equals("openDraft") && asked.getAndIncrement() == 0
                        ? Optional.empty()
                        : answered(method, args));
    StartAttempt second =
        new StartAttempt(late, shop.tasks, shop.choose, shop.clock, new Random(8));
    assertThat(second.run(shop.apprentice, PracticeShop.TASK, null, "")).isEqualTo(first);
  }

  private Object answered(Method method, Object[] args) throws Throwable {
    try {
      return method.invoke(shop.attempts, args);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  @Test
  void what_is_changed_this_time_is_kept_tidy_and_not_longer_than_a_note() {
    String written = "  " + "slower ".repeat(100);
    Attempt draft = shop.start.run(shop.apprentice, PracticeShop.TASK, null, written);
    assertThat(draft.changedWhat()).startsWith("slower").hasSize(500);
    assertThat(shop.start.run(shop.other, PracticeShop.TASK, null, null).changedWhat()).isEmpty();
  }

  @Test
  void a_panel_keeps_the_units_its_person_had_when_it_was_begun() {
    Person inches = PracticeShop.inUnits(shop.apprentice, UnitSystem.US);
    assertThat(shop.start.run(inches, PracticeShop.TASK, null, "").units())
        .isEqualTo(UnitSystem.US);
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
