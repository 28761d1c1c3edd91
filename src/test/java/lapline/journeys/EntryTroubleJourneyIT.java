package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** What goes wrong while a panel is written down: nothing that was written is lost. */
class EntryTroubleJourneyIT extends AtThePanel {
  private static final String MEGABYTES = "62.5 ".repeat(2_100_000);

  private void online(boolean online) {
    browser.executeCdpCommand("Network.enable", Map.of());
    browser.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of("offline", !online, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  private List<String> unsent() {
    return browser.findElements(By.cssSelector(".cell.unsent [data-cell]")).stream()
        .map(e -> e.getDomProperty("value"))
        .toList();
  }

  @Test
  void a_lost_connection_is_told_at_once_and_what_is_written_goes_out_when_it_is_back() {
    begin("apprentice9");
    online(false);
    untilTrouble("No connection");
    write("r-fan-width", "25 cm", Keys.ENTER);
    write("r-air-temperature", "21");
    untilTrouble("Not sent yet: 2");
    assertThat(unsent()).containsExactly("25 cm", "21");
    isAccessible();
    picture("entry-offline-390");
    press("score");
    assertThat(value("r-fan-width")).as("no empty page of the browser's").isEqualTo("25 cm");
    online(true);
    untilSaved();
    assertThat(browser.findElement(By.id("trouble")).getText()).isEmpty();
    browser.navigate().refresh();
    assertThat(value("r-fan-width")).isEqualTo("25 cm");
    assertThat(value("r-air-temperature")).isEqualTo("21");
  }

  @Test
  void a_connection_that_comes_back_with_nothing_to_send_is_told_too() {
    begin("apprentice9");
    online(false);
    untilTrouble("No connection");
    online(true);
    waiting().until(d -> d.findElement(By.id("trouble")).getText().isEmpty());
  }

  @Test
  void without_scripts_readings_are_saved_and_the_panel_is_scored() {
    begin("apprentice12");
    scripts(false);
    write("r-fan-width", "10 in");
    press("score");
    until(By.cssSelector(".errors"));
    assertThat(value("r-fan-width")).isEqualTo("10 in");
    assertThat(text()).contains("is needed before the panel can be scored");
    writeFilm("100 um", "158 um");
    press("save");
    untilText("Saved. You can go on later.");
    assertThat(value("r-film-after-at1")).isEqualTo("158 um");
    assertThat(says("r-film-after-at1")).contains("6.22 mil");
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
  }

  @Test
  void micrometres_typed_for_mils_all_over_are_one_line_and_each_field_is_marked() {
    begin("apprentice12");
    writeFilm("100", "158");
    untilSaved();
    press("score");
    until(By.cssSelector(".errors"));
    assertThat(browser.findElements(By.cssSelector(".errors li"))).hasSize(1);
    assertThat(browser.findElement(By.cssSelector(".errors")).getText())
        .contains(
            "at places 1–15", "30 readings cannot be in “mil”", "write µm beside each number");
    assertThat(browser.findElements(By.cssSelector(".reading[aria-invalid=true]")))
        .hasSize(30)
        .extracting(e -> e.getCssValue("border-top-color"))
        .as("a mark that is seen, in the colour of what is said")
        .containsOnly(
            browser.findElement(By.cssSelector("#entry .wrong:not(:empty)")).getCssValue("color"));
    isAccessible();
    pictures("entry-wrong-unit");
    writeFilm("100 um", "158 um");
    untilSaved();
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
  }

  private void writeFilm(String before, String after) {
    for (int place = 1; place <= 15; place++) {
      write("r-film-before-at" + place, before);
      write("r-film-after-at" + place, after);
    }
  }

  @Test
  void a_scanned_code_leads_to_this_panels_record_signed_in_or_not() {
    begin("apprentice9");
    String attempt = attempt();
    open("/learn/task-sheet?" + attempt);
    String code = until(By.id("pdf")).getDomAttribute("download").replace(".pdf", "");
    open("/s/" + code);
    until(By.id("r-gun-pressure"));
    assertThat(attempt()).isEqualTo(attempt);
    browser.manage().deleteAllCookies();
    signInOnTheWayTo("/s/" + code, "apprentice9");
    until(By.id("r-gun-pressure"));
    assertThat(attempt()).isEqualTo(attempt);
  }

  @Test
  void sent_twice_a_panel_is_scored_once() {
    begin("apprentice6");
    writeFilm("100 um", "158 um");
    untilSaved();
    Object answers =
        browser.executeAsyncScript(
            """
            const done = arguments[0], form = document.getElementById('entry');
            const body = new URLSearchParams(new FormData(form, document.getElementById('score')));
            const send = () => fetch(form.action, {method: 'POST', body})
              .then(a => a.status + ' ' + new URL(a.url).pathname);
            Promise.all([send(), send()])
              .then(two => send().then(third => done([...two, third].join(', '))));
            """);
    String scored = "200 /learn/result";
    assertThat(answers).isEqualTo(String.join(", ", scored, scored, scored));
    open("/learn/entry?" + attempt());
    assertThat(browser.getCurrentUrl()).as("no second record").contains("/learn/result");
  }

  @Test
  void a_paste_of_megabytes_is_told_and_takes_nothing() {
    begin("apprentice9");
    paste("r-film-after-at1", "1\n".repeat(5001));
    untilTrouble("more than 10,000");
    assertThat(value("r-film-after-at1")).isEmpty();
    paste("r-humidity", MEGABYTES);
    untilTrouble("10,500,000 characters, more than 200");
    assertThat(value("r-humidity")).isEmpty();
    picture("entry-long-paste-390");
    write("r-fan-width", "250");
    untilSaved();
  }
}
