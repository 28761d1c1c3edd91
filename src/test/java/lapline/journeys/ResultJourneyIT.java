package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import lapline.practice.SprayChange;
import lapline.practice.SprayPlan;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;

/**
 * An apprentice prints the sheet, has a panel scored, reads why it is not accepted, and takes the
 * next one with one change; with a photograph of the panel.
 */
class ResultJourneyIT extends AtThePanel {
  private static final String TOO_WIDE =
      "return [...document.querySelectorAll('main *')]"
          + ".filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)"
          + ".slice(0, 6).map(e => e.tagName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 30))"
          + ".join(' | ');";

  @Test
  void an_apprentice_prints_the_sheet_scores_the_panel_and_takes_the_next_with_one_change()
      throws Exception {
    signIn("apprentice3");
    String attempt = begin();
    seeTheSheet(attempt);
    addPhotograph(attempt, photograph());
    keep(attempt, thinBelow());
    open("/learn/entry?attempt=" + attempt);
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    seeTheResult(attempt);
    readWhatIsMissing(attempt);
    seeTheSheetAgain(attempt);
    open("/learn/result?attempt=" + attempt);
    SprayedAgain.see(this);
    open("/learn/result?attempt=" + attempt);
    press("next:go");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/task-sheet"));
    assertThat(attemptInAddress()).isNotEqualTo(attempt);
  }

  @Test
  void what_if_answers_in_the_address_and_says_what_is_wrong_beside_the_field() {
    signIn("apprentice4");
    open("/learn/what-if?change=spacing&to=90+mm");
    assertThat(title()).startsWith("The film would be");
    at("what-if");
    open("/learn/what-if?change=spacing&to=ninety");
    assertThat(browser.findElement(By.id("to-wrong")).getText()).contains("not a number");
    isAccessible();
  }

  /** What the page's script puts in place is what the science says, its band included. */
  @Test
  void a_slider_shows_the_film_that_the_model_has() {
    SprayPlan now = new SprayPlan(55e-6, 0.45, 0.1, 0.06, 0.2, 0.1, 0.3, 2);
    signIn("apprentice14");
    open("/learn/what-if?change=distance&to=125+mm");
    assertThat(dryFilm()).isEqualTo(model(now, 0.125));
    for (int distance : new int[] {200, 80}) {
      browser.executeScript(
          "const s = document.querySelector('#to-field input[type=range]');"
              + "s.value = arguments[0]; s.dispatchEvent(new Event('input'));",
          distance);
      waiting().until(d -> dryFilm().equals(model(now, distance / 1000.0)));
    }
    assertThat(text()).contains("no public table of it was found");
    isAccessible();
    pictures("what-if-distance");
  }

  private String dryFilm() {
    return until(By.cssSelector("#answer tbody tr:nth-child(3) td:last-child")).getText();
  }

  private static String model(SprayPlan now, double distance) {
    SprayChange change = SprayChange.of(now, SprayPlan.Thing.DISTANCE, distance).orElseThrow();
    String least = micrometres(change.thinnest()).replace(" µm", "");
    return micrometres(change.then()) + "\n" + least + " to " + micrometres(change.thickest());
  }

  private static String micrometres(SprayPlan plan) {
    return QuantityWriter.write(plan.dryFilm(), Dimension.FILM, UnitSystem.METRIC)
        .replace('\u00a0', ' ');
  }

  private String begin() {
    open("/learn/start?task=clear/two-coats");
    var go = browser.findElements(By.id("start:go"));
    if (go.isEmpty()) {
      browser.findElement(By.cssSelector("main a.main")).click();
    } else {
      go.get(0).click();
      press("enter");
    }
    waiting().until(d -> d.getCurrentUrl().contains("/learn/entry"));
    return attemptInAddress();
  }

  private String attemptInAddress() {
    return browser.getCurrentUrl().replaceFirst(".*attempt=([0-9a-f-]{36}).*", "$1");
  }

  private void seeTheSheet(String attempt) throws Exception {
    open("/learn/task-sheet?attempt=" + attempt);
    at("task-sheet");
    HttpResponse<byte[]> pdf = get("/api/v1/attempts/" + attempt + "/sheet.pdf?paper=letter");
    assertThat(pdf.statusCode()).isEqualTo(200);
    assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
    Files.write(
        Files.createDirectories(Path.of("target/screenshots")).resolve("sheet.pdf"), pdf.body());
  }

  /** The sheet of a scored panel asks for nothing more. */
  private void seeTheSheetAgain(String attempt) {
    open("/learn/task-sheet?attempt=" + attempt);
    assertThat(text()).contains("This panel is scored").doesNotContain("take it to the booth");
    assertThat(until(By.id("result")).getDomAttribute("href")).contains(attempt);
    at("task-sheet-scored");
  }

