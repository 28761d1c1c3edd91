package lapline.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LookAfterPeopleTest {
  private final PeopleOffice office = new PeopleOffice();

  private List<String> wrong(String name, String signInName, Role... roles) {
    return office.look.wrong(office.registrar, name, signInName, Set.of(roles)).stream()
        .map(p -> p.field() + " " + p.key())
        .toList();
  }

  @Test
  void all_that_is_missing_is_told_at_once() {
    assertThat(wrong(" ", ""))
        .containsExactly(
            "name people.names.name",
            "signInName people.names.sign-in-name",
            "roles people.add.no-role");
  }

  @Test
  void a_sign_in_name_is_one_word_that_nobody_else_has() {
    assertThat(wrong("Ada", "ada q", Role.APPRENTICE))
        .containsExactly("signInName people.names.space");
    assertThat(wrong("Ada", "ada\u00a0q", Role.APPRENTICE))
        .containsExactly("signInName people.names.space");
    office.add("Ada Quarry", " Ada ");
    assertThat(wrong("Ada", "ADA", Role.APPRENTICE)).containsExactly("signInName people.add.taken");
    assertThat(wrong("Ada", "ada.q", Role.APPRENTICE)).isEmpty();
  }

  /** It looked free when the page asked; somebody was quicker. */
  @Test
  void a_sign_in_name_that_was_taken_in_the_meantime_is_refused_by_its_field() {
    office.add("Ada Quarry", "ada");
    assertThatThrownBy(
            () -> office.look.add(office.registrar, "Adam Quill", "ada", Set.of(Role.APPRENTICE)))
        .isInstanceOfSatisfying(
            AccountRefusedException.class,
            e ->
                assertThat(e.problems())
                    .extracting(AccountProblem::key)
                    .containsExactly("people.add.taken"));
  }

  @Test
  void somebody_of_the_same_name_is_found_whatever_the_capitals_in_this_workshop_only() {
    Person ada = office.add("Ada Quarry", "ada");
    office.add("Ada Quarryman", "ada2");
    assertThat(office.look.namesakes(office.registrar, " ada quarry")).containsExactly(ada);
    assertThat(office.look.namesakes(office.stranger, "Ada Quarry")).isEmpty();
  }

  @Test
  void a_new_link_ends_the_one_before_it() {
    Person ada = office.add("Ada Quarry", "ada");
    String first = office.look.passwordLink(office.registrar, ada.id());
    String second = office.look.passwordLink(office.registrar, ada.id());
    assertThat(office.choose.owner(first)).isEmpty();
    assertThat(office.choose.owner(second)).contains(ada);
  }

  @Test
  void the_link_of_a_closed_account_opens_nothing_and_says_so() {
    Person ada = office.add("Ada Quarry", "ada");
    String code = office.look.passwordLink(office.registrar, ada.id());
    assertThat(office.choose.isOfClosedAccount(code)).isFalse();
    office.look.change(office.registrar, ada.id(), ada.roles(), false);
    assertThat(office.choose.owner(code)).isEmpty();
    assertThat(office.choose.isOfClosedAccount(code)).isTrue();
    assertThat(office.choose.isOfClosedAccount("nothing")).isFalse();
  }
}
