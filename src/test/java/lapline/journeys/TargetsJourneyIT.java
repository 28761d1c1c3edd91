package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The registrar takes targets from the shop's own sheets, and the next panel is held to them. */
class TargetsJourneyIT extends AtThePanel {
  private static final String TARGETS = "/office/targets?task=clear/two-coats";

  private void choose(String id, String label) {
    new Select(until(By.id(id))).selectByVisibleText(label);
  }

  private void atEveryWidth(String name) {
    for (int width : List.of(390, 820, 1440)) {
      width(width);
      isAccessible();
      picture(name + "-" + width);
      browser.findElements(By.tagName("table")).stream()
          .findFirst()
          .ifPresent(table -> pictureOf(table, name + "-table-" + width));
    }
  }

  private void pictureOf(WebElement part, String name) {
    browser.executeScript("arguments[0].scrollIntoView()", part);
    picture(name);
  }

  @Test
  void the_workshops_sheet_and_a_gun_card_reach_the_task_sheet_and_the_score() {
    signIn("registrar");
    open(TARGETS);
    atEveryWidth("targets");
    asksAboutTheFilmAndSetsNothing();
    setsATarget();
    atEveryWidth("targets-changed");
    addsAGunCard();
    open("/learn/today");
    signOut();
    anApprenticeWorksByThem();
  }

  private void setsATarget() {
    change("Gloss at 60°");
    type("change:target", "shiny");
    press("change:ask");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("“shiny” is not a range").contains("Name the data sheet");
    assertThat(browser.getTitle()).startsWith("Error");
    assertThat(browser.switchTo().activeElement().getDomAttribute("class")).contains("errors");
    assertThat(until(By.id("change:target")).getDomAttribute("aria-invalid")).isEqualTo("true");
    isAccessible();
    picture("target-refused-1440");
    type("change:target", "at least 300 GU");
    type("change:sheet", "Clear 4, sheet of March");
    type("change:reason", "The new clear shines more");
    press("change:ask");
    untilText("cannot be, the most is 200");
    type("change:target", "at least 90");
    press("change:ask");
    askedBackAndChangedOnceMore();
    press("confirm:set");
    untilText("The target holds from now on.");
    assertThat(row("Gloss at 60°")).contains("at least 91 GU").contains("Clear 4, sheet of March");
  }

  /** What is wrong is named, and what rests on the film is told before anything is set. */
  private void asksAboutTheFilmAndSetsNothing() {
    change("Film of clear, mean of the panel");
    type("change:sheet", "Clear 4, sheet of March");
    type("change:reason", "The new clear shines more");
    isToldOf("50 to 65 psi", "“psi” is for a pressure");
    isToldOf("65-50 um", "Write the smaller one first");
    isToldOf("at most 5 mm", "cannot be, the most is");
    isToldOf("52-60", "you are setting 52 to 60");
    assertThat(text())
        .contains("follow by themselves", "Share of the panel inside the film range")
        .contains("Wet film of each coat: 56 to 72");
    atEveryWidth("target-film-asked");
    open(TARGETS);
  }

  private void isToldOf(String target, String says) {
    type("change:target", target);
    press("change:ask");
    untilText(says);
  }

  /** Nothing holds before it was looked at, and what was typed is still there to be changed. */
  private void askedBackAndChangedOnceMore() {
    untilText("you are setting at least 90");
    assertThat(text()).contains("The course says at least 85").contains("From now on");
    isAccessible();
    picture("target-asked-1440");
    press("confirm:again");
    assertThat(until(By.id("change:sheet")).getDomProperty("value"))
        .isEqualTo("Clear 4, sheet of March");
    type("change:target", "min. 91 GU");
    press("change:ask");
    untilText("you are setting at least 91");
  }

  private void change(String criterion) {
    until(By.cssSelector("[aria-label='Change: " + criterion + "']")).click();
    untilText("Change the target: " + criterion);
  }

  private void addsAGunCard() {
    open("/office/gun-cards");
    atEveryWidth("gun-cards");
    open("/office/gun-card");
    type("gun:name", "Gun 7, clear tip");
    type("gun:pressure", "lots");
    type("gun:distance", "-4 to 6 in");
    press("gun:save");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("“lots” is not a range").contains("Distance: “-4 to 6 in”");
    atEveryWidth("gun-card-refused");
    type("gun:pressure", "26 to 28 psi");
    type("gun:distance", "6-8 in");
    press("gun:save");
    untilText("“Gun 7, clear tip” holds from now on.");
    correctsTheCard();
    atEveryWidth("gun-cards-changed");
  }

  private void correctsTheCard() {
    browser.findElement(By.linkText("Gun 7, clear tip")).click();
    assertThat(until(By.id("gun:distance")).getDomProperty("value")).isEqualTo("6-8 in");
    type("gun:pressure", "26 to 29 psi");
    press("gun:save");
    untilText("“Gun 7, clear tip” holds from now on.");
    assertThat(browser.findElements(By.linkText("Gun 7, clear tip"))).hasSize(1);
    browser.findElement(By.linkText("Gun 7, clear tip")).click();
    untilText("26 to 28 psi");
    isAccessible();
    open("/office/gun-cards");
  }

  private void anApprenticeWorksByThem() {
    open(TASK);
    type("sign-in:name", "apprentice1");
    type("sign-in:password", DemoAccounts.password());
    press("sign-in:go");
    choose("start:gun", "Gun 7, clear tip");
    press("start:go");
    press("enter");
    until(By.id("r-gun-pressure"));
    String attempt = attempt();
    open("/learn/task-sheet?" + attempt);
    until(By.cssSelector("figure.sheet svg"));
    assertThat(row("Gloss at 60°")).contains("at least 91").contains("Clear 4, sheet of March");
    assertThat(row("Inlet pressure")).contains("180 to 19").contains("Gun 7, clear tip");
    open("/learn/entry?" + attempt);
    write("r-gun-pressure", "27.5 psi");
    for (int place = 1; place <= 15; place++) {
      write("r-film-before-at" + place, "100 um");
      write("r-film-after-at" + place, "158 um");
    }
    untilSaved();
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(row("Inlet pressure")).contains("180 to 19").contains("met");
    picture("targets-result-390");
  }

  private String row(String criterion) {
    WebElement row =
        until(By.xpath("//tr[th[starts-with(normalize-space(.), '" + criterion + "')]]"));
    return row.getText().replace('\u00a0', ' ');
  }
}
