package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** The examiner reads the evidence and decides with a reason; every step stays in the history. */
class ExaminerJourneyIT extends Journey {
  private static final UUID APPRENTICE =
      UUID.nameUUIDFromBytes("demo apprentice13".getBytes(StandardCharsets.UTF_8));

  @Test
  void without_the_evidence_nobody_is_signed_off_and_not_yet_stands_in_the_record() {
    signIn("examiner");
    assertThat(title()).contains("decision");
    isAccessible();
    open("/examine/decision?skill=masking&person=" + APPRENTICE);
    assertThat(title()).contains("not complete");
    isAccessible();
    press("decide:grant");
    untilText("Write the reason for your decision.");
    type("decide:reason", "Edges of the film still flap; show me two more lids.");
    press("decide:grant");
    untilText("The evidence is not complete yet.");
    assertThat(browser.findElement(By.id("decide:reason")).getDomProperty("value"))
        .startsWith("Edges of the film");
    isAccessible();
    press("decide:not-yet");
    untilText("stands in the record with your reason");
    assertThat(text()).contains("‘not yet’ by Xenia Holloway-Pike");
    width(390);
    picture("decision-390");
  }

  @Test
  void anybody_may_check_a_code_and_learns_nothing_from_a_wrong_one() {
    open("/check");
    isAccessible();
    type("code", "nosuchcode");
    browser.findElement(By.cssSelector("main button")).click();
    untilText("No sign-off has this code");
    isAccessible();
  }

  @Test
  void an_examiner_finds_a_decision_on_the_skills_board() {
    signIn("examiner");
    browser.findElement(By.linkText("Skills board")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/skills-board"));
    isAccessible();
    browser
        .findElement(By.cssSelector(".matrix a[href*='skill=masking'][href*='person=']"))
        .click();
    waiting().until(d -> d.getCurrentUrl().contains("/examine/decision"));
    assertThat(title()).contains("Masking");
    isAccessible();
    picture("decision-from-board-1440");
  }

  @Test
  void an_apprentice_cannot_decide() {
    signIn("apprentice12");
    open("/examine/decisions");
    assertThat(title()).isEqualTo("This page is not for your role");
  }
}