  private void addPhotograph(String attempt, Path file) throws Exception {
    open("/learn/entry?attempt=" + attempt);
    until(By.id("photograph")).sendKeys(file.toString());
    type("photograph-caption", "Lower edge");
    press("photograph-add");
    untilText("Photographs added.");
    String address = browser.findElement(By.cssSelector(".pictures img")).getDomAttribute("src");
    HttpResponse<byte[]> picture = get(address);
    assertThat(picture.statusCode()).isEqualTo(200);
    assertThat(picture.headers().firstValue("Cache-Control")).hasValue("private, max-age=86400");
    signOut();
    signIn("apprentice5");
    assertThat(get(address).statusCode()).as("another apprentice's panel").isEqualTo(404);
    signOut();
    signIn("apprentice3");
    Path noImage = Files.writeString(Files.createTempFile("lapline", ".jpg"), "no picture");
    open("/learn/entry?attempt=" + attempt);
    until(By.id("photograph")).sendKeys(noImage.toString());
    press("photograph-add");
    untilText("not a photograph we can read");
  }

  private static Path photograph() throws IOException {
    var image =
        new java.awt.image.BufferedImage(800, 600, java.awt.image.BufferedImage.TYPE_INT_RGB);
    Path file = Files.createTempFile("lapline", ".jpg");
    javax.imageio.ImageIO.write(image, "jpg", file.toFile());
    return file;
  }

  private void seeTheResult(String attempt) throws Exception {
    assertThat(title()).startsWith("Not yet");
    assertThat(text()).contains("Verdict by verdict", "Film build", "could not be judged");
    at("result");
    browser.findElement(By.cssSelector("details.drill > summary")).click();
    assertThat(text()).contains("Drill before the next panel", "Right when:");
    isAccessible();
    long before = System.nanoTime();
    assertThat(get("/learn/result?attempt=" + attempt).statusCode()).isEqualTo(200);
    System.out.printf("result page in %d ms%n", (System.nanoTime() - before) / 1_000_000);
    signOut();
    signIn("apprentice5");
    assertThat(get("/learn/result?attempt=" + attempt).statusCode()).isEqualTo(403);
    signOut();
    signIn("apprentice3");
    open("/learn/result?attempt=" + attempt);
  }

  /** What was left out is read later; all else stays, and the panel is scored from all of it. */
  private void readWhatIsMissing(String attempt) {
    assertThat(text()).contains("Fluid knob").doesNotContain("2.50");
    press("again:measure");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/entry"));
    assertThat(until(By.id("r-gun-pressure")).getDomProperty("value")).isEqualTo("165 kPa");
    keep(attempt, Map.of("fluid-turns", "2.5"));
    open("/learn/entry?attempt=" + attempt);
    press("score");
    waiting().until(d -> d.getCurrentUrl().contains("/learn/result"));
    assertThat(text()).contains("2.50 ± 0.20");
  }

  /** Looks at the page at the three widths people have. */
  private void at(String name) {
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      assertThat(browser.executeScript("return document.documentElement.scrollWidth"))
          .as(
              "no sideways scrolling at "
                  + pixels
                  + ", too wide: "
                  + browser.executeScript(TOO_WIDE))
          .isEqualTo(browser.executeScript("return document.documentElement.clientWidth"));
      isAccessible();
      picture(name + "-" + pixels);
    }
  }

  /** Wider steps below than above, so the film is thin along the lower edge. */
  private static Map<String, String> thinBelow() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("gun-pressure", "165 kPa");
    typed.put("fan-width", "200 mm");
    typed.put("tip-size", "1.3 mm");
    typed.put("air-temperature", "22 C");
    typed.put("panel-temperature", "21 C");
    typed.put("humidity", "50 %");
    for (int coat = 1; coat <= 2; coat++) {
      for (int pass = 1; pass <= 6; pass++) {
        String at = ".c" + coat + ".p" + pass;
        if (pass > 1) {
          typed.put("pass-spacing" + at, (pass < 4 ? 84 : 58 + pass) + " mm");
        }
        typed.put("distance-start" + at, 104 + pass + " mm");
        typed.put("distance-middle" + at, "100 mm");
        typed.put("distance-end" + at, 118 + pass + " mm");
      }
    }
    double[] build = {55, 58, 59, 57, 54, 50, 53, 54, 52, 49, 39, 42, 42.5, 41, 38};
    for (int place = 1; place <= 15; place++) {
      typed.put("film-before.at" + place, 100 + place % 3 + " um");
      double after = 100 + place % 3 + build[place - 1];
      typed.put("film-after.at" + place, String.format(Locale.ROOT, "%.1f um", after));
    }
    return typed;
  }

  private HttpResponse<byte[]> get(String page) throws Exception {
    URI here = URI.create(browser.getCurrentUrl());
    URI address = here.resolve(page);
    Cookie session = browser.manage().getCookieNamed("JSESSIONID");
    HttpRequest request =
        HttpRequest.newBuilder(address)
            .header("Cookie", "JSESSIONID=" + session.getValue())
            .build();
    return Web.client().send(request, HttpResponse.BodyHandlers.ofByteArray());
  }
}
