package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/**
 * An apprentice sits a short exam by keyboard, looks it over, hands it in and reads the reasons.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ExamJourneyIT extends Journey {
  private static final String LEARNER = "apprentice13";
  private static final String EXAM = "/learn/paper?unit=masking";

  private void sit() {
    signIn(LEARNER);
    open(EXAM);
    until(By.cssSelector("fieldset.question, #begin\\:go"));
    List<WebElement> begin = browser.findElements(By.id("begin:go"));
    if (!begin.isEmpty()) {
      begin.get(0).click();
    }
    until(By.cssSelector("fieldset.question"));
  }

  @Test
  @Order(1)
  void the_exam_says_what_it_is_before_it_begins() {
    signIn(LEARNER);
    open(EXAM);
    assertThat(title()).isEqualTo("Masking: short exam");
    isAccessible();
    picture("exam-begin");
  }

  @Test
  @Order(2)
  void an_answer_keeps_itself_and_is_there_again_after_a_new_start() {
    sit();
    isAccessible();
    WebElement first = browser.findElement(By.cssSelector("input[type=radio]"));
    String name = first.getDomAttribute("name");
    first.sendKeys(Keys.SPACE);
    untilText("Saved");
    open(EXAM);
    assertThat(browser.findElement(By.cssSelector("input[name='" + name + "']")).isSelected())
        .isTrue();
  }

  @Test
  @Order(3)
  void a_number_in_another_unit_is_understood_and_words_are_told_beside_the_field() {
    sit();
    WebElement number = browser.findElement(By.cssSelector("input[type=text][id$='number']"));
    number.sendKeys("as much as it takes");
    until(By.cssSelector(".question .wrong"));
    isAccessible();
    number = browser.findElement(By.cssSelector("input[type=text][id$='number']"));
    assertThat(number.getDomProperty("value")).isEqualTo("as much as it takes");
    picture("exam-wrong-number");
  }

  @Test
  @Order(4)
  void what_is_still_open_is_told_before_handing_in_and_leads_to_its_question() {
    sit();
    press("sit:review");
    until(By.cssSelector(".errors a"));
    assertThat(title()).contains("still open");
    isAccessible();
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      picture("exam-review-" + pixels);
    }
    browser.findElement(By.cssSelector(".errors a")).click();
    until(By.cssSelector("fieldset.question"));
    assertThat(browser.getCurrentUrl()).contains("#q");
  }

  @Test
  @Order(5)
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

  @Test
  @Order(6)
  void steps_are_put_in_order_with_the_keyboard_and_the_result_tells_the_reasons() {
    sit();
    int places = browser.findElements(By.cssSelector("ul.steps select")).size();
    for (int i = 0; i < places; i++) {
      Select place = new Select(browser.findElements(By.cssSelector("ul.steps select")).get(i));
      place.selectByValue("" + (i + 1));
    }
    press("sit:review");
    press("hand-in:go");
    waiting().until(d -> d.getCurrentUrl().contains("paper-result"));
    assertThat(title()).contains("marks");
    assertThat(text()).contains("Source:", "you put it at place", "not answered");
    assertThat(text()).contains("You can sit the exam again from");
    isAccessible();
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      picture("exam-result-" + pixels);
    }
    open(EXAM);
    assertThat(text()).contains("You can draw the next questions from");
    isAccessible();
    open("/learn/today");
    assertThat(text()).contains("You can sit it again from");
    assertThat(title()).as("no closed door").doesNotContain("exam: Masking");
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      picture("exam-rests-today-" + pixels);
    }
  }

  @Test
  @Order(7)
  void another_person_does_not_see_the_paper() {
    signIn(LEARNER);
    open(EXAM);
    String result = browser.findElement(By.cssSelector("table.earlier a")).getDomProperty("href");
    signOut();
    signIn("apprentice12");
    browser.get(result);
    assertThat(title()).isEqualTo("This page is not for your role");
    signOut();
    signIn("instructor1");
    browser.get(result);
    assertThat(title()).contains("marks");
    isAccessible();
  }
}
