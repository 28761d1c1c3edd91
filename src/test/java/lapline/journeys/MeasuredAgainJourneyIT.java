package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/**
 * What the film leaves open: an apprentice reads three further places and is told what that
 * changed; and one whose film no stroke explains is told so before anything else.
 */
class MeasuredAgainJourneyIT extends AtThePanel {
  /** An arc of a tenth of the film, with the scatter of a gauge, in µm; made by a computation. */
  private static final double[] PERHAPS_AN_ARC = {
    54.1, 56.8, 55.6, 56.2, 59.2, 51.1, 53.1, 55.4, 54.8, 52.4, 58.0, 55.9, 52.1, 58.2, 52.6
  };

  /** An arc or an early trigger: these places cannot tell; in µm, made by a computation. */
  private static final double[] ONE_OF_TWO = {
    47.1, 56.8, 51.0, 54.8, 59.7, 48.5, 50.4, 57.0, 55.1, 49.6, 56.2, 55.4, 48.6, 57.5, 47.9
  };

  @Test
  void what_is_in_doubt_is_read_at_the_places_advised_and_settled() {
    String panel = score("apprentice2", PERHAPS_AN_ARC);
    assertThat(text()).contains("Perhaps you swing the gun in an arc", "has a field for each");
    List<String> spots =
        browser.findElements(By.cssSelector(".change ul li")).stream()
            .map(e -> e.getText())
            .toList();
    assertThat(spots).anyMatch(s -> s.startsWith("A: ")).anyMatch(s -> s.startsWith("C: "));
    pictures("advised-places");
    press("again:measure");
    until(By.id("r-film-after-at101"));
    assertThat(text()).contains("Further places", "A: 300");
    assertThat(browser.findElements(By.id("r-film-before-at101"))).isEmpty();
    isAccessible();
    write("r-film-after-at101", "159.2");
    write("r-film-after-at102", "159.5");
    write("r-film-after-at103", "158.9");
    untilSaved();
    browser.executeScript(
        "arguments[0].scrollIntoView({block: 'center'})", field("r-film-after-at102"));
    pictures("further-places");
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(browser.findElement(By.id("again-told")).getText().replace('\u00a0', ' '))
        .contains("Read at further places: A 59", "practice score", "Perhaps you swing");
    assertThat(browser.findElement(By.cssSelector(".change .next")).getText())
        .as("what was a doubt is a cause")
        .doesNotContain("Do not change your stroke yet");
    isAccessible();
    pictures("measured-again");
    assertThat(panel).isEqualTo(attempt());
  }

  @Test
  void one_of_several_causes_is_settled_before_it_is_changed() {
    score("apprentice2", ONE_OF_TWO);
    assertThat(browser.findElement(By.id("change-title")).getText()).isEqualTo("Settle this first");
    assertThat(browser.findElement(By.cssSelector(".change .next")).getText())
        .startsWith("Before you change your stroke, read 3 more places");
    assertThat(text())
        .contains("Possible: ‘You swing the gun in an arc’ or ‘You let go of the trigger too early")
        .contains("The readings cannot tell which")
        .doesNotContain("Surest cause", "Change this one thing next", "Move your whole arm");
    assertThat(browser.findElement(By.id("next:go")).getDomProperty("value"))
        .isEqualTo("Take the next panel");
    assertThat(browser.findElement(By.id("next:go")).getDomAttribute("class")).isEqualTo("other");
    isAccessible();
    pictures("one-of-several");
    press("next:measure");
    until(By.id("r-film-after-at101"));
    // as an arc would have it
    write("r-film-after-at101", "151.4");
    write("r-film-after-at102", "151.4");
    write("r-film-after-at103", "151.7");
    untilSaved();
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(browser.findElement(By.id("change-title")).getText())
        .isEqualTo("Change this one thing next");
    assertThat(text()).contains("Surest cause: You swing the gun in an arc");
  }

  @Test
  void a_film_that_no_stroke_explains_is_told_so_before_any_cause_and_any_slider() {
    double[] film = new double[15];
    Arrays.setAll(film, i -> i % 2 == 0 ? 66 : 48);
    String panel = score("apprentice2", film);
    assertThat(browser.findElement(By.cssSelector(".change .next")).getText())
        .isEqualTo("The readings fit no pattern that Lapline knows.");
    isAccessible();
    pictures("no-pattern");
    open("/learn/panel-what-if?" + panel);
    until(By.cssSelector("#panel-what-if[data-ready]"));
    assertThat(until(By.id("not-this-film")).getText())
        .startsWith("The readings of this panel fit no pattern");
    int warning = until(By.id("not-this-film")).getLocation().getY();
    assertThat(warning).isLessThan(until(By.id("overlap")).getLocation().getY());
    isAccessible();
    pictures("what-if-no-pattern");
  }

  /** The panel's address after its film has been keyed in and scored. */
  private String score(String apprentice, double[] film) {
    begin(apprentice);
    String panel = attempt();
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("gun-pressure", "165 kPa");
    typed.put("fan-width", "230 mm");
    for (int place = 1; place <= film.length; place++) {
      typed.put("film-before.at" + place, "100 um");
      typed.put(
          "film-after.at" + place, String.format(Locale.ROOT, "%.1f um", 100 + film[place - 1]));
    }
    keep(panel.replace("attempt=", ""), typed);
    open("/learn/entry?" + panel);
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    return panel;
  }
}
