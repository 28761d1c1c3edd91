package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import lapline.people.NotFoundException;
import lapline.people.RememberedPeople;
import org.junit.jupiter.api.Test;

/** What a workshop's own target draws with it, and what is no target to be changed at all. */
class RestingTargetsTest {
  private static final String CLEAR = "clear/two-coats";
  private final PracticeTask task = WrittenPanel.COURSE.find(CLEAR).orElseThrow();

  private Criterion criterion(String id) {
    return task.criterion(id).orElseThrow();
  }

  @Test
  void what_is_judged_by_the_film_follows_it_and_the_wet_film_stays() {
    RestingTargets resting = RestingTargets.on(criterion("film"), task);
    assertThat(resting.following())
        .extracting(Criterion::id)
        .containsExactly("film-even", "film-rule");
    assertThat(resting.staying()).extracting(Criterion::id).containsExactly("wet-film");
  }

  @Test
  void nothing_rests_on_the_gloss() {
    RestingTargets resting = RestingTargets.on(criterion("gloss-60"), task);
    assertThat(resting.following()).isEmpty();
    assertThat(resting.staying()).isEmpty();
  }

  @Test
  void a_rule_that_is_kept_or_broken_and_a_choice_have_no_range_that_a_sheet_could_give() {
    ChangeTargets change =
        new ChangeTargets(
            new RememberedTargets(),
            WrittenPanel.COURSE,
            new RememberedPeople(),
            Clock.systemUTC());
    var registrar = new PracticeShop().instructor;
    assertThat(change.criterion(registrar, CLEAR, "film").id()).isEqualTo("film");
    assertThatThrownBy(() -> change.criterion(registrar, CLEAR, "film-rule"))
        .isInstanceOf(NotFoundException.class);
    assertThat(WrittenPanel.COURSE.find("preparing/flat-panel").orElseThrow().criteria())
        .filteredOn(c -> c.quantity().equals("water-break"))
        .noneMatch(c -> c.hasRange(WrittenPanel.COURSE.measurands()))
        .isNotEmpty();
  }
}
