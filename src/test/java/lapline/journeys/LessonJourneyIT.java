package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** An apprentice reads a lesson, answers a check and is told at once why. */
class LessonJourneyIT extends Journey {

  @Test
  void a_check_answers_at_once_and_says_why() {
    signIn("apprentice14");
    open("/learn/lesson?unit=masking");
    isAccessible();
    WebElement check = until(By.cssSelector("form.check"));
    check.findElement(By.cssSelector("input[value='0']")).click();
    check.findElement(By.cssSelector("input[type=submit]")).click();
    until(By.cssSelector("form.check .replies li"));
    isAccessible();
    width(390);
    picture("lesson-390");
  }

  @Test
  void the_lesson_fits_every_width() {
    signIn("apprentice14");
    open("/learn/lesson?unit=clear");
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      Number overflow =
          (Number)
              browser.executeScript(
                  "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
      assertThat(overflow.intValue()).as("sideways scroll at " + pixels).isLessThanOrEqualTo(0);
      picture("lesson-clear-" + pixels);
    }
  }
}
