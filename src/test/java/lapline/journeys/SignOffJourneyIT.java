package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import lapline.demo.Arranged;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.container.test.api.RunAsClient;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;

/**
 * A sign-off from the examiner's decision to its end: what the owner sees, what anybody sees who
 * holds the code, and what stays in the history.
 */
@ExtendWith(ArquillianExtension.class)
@RunAsClient
class SignOffJourneyIT extends Journey {
  private static final String GOOD = "Laid a whole car with me, stage by stage, without a word.";
  private static final String STOPPED = "Film left on the windscreen of a customer's car.";
  private static final String BACK = "Showed me three cars in a row with nothing left on.";
  private static final String OVER = "Has left the paint shop.";

  @ArquillianResource private URL desk;
  private Arranged shop;
  private String decision;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    shop = Arranging.workshop(desk, "Ashlar");
    decision = "/examine/decision?skill=masking&person=" + shop.one("learner");
  }

  @Test
  void a_sign_off_lives_from_the_decision_to_the_withdrawal_and_every_step_stays() {
    enter("examiner");
    assertThat(title()).isEqualTo("One decision waits for you");
    isAccessible();
    press("first");
    assertThat(title()).isEqualTo("Ansel Ashlar: ready for a decision on ‘Masking’");
    isAccessible();
    picture("decision-ready-1440");
    decide("grant", GOOD);
    untilText("Signed off. It stands in the record");
    assertThat(title()).isEqualTo("Ansel Ashlar: signed off for ‘Masking’");
    assertThat(text()).contains("This sign-off is good.", "Signed off on", "Good until", GOOD);
    assertThat(text()).containsPattern("Rule version\\s+1");
    assertThat(browser.findElements(By.id("decide:grant"))).isEmpty();
    isAccessible();
    pictures("decision-granted");
    String code = browser.findElement(By.cssSelector("dl.facts code")).getText();
    signOut();
    boardSays("good until");
    checkSays(code, "This sign-off is good today");

    change("suspend", STOPPED);
    boardSays("suspended");
    checkSays(code, "This sign-off is suspended");
    change("resume", BACK);
    boardSays("good until");
    checkSays(code, "This sign-off is good today");
    change("withdraw", OVER);
    boardSays("withdrawn");
    checkSays(code, "This sign-off has been withdrawn");

    enter("examiner");
    open(decision);
    assertThat(text().indexOf(GOOD)).isPositive().isLessThan(text().indexOf(STOPPED));
    assertThat(text().indexOf(STOPPED)).isLessThan(text().indexOf(BACK));
    assertThat(text().indexOf(BACK)).isLessThan(text().indexOf(OVER));
    assertThat(title()).isEqualTo("Ansel Ashlar: sign-off for ‘Masking’ has been withdrawn");
    assertThat(browser.findElements(By.id("decide:suspend"))).isEmpty();
    isAccessible();
    pictures("decision-withdrawn");
  }

  private void enter(String what) {
    signIn(shop.people().get(what), shop.password());
  }

  private void decide(String button, String reason) {
    type("decide:reason", reason);
    press("decide:" + button);
  }

  private void change(String button, String reason) {
    enter("examiner");
    open(decision);
    press("decide:" + button);
    until(By.cssSelector(".errors"));
    isAccessible();
    type("decide:reason", reason);
    if (button.equals("withdraw")) {
      press("decide:" + button);
      untilText("Tick that you mean it");
      press("decide:forGood");
    }
    press("decide:" + button);
    untilText("The step stands in the record.");
    assertThat(text()).contains(reason);
    signOut();
  }

  private void boardSays(String words) {
    enter("owner");
    open("/shop/skills-board?skill=masking");
    assertThat(browser.findElement(By.xpath("//tr[contains(., 'Ansel Ashlar')]")).getText())
        .contains(words);
    picture("board-" + words.replaceAll("\\W+", "-"));
    signOut();
  }

  /** As anybody sees it: nobody is signed in. */
  private void checkSays(String code, String words) {
    open("/check?code=" + code);
    assertThat(title()).isEqualTo(words);
    assertThat(text()).contains("Ansel Ashlar", "Ashlar Panel Works");
    isAccessible();
    picture("check-" + words.replaceAll("\\W+", "-").toLowerCase(java.util.Locale.ROOT));
  }

  @Test
  void an_examiner_who_graded_a_panel_of_the_evidence_is_told_why_another_has_to_decide() {
    enter("grader");
    open(decision);
    decide("grant", GOOD);
    untilText(
        "You graded one of these panels, so you cannot take this decision. Another examiner has to.");
    assertThat(browser.findElement(By.id("decide:reason")).getDomProperty("value")).isEqualTo(GOOD);
    isAccessible();
    pictures("decision-graded");
  }
}
