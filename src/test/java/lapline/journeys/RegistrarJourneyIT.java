package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** The registrar adds a person, who chooses a password and signs in. */
class RegistrarJourneyIT extends Journey {

  @Test
  void a_new_person_is_added_chooses_a_password_and_signs_in() {
    signIn("registrar");
    assertThat(title()).isEqualTo("19 people in the workshop");
    isAccessible();
    pictures("people");
    press("add:save");
    untilText("Roles: choose at least one.");
    assertThat(text()).contains("Name: write one").contains("Sign-in name: write one");
    assertThat(browser.getTitle()).startsWith("Error");
    assertThat(browser.switchTo().activeElement().getDomAttribute("class")).contains("errors");
    assertThat(until(By.id("add:name")).getDomAttribute("aria-invalid")).isEqualTo("true");
    isAccessible();
    type("add:name", "Petra Newcomer");
    type("add:signInName", "petra new");
    press("add:save");
    untilText("has a space in it");
    type("add:signInName", "petra");
    assertThat(browser.findElement(By.id("add:name")).getDomProperty("value"))
        .isEqualTo("Petra Newcomer");
    browser.findElement(By.cssSelector("#add\\:roles input[value=APPRENTICE]")).click();
    press("add:save");
    press("link-form:make");
    String former = until(By.id("link")).getText();
    press("link-form:make");
    waiting().until(d -> !until(By.id("link")).getText().equals(former));
    String link = until(By.id("link")).getText();
    pictures("person");
    isAccessible();
    signOut();
    browser.get(former);
    assertThat(text()).contains("replaced by a newer one");
    browser.get(link);
    type("choose:password", "short");
    press("choose:save");
    untilText("too short");
    type("choose:password", "a good long sentence");
    press("choose:save");
    assertThat(until(By.id("sign-in:name")).getDomProperty("value")).isEqualTo("petra");
    type("sign-in:name", "Petra ");
    type("sign-in:password", "a good long sentence");
    press("sign-in:go");
    until(By.cssSelector("header.frame nav"));
    browser.get(link);
    assertThat(text()).contains("used up");
  }

  @Test
  void a_name_is_corrected_and_what_it_was_stays_known() {
    signIn("registrar");
    open("/office/people?part=zzz");
    assertThat(title()).isEqualTo("Nobody with “zzz” in the name");
    pictures("people-none");
    browser.findElement(By.linkText("Show all")).click();
    untilText("people in the workshop");
    open("/office/people?part=%25");
    assertThat(title()).as("a sign, not a pattern").isEqualTo("Nobody with “%” in the name");
    open("/office/people");
    type("add:name", "Quentin Dubble");
    type("add:signInName", "quentin");
    browser.findElement(By.cssSelector("#add\\:roles input[value=OWNER]")).click();
    press("add:save");
    correctsTheName();
    addsSomebodyOfTheSameName();
  }

  private void correctsTheName() {
    type("names:name", "Quentin Double");
    type("names:signInName", "registrar");
    press("names:save");
    untilText("“registrar” is taken");
    assertThat(until(By.id("names:name")).getDomProperty("value")).isEqualTo("Quentin Double");
    type("names:signInName", "quentin.d");
    press("names:save");
    untilText("“Quentin Dubble” was corrected to “Quentin Double”");
    assertThat(title()).isEqualTo("Quentin Double");
    assertThat(text()).contains("Sign-in name “quentin” was changed to “quentin.d”");
    isAccessible();
    pictures("person-corrected");
  }

  private void addsSomebodyOfTheSameName() {
    open("/office/people");
    type("add:name", "Quentin Double");
    type("add:signInName", "quentin2");
    browser.findElement(By.cssSelector("#add\\:roles input[value=OWNER]")).click();
    press("add:save");
    untilText("is here already and signs in as quentin.d");
    press("add:save");
    untilText("Signs in as quentin2");
    browser.findElement(By.id("change:active")).click();
    press("change:save");
    untilText("This account is closed");
  }

  @Test
  void the_workshop_says_what_a_change_touches_and_names_all_that_is_wrong() {
    signIn("registrar");
    open("/office/workshop");
    isAccessible();
    pictures("workshop");
    type("workshop:name", " ");
    type("workshop:zone", "Mars/Base");
    press("workshop:save");
    untilText("“Mars/Base” is not a time zone");
    assertThat(text()).contains("Name of the workshop: write one");
    assertThat(until(By.id("workshop:zone")).getDomAttribute("aria-invalid")).isEqualTo("true");
    isAccessible();
  }

  @Test
  void tokens_are_shown_once_and_can_be_revoked() {
    signIn("owner");
    open("/account");
    isAccessible();
    type("token:name", "record printer");
    press("token:make");
    assertThat(until(By.id("fresh-token")).getText()).startsWith("lap_");
    picture("account");
    browser.findElement(By.cssSelector("[aria-label='Revoke record printer']")).click();
    untilText("no longer opens anything");
    isAccessible();
  }

  @Test
  void an_apprentice_is_told_that_people_are_not_theirs_to_look_after() {
    signIn("apprentice4");
    open("/office/people");
    assertThat(title()).isEqualTo("This page is not for your role");
    assertThat(text()).contains("Go on from your start page", "ask a registrar");
  }
}
