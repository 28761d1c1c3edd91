package lapline.pages;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a page's address says and keeps. */
class AddressTest {

  @Test
  void a_form_keeps_which_panel_it_is_about_but_not_what_was_said_once() {
    assertThat(AddressedForm.kept("attempt=7&expired=true&photograph=added"))
        .isEqualTo("attempt=7");
    assertThat(AddressedForm.kept("person=a&skill=clear%2Fflat"))
        .isEqualTo("person=a&skill=clear%2Fflat");
    assertThat(AddressedForm.kept("expired")).isEmpty();
    assertThat(AddressedForm.kept(null)).isEmpty();
  }

  @Test
  void a_form_is_sent_to_its_pages_whole_address_and_nothing_else_of_it_is_changed() {
    assertThat(AddressedForm.addressed("action", "/teach/bench", "attempt=7"))
        .isEqualTo("/teach/bench?attempt=7");
    assertThat(AddressedForm.addressed("action", "/account", "")).isEqualTo("/account");
    assertThat(AddressedForm.addressed("method", "post", "attempt=7")).isEqualTo("post");
  }

  @Test
  void a_mangled_page_number_asks_for_the_first_page() {
    AddressNumber number = new AddressNumber();
    assertThat(number.getAsObject(null, null, "3")).isEqualTo(3);
    assertThat(number.getAsObject(null, null, "abc")).isEqualTo(1);
    assertThat(number.getAsObject(null, null, "99999999999")).isEqualTo(1);
    assertThat(number.getAsObject(null, null, "")).isEqualTo(1);
    assertThat(number.getAsObject(null, null, null)).isEqualTo(1);
  }
}
