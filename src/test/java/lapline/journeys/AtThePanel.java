package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;

/** What an apprentice does who writes down a panel at the bench, phone in hand. */
abstract class AtThePanel extends Journey {
  protected static final String TASK = "/learn/start?task=clear/two-coats";
  private static final Dimension PHONE = new Dimension(390, 844);

  private static final String KEEP =
      "const done = arguments[arguments.length - 1];"
          + "fetch('/api/v1/attempts/' + arguments[0] + '/readings', {method: 'PATCH',"
          + " headers: {'Content-Type': 'application/json', 'X-Lapline': 'page'},"
          + " body: JSON.stringify({since: 0, readings: Object.entries(arguments[1])"
          + ".map(([cell, typed]) => ({cell, typed, base: 0}))})})"
          + ".then(answer => answer.text().then(text => done(answer.status + ' ' + text)));";

  protected void begin(String apprentice) {
    begin(apprentice, TASK, "r-gun-pressure");
  }

  /** Goes on with the panel of a task that is open, or begins one; waits for one of its fields. */
  protected void begin(String apprentice, String task, String field) {
    browser.manage().window().setSize(PHONE);
    signInOnTheWayTo(task, apprentice);
    goOn();
    until(By.id(field));
  }

  /** The page on a phone, a tablet and a wide screen. */
  protected void pictures(String name) {
    for (Dimension size :
        new Dimension[] {PHONE, new Dimension(820, 1180), new Dimension(1440, 900)}) {
      browser.manage().window().setSize(size);
      picture(name + "-" + size.getWidth());
    }
    browser.manage().window().setSize(PHONE);
  }

  /** A panel that is begun shows its task sheet first. */
  private void goOn() {
    WebElement way = until(By.cssSelector("#start\\:go, main .actions a.main"));
    boolean fresh = "start:go".equals(way.getDomAttribute("id"));
    way.click();
    if (fresh) {
      until(By.id("enter")).click();
    }
  }

  protected void signInOnTheWayTo(String page, String apprentice) {
    open(page);
    type("sign-in:name", apprentice);
    type("sign-in:password", DemoAccounts.password());
    press("sign-in:go");
    until(By.cssSelector("header.frame nav"));
  }

  protected WebElement field(String id) {
    return until(By.id(id));
  }

  protected String value(String id) {
    return field(id).getDomProperty("value");
  }

  protected String says(String id) {
    return browser.findElement(By.id(id + "-says")).getText().replace('\u00a0', ' ');
  }

  protected void write(String id, CharSequence... keys) {
    field(id).clear();
    field(id).sendKeys(keys);
  }

  protected void untilSays(String id, String text) {
    waiting().until(d -> says(id).contains(text));
  }

  protected void untilSaved() {
    waiting()
        .until(
            d ->
                d.findElements(By.cssSelector(".cell.unsent")).isEmpty()
                    && d.findElement(By.id("saved")).getText().startsWith("Saved"));
  }

  protected void paste(String id, String block) {
    browser.executeScript(
        "const data = new DataTransfer(); data.setData('text', arguments[1]);"
            + "document.getElementById(arguments[0]).dispatchEvent(new ClipboardEvent('paste',"
            + " {clipboardData: data, bubbles: true, cancelable: true}));",
        id,
        block);
  }

  /** The page again, in a browser that runs scripts or none. */
  protected void scripts(boolean run) {
    browser.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
    browser.navigate().refresh();
  }

  protected void untilTrouble(String text) {
    waiting().until(d -> d.findElement(By.id("trouble")).getText().contains(text));
  }

  /** Has readings kept as the entry page sends them, without typing each. */
  protected void keep(String attempt, Map<String, String> readings) {
    Object answer = browser.executeAsyncScript(KEEP, attempt, readings);
    assertThat(answer.toString()).startsWith("200");
  }

  /** What stands behind the question mark of the panel's address: which attempt it is. */
  protected String attempt() {
    return browser.getCurrentUrl().replaceAll(".*\\?", "");
  }
}
