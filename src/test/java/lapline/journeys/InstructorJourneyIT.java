package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/** An instructor sees who waits, looks at a panel, places defects, and returns or accepts it. */
class InstructorJourneyIT extends Journey {
  /** A flat panel prepared as the task asks, sent by a page's own script. */
  private static final String PREPARED =
      """
      const done = arguments[arguments.length - 1];
      const readings = {'grit.s1': '400', 'grit.s2': '600', 'water-break': 'holds', 'work-time': '40 min'};
      for (let n = 1; n <= 14; n++) {
        readings['shine-left.at' + n] = 'dull';
        readings['dust-left.at' + n] = 'clean';
        if (n < 9 || n > 12) readings['edge-missed.at' + n] = 'done';
      }
      const send = (address, body) => fetch('/api/v1/attempts' + address, {method: 'POST', body,
        headers: {'X-Lapline': 'page', 'Content-Type': 'application/json'}}).then(r => r.json());
      send('', JSON.stringify({task: 'preparing/flat-panel', changed: 'Edges first', readings}))
        .then(made => send('/' + made.attempt.id + '/score'))
        .then(scored => done(scored.attempt ? scored.attempt.id : JSON.stringify(scored)));
      """;

  private String preparedBy(String apprentice) {
    signIn(apprentice);
    String id = String.valueOf(browser.executeAsyncScript(PREPARED));
    assertThat(id).hasSize(36);
    signOut();
    return id;
  }

  @Test
  void a_panel_that_waits_is_looked_at_and_returned_with_what_was_seen() {
    String id = preparedBy("apprentice12");
    signIn("instructor1");
    assertThat(title()).contains("for your eye");
    isAccessible();
    picture("needs-1440");
    open("/teach/bench?attempt=" + id);
    assertThat(title()).isEqualTo("Numbers say accepted: 100 of 100. Is it acceptable to the eye?");
    isAccessible();

    press("return");
    until(By.cssSelector(".errors"));
    assertThat(browser.getTitle()).startsWith("Error: ");
    assertThat(browser.switchTo().activeElement().getAttribute("class")).isEqualTo("errors");
    assertThat(browser.getCurrentUrl()).contains("attempt=" + id);
    assertThat(text()).contains("To return a panel, write in one sentence what to change.");
    isAccessible();

    WebElement map = browser.findElement(By.cssSelector("svg.defect-map"));
    new Actions(browser).moveToElement(map, 20, 10).click().perform();
    untilText("choose which one it is first");
    choose("kind", 0);
    tapAndWait(1);
    browser.findElement(By.cssSelector("#defects summary")).click();
    new Select(until(By.id("place-number"))).selectByValue("5");
    type("note", "lower right");
    press("place");
    until(By.cssSelector(".placed li:nth-child(2)"));
    waiting().until(d -> d.switchTo().activeElement().getText().contains("lower right"));
    type("from-left", "abc");
    type("from-below", "50 mm");
    press("place");
    untilText("From the left edge: “abc” is not a length");
    waiting().until(d -> "from-left".equals(d.switchTo().activeElement().getAttribute("id")));
    isAccessible();
    assertThat(browser.findElement(By.cssSelector(".placed")).getText()).contains("lower right");
    browser.findElement(By.cssSelector("[name=take-away]")).click();
    waiting().until(d -> d.findElements(By.cssSelector(".placed li")).size() == 1);
    isAccessible();
    type("remark", "Go round the edges once more by hand.");
    picture("bench-1440");
    width(390);
    isAccessible();
    picture("bench-390");
    width(1440);
    press("return");
    untilText("Returned with your remark");

    open("/teach/needs?for=returned");
    assertThat(text()).contains("Go round the edges once more by hand.");
    isAccessible();
    picture("needs-returned-1440");
    signOut();
    signIn("apprentice12");
    assertThat(text())
        .contains("Ivo Stanchion returned your panel")
        .contains("Go round the edges once more by hand.");
    isAccessible();
    open("/learn/result?attempt=" + id);
    assertThat(text()).contains("Returned by Ivo Stanchion").contains("lower right");
    isAccessible();
    browser.executeScript("document.getElementById('eye').scrollIntoView()");
    picture("result-eye-1440");
  }

