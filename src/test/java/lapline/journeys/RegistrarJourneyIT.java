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
    picture("people");
    type("add:name", "Petra Newcomer");
    type("add:signInName", "petra");
    press("add:save");
    untilText("Roles: choose at least one.");
    assertThat(browser.findElement(By.id("add:name")).getDomProperty("value"))
        .isEqualTo("Petra Newcomer");
    browser.findElement(By.cssSelector("#add\\:roles input[value=APPRENTICE]")).click();
    press("add:save");
    press("link-form:make");
    String link = until(By.id("link")).getText();
    isAccessible();
    signOut();
    browser.get(link);
    type("choose:password", "short");
    press("choose:save");
    untilText("too short");
    type("choose:password", "a good long sentence");
    press("choose:save");
    type("sign-in:name", "Petra ");
    type("sign-in:password", "a good long sentence");
    press("sign-in:go");
    until(By.cssSelector("header.frame nav"));
    browser.get(link);
    assertThat(text()).contains("used up");
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
    assertThat(title()).isEqualTo("Not for your role");
  }
}
