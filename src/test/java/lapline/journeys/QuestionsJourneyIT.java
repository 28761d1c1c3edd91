package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.util.List;
import lapline.demo.Arranged;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** An instructor asks whether a question of the exam is any good. */
@ExtendWith(ArquillianExtension.class)
class QuestionsJourneyIT extends Journey {
  private static final String WHY = "Our booth has no foam tape at present.";
  private static Arranged shop;

  @ArquillianResource private URL desk;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    if (shop == null) {
      shop = Arranging.workshop(desk, "Lattice");
    }
  }

  private void signInAs(String who) {
    signIn(shop.people().get(who), shop.password());
  }

  @Test
  void an_instructor_sets_a_question_aside_and_has_the_papers_marked_without_it() throws Exception {
    signInAs("instructor");
    open("/teach/items?unit=masking");
    assertThat(title()).startsWith("Masking: ");
    isAccessible();
    String question = setOneAside();
    assertThat(text()).contains(WHY).contains("Ida Lattice");

    untilText("count this question");
    isAccessible();
    pictures("questions-anew");
    press("anew:go");
    untilText("Marked anew: ");
    assertThat(text()).doesNotContain("count this question");

    signOut();
    signInAs("apprentice");
    openThePaperMarkedAnew();
    assertThat(text()).contains(WHY).contains("Ida Lattice").contains("it no longer counts");
    isAccessible();
    pictures("paper-marked-anew");

    signOut();
    signInAs("instructor");
    open(question);
    press("back:go");
    untilText("Brought back. It can be drawn again.");
    untilText("leave this question out");
    press("anew:go");
    untilText("Marked anew: ");
  }

  /** The first that papers had and that not every paper needs. */
  private String setOneAside() throws Exception {
    By onPapers = By.xpath("//tbody/tr[not(normalize-space(td[last()])='0')]/th/a");
    List<String> questions =
        browser.findElements(onPapers).stream().map(a -> a.getDomAttribute("href")).toList();
    for (String question : questions) {
      open(question);
      press("aside:go");
      untilText("Write why");
      isAccessible();
      type("aside:reason", WHY);
      press("aside:go");
      waiting().until(d -> text().contains("Set aside. ") || text().contains("Add another"));
      if (text().contains("Set aside. ")) {
        return question;
      }
    }
    throw new AssertionError("every question is needed: " + questions);
  }

  private void openThePaperMarkedAnew() {
    open("/learn/paper?unit=masking");
    until(By.cssSelector("table.earlier a"));
    List<String> papers =
        browser.findElements(By.cssSelector("table.earlier a")).stream()
            .map((WebElement a) -> a.getDomAttribute("href"))
            .toList();
    for (String paper : papers) {
      open(paper);
      if (text().contains("Marked anew on")) {
        return;
      }
    }
    throw new AssertionError("no paper says that it was marked anew: " + papers);
  }
}