  @Test
  void a_session_lost_in_mid_grading_and_a_photograph_take_nothing_away() throws IOException {
    String id = preparedBy("apprentice9");
    signIn("instructor2");
    open("/teach/bench?attempt=" + id);
    choose("mark:edges", 1);
    choose("kind", 0);
    tapAndWait(1);
    type("remark", "Good edges, dust in the middle.");
    Path picture = Files.createTempFile("panel", ".png");
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
    until(By.id("photograph")).sendKeys(picture.toString());
    press("photograph-add");
    untilText("Photographs added.");
    everythingIsThere("Good edges, dust in the middle.");

    browser.manage().deleteAllCookies();
    type("remark", "Good edges, dust in the middle. Wipe once more.");
    press("return");
    type("sign-in:name", "instructor2");
    type("sign-in:password", DemoAccounts.password());
    press("sign-in:go");
    waiting().until(d -> d.getCurrentUrl().contains("attempt=" + id));
    everythingIsThere("Good edges, dust in the middle. Wipe once more.");
    isAccessible();
    width(820);
    picture("bench-820");
    press("return");
    untilText("Returned with your remark");
    open("/teach/bench?attempt=" + id);
    assertThat(text()).contains("the photographs that were there stay with it");
    assertThat(browser.findElement(By.id("remark")).getAttribute("value")).isEmpty();
  }

  private void everythingIsThere(String remark) {
    waiting().until(d -> remark.equals(d.findElement(By.id("remark")).getAttribute("value")));
    assertThat(browser.findElements(By.cssSelector("input[name='mark:edges']")).get(1).isSelected())
        .isTrue();
    assertThat(browser.findElements(By.cssSelector(".placed li"))).hasSize(1);
  }

  private void tapAndWait(int defects) {
    WebElement map = browser.findElement(By.cssSelector("svg.defect-map"));
    new Actions(browser).moveToElement(map, 40, -30).click().perform();
    waiting().until(d -> d.findElements(By.cssSelector(".placed li")).size() == defects);
  }

  private void choose(String name, int which) {
    By choices = By.cssSelector("input[name='" + name + "']");
    waiting().until(d -> d.findElements(choices).size() > which);
    browser.findElements(choices).get(which).click();
  }

  @Test
  void a_panel_is_accepted_once_every_item_has_its_mark_and_nothing_chosen_is_lost() {
    String id = preparedBy("apprentice13");
    signIn("instructor2");
    width(390);
    picture("needs-390");
    isAccessible();
    open("/teach/bench?attempt=" + id);
    choose("mark:scratch", 2);
    press("accept");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("choose a mark before you accept the panel");
    assertThat(
            browser.findElement(By.cssSelector("input[name='mark:scratch']:checked")).isSelected())
        .isTrue();
    isAccessible();
    for (String item : new String[] {"through", "edges", "conduct"}) {
      choose("mark:" + item, 2);
    }
    press("accept");
    untilText("Accepted: ");
    open("/teach/bench?attempt=" + id);
    waiting().until(d -> title().startsWith("Accepted at the bench already"));
  }

  @Test
  void the_cohort_shows_who_stands_where_and_each_persons_panels() {
    String id = preparedBy("apprentice14");
    signIn("instructor1");
    open("/teach/cohort");
    assertThat(title()).contains(" people are working towards ");
    isAccessible();
    picture("cohort-1440");
    width(390);
    isAccessible();
    picture("cohort-390");
    width(1440);
    open("/teach/finding?unit=clear&finding=film.low");
    assertThat(title()).contains(" in 90 days").doesNotContain(".:");
    isAccessible();
    picture("finding-1440");
    open("/teach/cohort?skill=clear");
    assertThat(title()).endsWith("working towards Clear");
    isAccessible();
    picture("cohort-clear-1440");
    open("/teach/cohort");
    browser.findElement(By.linkText("Nell Drystone")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/teach/person"));
    assertThat(title()).startsWith("Nell Drystone: ");
    isAccessible();
    picture("person-1440");
    width(390);
    isAccessible();
    picture("person-390");
    width(820);
    picture("person-820");
    assertThat(browser.findElements(By.cssSelector("a[href*='" + id + "']"))).isNotEmpty();
    open("/teach/needs?for=stuck&page=abc");
    assertThat(text()).doesNotContain("whole number");
    isAccessible();
    picture("needs-stuck-390");
  }

  @Test
  void an_apprentice_does_not_grade_and_nobody_finds_a_panel_that_is_not_there() {
    String id = preparedBy("apprentice11");
    signIn("apprentice10");
    open("/teach/bench?attempt=" + id);
    assertThat(title()).isEqualTo("This page is not for your role");
    signOut();
    signIn("instructor1");
    open("/teach/bench?attempt=0f0f0f0f-0000-4000-8000-000000000000");
    assertThat(title()).isEqualTo("There is no such page");
    open("/teach/person?id=no-id");
    assertThat(title()).isEqualTo("There is no such page");
  }
}
