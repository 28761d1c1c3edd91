package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;

/** An apprentice opens a short exam and sees its paper. */
class ExamJourneyIT extends Journey {
  private static final String LEARNER = "apprentice13";
  private static final String EXAM = "/learn/paper?unit=masking";

  private void sit() {
    signIn(LEARNER);
    open(EXAM);
    List<WebElement> begin = browser.findElements(By.id("begin:go"));
    if (!begin.isEmpty()) {
      begin.get(0).click();
    }
    until(By.cssSelector("fieldset.question"));
  }

  @Test
  void the_exam_says_what_it_is_before_it_begins() {
    signIn("apprentice2");
    open(EXAM);
    assertThat(title()).isEqualTo("Masking: short exam");
    isAccessible();
    picture("exam-begin");
  }

  @Test
  void the_paper_fits_every_width() {
    sit();
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      Number overflow =
          (Number)
              ((JavascriptExecutor) browser)
                  .executeScript(
                      "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
      assertThat(overflow.intValue()).as("sideways scroll at " + pixels).isLessThanOrEqualTo(0);
      picture("exam-paper-" + pixels);
    }
  }
}
