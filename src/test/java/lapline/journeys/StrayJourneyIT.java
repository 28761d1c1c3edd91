package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/**
 * An even panel with one reading that nobody can have sprayed: it is read again before all else.
 */
class StrayJourneyIT extends AtThePanel {
  private static final int[] AFTER = {95, 94, 96, 95, 93, 95, 96, 201, 95, 94, 95, 96, 94, 95, 95};

  @Test
  void one_reading_far_off_is_to_be_read_again_and_spoils_neither_map_nor_share() {
    begin("apprentice8");
    String attempt = browser.getCurrentUrl().replaceFirst(".*attempt=([0-9a-f-]{36}).*", "$1");
    keep(attempt, evenButOne());
    open("/learn/entry?attempt=" + attempt);
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(title()).isEqualTo("Not yet: read place 8 again, its film fits nothing around it");
    assertThat(text())
        .contains("8, 95 mm from the left edge and 170 mm from the lower edge: 161")
        .contains("The reading at place 8 fits nothing around it. It stands in brackets on the map")
        .contains("100 % (more than 99.9 %) of the panel")
        .doesNotContain("thick at", "thick in", "thin at");
    assertThat(browser.findElement(By.cssSelector("figure svg")).getDomProperty("outerHTML"))
        .contains("(161");
    isAccessible();
    WebElement main = browser.findElement(By.cssSelector("#next .main"));
    assertThat(main.getDomProperty("value")).isEqualTo("Correct the reading");
    pictures("stray");
    browser.executeScript("document.querySelector('.figures').scrollIntoView()");
    pictures("stray-map");
    main.click();
    readAgain("200 um");
    assertThat(title()).startsWith("Not yet: look at place 8");
    assertThat(text()).contains("You have read it again, and it stands.");
    pictures("stray-stands");
    press("again:measure");
    readAgain("96 um");
    assertThat(text())
        .contains("The reading at place 8 fits nothing around it. Now nothing is found.");
  }

  /** The page that asks for it leads to its field. */
  private void readAgain(String film) {
    waiting().until(d -> d.getCurrentUrl().contains("/learn/entry"));
    waiting().until(d -> "r-film-after-at8".equals(focused()));
    write("r-film-after-at8", film);
    untilSaved();
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
  }

  private String focused() {
    return browser.switchTo().activeElement().getDomAttribute("id");
  }

  private static Map<String, String> evenButOne() {
    Map<String, String> typed = new LinkedHashMap<>();
    for (int place = 1; place <= AFTER.length; place++) {
      typed.put("film-before.at" + place, "40 um");
      typed.put("film-after.at" + place, AFTER[place - 1] + " um");
    }
    return typed;
  }
}
