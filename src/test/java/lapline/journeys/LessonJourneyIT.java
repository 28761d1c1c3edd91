package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lapline.content.ContentFiles;
import lapline.lessons.Check;
import lapline.lessons.Curriculum;
import lapline.lessons.CurriculumReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;

/** An apprentice reads a lesson on the phone, answers its checks and is told at once why. */
class LessonJourneyIT extends Journey {
  private static final Curriculum COURSE =
      new CurriculumReader(ContentFiles.fromClasspath()).read();

  private static Check check(String unit, boolean several) {
    return COURSE.lesson(unit).orElseThrow().checks().stream()
        .filter(c -> c.several() == several)
        .findFirst()
        .orElseThrow();
  }

  /** Ticks these choices of a check, takes back all others, and waits for the answer. */
  private void answer(Check check, List<Integer> choices) {
    String name = "choice-" + check.id();
    for (WebElement box : browser.findElements(By.name(name))) {
      boolean wanted = choices.contains(Integer.valueOf(box.getDomAttribute("value")));
      if (box.isSelected() != wanted && (wanted || check.several())) {
        box.click();
      }
    }
    WebElement before = form(check).findElement(By.cssSelector("[aria-live]"));
    form(check).findElement(By.cssSelector("input[type=submit]")).click();
    waiting().until(ExpectedConditions.stalenessOf(before));
    assertThat(ticked(check)).as("what was chosen stays chosen").isEqualTo(choices);
  }

  private List<Integer> ticked(Check check) {
    return browser.findElements(By.name("choice-" + check.id())).stream()
        .filter(WebElement::isSelected)
        .map(box -> Integer.valueOf(box.getDomAttribute("value")))
        .toList();
  }

  private WebElement form(Check check) {
    return browser
        .findElement(By.name("choice-" + check.id()))
        .findElement(By.xpath("ancestor::form"));
  }

  private String told(Check check) {
    return form(check).findElement(By.cssSelector("[aria-live]")).getText();
  }

  /** As a browser gives a text back: every space is one like the others. */
  private static String seen(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static List<Integer> places(Check check, boolean right) {
    return IntStream.range(0, check.choices().size())
        .filter(i -> check.choices().get(i).right() == right)
        .boxed()
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"preparing", "masking", "coverage", "clear"})
  void a_wrong_answer_says_what_comes_of_it_and_a_right_one_why(String unit) {
    signIn("apprentice14");
    width(390);
    open("/learn/lesson?unit=" + unit);
    isAccessible();
    Check check = check(unit, false);
    int wrong = places(check, false).get(0);
    int right = places(check, true).get(0);

    answer(check, List.of(wrong));
    assertThat(told(check)).contains("Not that.", seen(check.choices().get(wrong).because()));
    assertThat(told(check)).doesNotContain(seen(check.choices().get(right).because()));
    picture("lesson-" + unit + "-wrong-390");

    answer(check, List.of(right));
    assertThat(told(check)).contains("Right.", seen(check.choices().get(right).because()));
    isAccessible();
    picture("lesson-" + unit + "-right-390");
  }

  /** apprentice14 thinks in metric units, apprentice9 in US units. */
  @ParameterizedTest
  @CsvSource({
    "apprentice14, fan of 250 mm, that is 75 mm, 300 mm wide",
    "apprentice9, fan of 10 in, that is 3 in, 12 in wide"
  })
  void everybody_reads_the_lesson_in_units_of_their_own(
      String who, String fan, String step, String question) {
    signIn(who);
    open("/learn/lesson?unit=coverage#overlap-is-a-distance");
    assertThat(until(By.tagName("main")).getText())
        .contains(fan, step, question)
        .doesNotContain("{", "}");
    for (int pixels : new int[] {390, 1440}) {
      width(pixels);
      for (String at : List.of("overlap-is-a-distance", "keep-room", "mix-and-set-up")) {
        open("/learn/lesson?unit=coverage&at=" + at + "#" + at);
        until(By.id(at));
        picture("lesson-units-" + who + "-" + at + "-" + pixels);
      }
    }
  }

  @Test
  void of_several_right_ones_a_part_is_told_how_many_are_missing_but_not_which() {
    signIn("apprentice14");
    width(390);
    open("/learn/lesson?unit=preparing");
    Check check = check("preparing", true);
    List<Integer> right = places(check, true);

    answer(check, List.of());
    assertThat(told(check)).isEqualTo("Choose one first.");

    answer(check, right.subList(0, 1));
    assertThat(told(check)).contains("Right so far, " + (right.size() - 1) + " more to find.");
    assertThat(told(check)).doesNotContain("Not that.", "missing");
    assertThat(told(check)).doesNotContain(seen(check.choices().get(right.get(1)).because()));

    answer(check, Stream.of(right.get(0), places(check, false).get(0)).sorted().toList());
    assertThat(told(check))
        .contains(seen(check.choices().get(places(check, false).get(0)).because()));

    answer(check, right);
    assertThat(told(check)).contains("Right.").doesNotContain("missing");
    picture("lesson-several-right-390");
  }

  @ParameterizedTest
  @ValueSource(strings = {"preparing", "masking", "coverage", "clear"})
  void the_lesson_fits_every_width_and_its_drawings_can_be_read(String unit) {
    signIn("apprentice14");
    open("/learn/lesson?unit=" + unit);
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      assertThat(number("return document.documentElement.scrollWidth - innerWidth"))
          .as("sideways scroll at " + pixels)
          .isLessThanOrEqualTo(0);
      assertThat(number(SMALLEST_WORDS)).as("words in drawings at " + pixels).isGreaterThan(11);
      whole(pixels);
      picture("lesson-" + unit + "-" + pixels);
    }
  }

  /** Height in CSS pixels of the smallest letters in a drawing, as shown. */
  private static final String SMALLEST_WORDS =
      "return Math.min(...[...document.querySelectorAll('.lesson svg text')].map(t =>"
          + " parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a))";

  /** Makes the window as high as the page, so that the picture has all of it. */
  private void whole(int pixels) {
    int height = (int) number("return document.documentElement.scrollHeight");
    browser.manage().window().setSize(new Dimension(pixels, height + 200));
  }

  private double number(String script) {
    return ((Number) browser.executeScript(script)).doubleValue();
  }
}
