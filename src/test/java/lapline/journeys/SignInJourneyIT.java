package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WindowType;

/** Anybody arrives, signs in, is led where they wanted to go, and signs out. */
class SignInJourneyIT extends Journey {

  @Test
  void a_page_that_needs_an_account_leads_to_the_sign_in_and_back() {
    open("/account");
    assertThat(title()).isEqualTo("Sign in");
    isAccessible();
    picture("sign-in");
    type("sign-in:name", "apprentice1");
    type("sign-in:password", DemoAccounts.password());
    press("sign-in:go");
    waiting().until(d -> d.getCurrentUrl().contains("/account"));
  }

  @Test
  void a_wrong_password_is_said_in_words_and_the_name_is_kept() {
    open("/sign-in");
    type("sign-in:name", "apprentice2");
    type("sign-in:password", "not the one");
    press("sign-in:go");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("do not go together");
    assertThat(browser.findElement(By.id("sign-in:name")).getDomProperty("value"))
        .isEqualTo("apprentice2");
    isAccessible();
  }

  @Test
  void the_session_id_changes_at_sign_in_and_signing_out_closes_the_pages() {
    open("/sign-in");
    String before = browser.manage().getCookieNamed("JSESSIONID").getValue();
    signIn("registrar");
    String after = browser.manage().getCookieNamed("JSESSIONID").getValue();
    assertThat(after).isNotEqualTo(before);
    signOut();
    open("/account");
    assertThat(title()).isEqualTo("Sign in");
  }

  @Test
  void nobody_works_in_the_name_of_whoever_used_the_tablet_before() {
    open("/sign-in");
    String first = browser.getWindowHandle();
    browser.switchTo().newWindow(WindowType.TAB);
    signIn("instructor1");
    String whose = browser.findElement(By.cssSelector(".frame .who")).getText();
    browser.close();
    browser.switchTo().window(first);
    type("sign-in:name", "instructor2");
    type("sign-in:password", "not the one");
    press("sign-in:go");
    waiting().until(d -> text().contains(whose + " is signed in on this device"));
    assertThat(browser.findElements(By.id("sign-in:go"))).isEmpty();
    isAccessible();
    picture("sign-in-taken");
    browser.findElement(By.cssSelector("#page form button")).click();
    until(By.id("sign-in:go"));
  }
}
