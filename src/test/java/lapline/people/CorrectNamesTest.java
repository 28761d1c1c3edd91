package lapline.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class CorrectNamesTest {
  private final PeopleOffice office = new PeopleOffice();
  private final Person ada = office.add("Ada Quary", "ada");

  @Test
  void what_was_corrected_stays_known_with_who_and_when() {
    assertThat(office.correct.run(office.registrar, ada.id(), " Ada Quarry ", "ADA.Q")).isEmpty();
    Person now = office.records.person(ada.id()).orElseThrow();
    assertThat(now.name()).isEqualTo("Ada Quarry");
    assertThat(now.signInName()).isEqualTo("ada.q");
    assertThat(office.correct.history(office.registrar, ada.id()))
        .extracting(NameChange::what, NameChange::before, NameChange::by, NameChange::at)
        .containsExactlyInAnyOrder(
            tuple(NameChange.What.NAME, "Ada Quary", office.registrar.id(), PeopleOffice.NOW),
            tuple(NameChange.What.SIGN_IN_NAME, "ada", office.registrar.id(), PeopleOffice.NOW));
  }

  @Test
  void what_stays_the_same_is_no_correction() {
    assertThat(office.correct.run(office.registrar, ada.id(), "Ada Quary", "ada")).isEmpty();
    assertThat(office.correct.history(office.registrar, ada.id())).isEmpty();
  }

  @Test
  void nobody_takes_anothers_sign_in_name_and_nothing_is_changed_by_half() {
    office.add("Ben Marl", "ben");
    assertThat(office.correct.run(office.registrar, ada.id(), "Ada Quarry", "ben"))
        .extracting(AccountProblem::field)
        .containsExactly("signInName");
    assertThat(office.records.person(ada.id())).contains(ada);
  }

  @Test
  void the_name_on_an_older_paper_is_the_one_before_the_first_correction_after_it() {
    List<NameChange> changes =
        List.of(name("B", "C", 200), name("A", "B", 100), signIn("x", "y", 50));
    assertThat(NameChange.nameAt(at(10), changes, "C")).isEqualTo("A");
    assertThat(NameChange.nameAt(at(100), changes, "C")).isEqualTo("B");
    assertThat(NameChange.nameAt(at(300), changes, "C")).isEqualTo("C");
  }

  private static java.time.Instant at(int seconds) {
    return PeopleOffice.NOW.plusSeconds(seconds);
  }

  private static NameChange name(String before, String after, int seconds) {
    return change(NameChange.What.NAME, before, after, seconds);
  }

  private static NameChange signIn(String before, String after, int seconds) {
    return change(NameChange.What.SIGN_IN_NAME, before, after, seconds);
  }

  private static NameChange change(NameChange.What what, String before, String after, int seconds) {
    UUID nobody = new UUID(0, 0);
    return new NameChange(nobody, nobody, what, before, after, nobody, at(seconds));
  }

  @Test
  void only_the_workshops_own_registrar_corrects_names() {
    assertThatThrownBy(() -> office.correct.run(ada, ada.id(), "Queen", "ada"))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> office.correct.run(office.stranger, ada.id(), "Queen", "ada"))
        .isInstanceOf(NotFoundException.class);
  }
}
