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
    }
  }

  @Test
  void the_workshops_sheet_and_a_gun_card_reach_the_task_sheet_and_the_score() {
    signIn("registrar");
    open(TARGETS);
    atEveryWidth("targets");
    setsATarget();
    addsAGunCard();
    atEveryWidth("targets-changed");
    open("/learn/today");
    signOut();
    anApprenticeWorksByThem();
  }

  private void setsATarget() {
    choose("change:criterion", "Gloss at 60°");
    type("change:target", "shiny");
    press("change:save");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("“shiny” is not a range").contains("Name the data sheet");
    isAccessible();
    picture("targets-refused-1440");
    assertThat(new Select(until(By.id("change:criterion"))).getFirstSelectedOption().getText())
        .isEqualTo("Gloss at 60°");
    type("change:target", "at least 90 GU");
    type("change:sheet", "Clear 4, sheet of March");
    type("change:reason", "The new clear shines more");
    press("change:save");
    untilText("The target holds from now on.");
    assertThat(text()).contains("at least 90 GU").contains("Clear 4, sheet of March");
  }

  private void addsAGunCard() {
    type("card:name", "Gun 7, clear tip");
    type("card:pressure", "lots");
    press("card:add");
    until(By.cssSelector(".errors"));
    assertThat(text()).contains("“lots” is not a range");
    type("card:pressure", "26 to 29 psi");
    type("card:distance", "6 to 8 in");
    press("card:add");
    untilText("The gun card is saved.");
    assertThat(title()).as("still at the same task").contains("Two coats of clear");
    assertThat(text()).contains("Gun 7, clear tip").contains("26 to 29 psi");
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
    assertThat(row("Gloss at 60°")).contains("at least 90").contains("Clear 4, sheet of March");
    assertThat(row("Inlet pressure")).contains("179.3").contains("Gun 7, clear tip");
    open("/learn/entry?" + attempt);
    write("r-gun-pressure", "27.5 psi");
    for (int place = 1; place <= 15; place++) {
      write("r-film-before-at" + place, "100 um");
      write("r-film-after-at" + place, "158 um");
    }
    untilSaved();
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(row("Inlet pressure")).contains("179.3").contains("met");
    picture("targets-result-390");
  }

  private String row(String criterion) {
    WebElement row =
        until(By.xpath("//tr[th[starts-with(normalize-space(.), '" + criterion + "')]]"));
    return row.getText().replace('\u00a0', ' ');
  }
}
