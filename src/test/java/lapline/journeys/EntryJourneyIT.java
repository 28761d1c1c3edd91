package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.support.ui.Select;

/** An apprentice writes down a panel at the bench, phone in hand, and has it scored. */
class EntryJourneyIT extends AtThePanel {
  @Test
  void a_panel_is_written_down_kept_as_typed_and_scored() {
    begin("apprentice4");
    isAccessible();
    write("r-gun-pressure", "24 psi", Keys.ENTER);
    assertThat(browser.switchTo().activeElement().getDomAttribute("id")).isEqualTo("r-fan-width");
    write("r-fan-width", "25,0 cm");
    untilSays("r-gun-pressure", "165.5 kPa");
    untilSays("r-fan-width", "250 mm");
    write("r-humidity", "200 %");
    untilSays("r-humidity", "the most is 100 %");
    isAccessible();
    picture("entry-390");

    paste("r-film-before-at1", "101\t161\n102\t158,5\n100\t160\n" + "100\t158\n".repeat(12));
    untilSays("r-film-after-at2", "158.5 µm");
    untilSaved();
    browser.navigate().refresh();
    assertThat(value("r-film-after-at3")).isEqualTo("160");
    assertThat(value("r-gun-pressure")).isEqualTo("24 psi");
    assertThat(says("r-humidity")).contains("the most is 100 %");

    press("score");
    until(By.cssSelector(".errors"));
    assertThat(browser.findElement(By.cssSelector(".errors")).getText())
        .contains("Relative humidity")
        .contains("the most is 100");
    assertThat(value("r-humidity")).isEqualTo("200 %");
    isAccessible();
    write("r-humidity", "55");
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
  }

  @Test
  void a_choice_is_given_to_all_the_rest_and_a_bare_time_is_in_minutes() {
    begin("apprentice2", "/learn/start?task=preparing/flat-panel", "r-work-time");
    new Select(field("r-shine-left-at3")).selectByValue("shine");
    until(By.cssSelector("[data-rest='dull']")).sendKeys(Keys.ENTER);
    write("r-work-time", "42");
    untilSays("r-work-time", "42 min");
    untilSaved();
    browser.navigate().refresh();
    assertThat(value("r-shine-left-at3")).isEqualTo("shine");
    assertThat(browser.findElements(By.cssSelector("[data-cell^='shine-left.']")))
        .extracting(e -> e.getDomProperty("value"))
        .doesNotContain("");
    isAccessible();
    pictures("entry-preparing");
  }

  @Test
  void a_number_that_was_rather_meant_in_another_unit_is_asked_back_and_kept() {
    begin("apprentice4");
    write("r-gun-pressure", "24");
    untilSays("r-gun-pressure", "24 kPa? If you mean psi, write 24 psi.");
    write("r-tip-size", "1.3");
    untilSays("r-tip-size", "1.3 mm");
    write("r-flash-c2", "8");
    untilSays("r-flash-c2", "8 min");
    untilSaved();
    isAccessible();
    pictures("entry-clear");
  }

  @Test
  void the_keyboard_alone_goes_down_a_column_and_lights_the_place() {
    begin("apprentice5");
    field("r-film-after-at1").sendKeys("160", Keys.ENTER, "161", Keys.ENTER);
    assertThat(browser.switchTo().activeElement().getDomAttribute("id"))
        .isEqualTo("r-film-after-at3");
    assertThat(browser.findElements(By.cssSelector("[data-spot].lit")))
        .extracting(e -> e.getDomAttribute("data-spot"))
        .containsOnly("3");
    assertThat(until(By.cssSelector(".reading-now:not(:empty)")).getText())
        .as("which of two columns it is, with their heads out of sight")
        .contains("Film after", "place 3");
    untilSaved();
    assertThat(drawnAsWritten("r-film-after-at1")).containsExactly("1", "2");
    assertThat(drawnAsWritten("r-gloss-60-at1")).as("another part, the same places").isEmpty();
    field("r-film-before-at2").click();
    assertThat(drawnAsWritten("r-film-before-at1")).as("another column").isEmpty();
    field("r-film-after-at3").click();
    picture("entry-390-lit");
    browser.manage().window().setSize(new Dimension(820, 1180));
    picture("entry-820");
    browser.manage().window().setSize(new Dimension(1440, 900));
    picture("entry-1440");
  }

  @Test
  void a_block_that_does_not_fit_is_told_and_nothing_is_pasted() {
    begin("apprentice7");
    paste("r-film-after-at14", "1\n2\n3\n");
    waiting().until(d -> d.findElement(By.id("trouble")).getText().contains("Nothing was pasted"));
    assertThat(value("r-film-after-at14")).isEmpty();
  }

  @Test
  void two_windows_that_write_at_one_place_are_told_and_the_person_chooses() {
    begin("apprentice8");
    String first = browser.getWindowHandle();
    String page = browser.getCurrentUrl();
    browser.switchTo().newWindow(WindowType.TAB);
    browser.get(page);
    write("r-fan-width", "240");
    untilSaved();
    browser.switchTo().window(first);
    write("r-fan-width", "250");
    WebElement clash = until(By.cssSelector(".clash"));
    assertThat(clash.getText()).contains("Another window wrote “240”").contains("“250”");
    isAccessible();
    until(By.cssSelector(".clash button")).click();
    untilSaved();
    browser.navigate().refresh();
    assertThat(value("r-fan-width")).isEqualTo("250");
  }

  @Test
  void signed_out_in_mid_entry_nothing_is_lost() {
    begin("apprentice10");
    String page = browser.getCurrentUrl();
    browser.manage().deleteAllCookies();
    write("r-fan-width", "245");
    waiting().until(d -> d.findElement(By.id("trouble")).getText().contains("nothing is lost"));
    isAccessible();
    signInOnTheWayTo(page.replaceFirst("https?://[^/]*", ""), "apprentice10");
    untilSaved();
    browser.navigate().refresh();
    assertThat(value("r-fan-width")).isEqualTo("245");
  }

  @Test
  void readings_come_from_a_file_after_a_look_at_them() throws IOException {
    begin("apprentice11");
    Path file = Files.createTempFile("readings", ".csv");
    Files.writeString(
        file, "Place;Film before (µm);Film after (mil);Operator\n1;100;6,3\n2;101;much\n16;1;1\n");
    open("/learn/import?" + browser.getCurrentUrl().replaceAll(".*\\?", ""));
    isAccessible();
    until(By.id("upload:file")).sendKeys(file.toString());
    press("upload:go");
    until(By.id("mapping:take"));
    isAccessible();
    picture("import-390");
    assertThat(text())
        .contains("160 µm")
        .contains("“much” is not a reading")
        .contains("2 values have no place on this panel and are left out: rows 3")
        .contains("1 value is not understood: row 2");
    press("mapping:take");
    untilText("4 readings taken from the file");
    assertThat(value("r-film-after-at1")).isEqualTo("6,3 mil");
    assertThat(value("r-film-after-at2")).isEqualTo("much");
  }

  /** The places that the drawing beside a field shows as written down. */
  private List<String> drawnAsWritten(String id) {
    return ((List<?>)
            browser.executeScript(
                "return [...document.getElementById(arguments[0]).closest('.places')"
                    + ".querySelectorAll('.filled')].map(s => s.dataset.spot);",
                id))
        .stream().map(String::valueOf).toList();
  }
}
