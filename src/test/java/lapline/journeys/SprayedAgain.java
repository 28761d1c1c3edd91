package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import lapline.content.Json;
import lapline.trade.stroke.StrokeFilm;
import lapline.trade.stroke.StrokeFilm.Change;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Somebody moves a slider beside a scored panel and sees what it would have been. */
final class SprayedAgain {
  private static final String EQUATIONS =
      """
      const done = arguments[arguments.length - 1];
      const [changes, places] = [arguments[0], arguments[1]];
      const page = document.getElementById('panel-what-if');
      const stroke = JSON.parse(document.getElementById('panel-data').textContent).stroke;
      import(new URL(page.dataset.equations, location.href)).then(m => done(changes.map(c => {
        const film = m.filmOf(m.changed(stroke, {step: stroke.step * c[0], distance: c[1], speed: c[2], missingAtEnds: c[3], coats: c[4]}));
        return places.map(p => film(p[0], p[1]) * 1e6);
      })));
      """;

  private final Journey journey;

  private SprayedAgain(Journey journey) {
    this.journey = journey;
  }

  /** From the result page that is open; leaves this page open. */
  static void see(Journey journey) throws Exception {
    new SprayedAgain(journey).see();
  }

  private void see() throws Exception {
    WebElement link = journey.until(By.partialLinkText("change one thing on this panel"));
    // out from under the bar that stays at the foot of the page
    journey.browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", link);
    link.click();
    journey.until(By.cssSelector("#panel-what-if[data-ready]"));
    journey.isAccessible();
    assertThat(cell("mean-then")).isEqualTo(cell("mean-was")).isNotEmpty();

    slide("speed", 200);
    double was = Double.parseDouble(cell("mean-was"));
    assertThat(Double.parseDouble(cell("mean-then"))).isCloseTo(was / 2, within(1.0));
    for (int overlap : new int[] {10, 30, 50, 80}) {
      slide("overlap", overlap);
      String drawn = journey.until(By.id("panel-what-if")).getDomAttribute("data-drawn-in");
      assertThat(Double.parseDouble(drawn)).as("milliseconds to redraw").isLessThan(100);
    }
    assertThat(journey.text()).contains("Overlap: 80");
    isInsideItsPicture();
    pressWhoCannotDrag();
    journey.press("back");
    assertThat(cell("mean-then")).isEqualTo(cell("mean-was"));
    journey.pictures("panel-what-if");
    isTheServersFilm();
  }

  private void isTheServersFilm() throws Exception {
    JsonNode data =
        new ObjectMapper()
            .readTree(
                journey.browser.findElement(By.id("panel-data")).getDomProperty("textContent"));
    StrokeFilm film = Json.read(data.get("stroke").toString(), StrokeFilm.class);
    List<List<Number>> changes =
        List.of(
            List.of(1, 1, 1, 0, 2),
            List.of(1.7, 1, 1, 0.3, 2),
            List.of(0.6, 1.5, 0.8, 0.1, 3),
            List.of(2.4, 0.7, 1.2, 0, 1));
    List<List<Double>> places =
        List.of(List.of(0.03, 0.05), List.of(0.31, 0.2), List.of(0.57, 0.39));
    List<?> there = (List<?>) journey.browser.executeAsyncScript(EQUATIONS, changes, places);
    for (int c = 0; c < changes.size(); c++) {
      List<Number> change = changes.get(c);
      StrokeFilm here =
          film.with(
              new Change(
                  film.step() * change.get(0).doubleValue(),
                  change.get(1).doubleValue(),
                  change.get(2).doubleValue(),
                  change.get(3).doubleValue(),
                  change.get(4).intValue()));
      for (int p = 0; p < places.size(); p++) {
        double micrometres = ((Number) ((List<?>) there.get(c)).get(p)).doubleValue();
        assertThat(micrometres)
            .as("change %d, place %d", c, p)
            .isCloseTo(1e6 * here.at(places.get(p).get(0), places.get(p).get(1)), within(1e-9));
      }
    }
  }

  /** A line that leaves the usual scale is not cut off: the scale grows with it, and says so. */
  private void isInsideItsPicture() {
    slide("speed", 100);
    slide("overlap", 40);
    double usual = topOfCut();
    slide("overlap", 90);
    assertThat(topOfCut()).isGreaterThan(usual);
    assertThat(topOfCut()).isGreaterThanOrEqualTo(Double.parseDouble(cell("mean-then")));
  }

  private double topOfCut() {
    return Double.parseDouble(journey.until(By.id("cut")).getDomAttribute("data-top"));
  }

  /** A slider under a glove: each press goes on by a step worth seeing, and the film follows. */
  private void pressWhoCannotDrag() {
    slide("overlap", 50);
    String before = cell("mean-then");
    journey.until(By.cssSelector("[data-slide=overlap][data-by='5']")).click();
    assertThat(journey.text()).contains("Overlap: 55");
    assertThat(cell("mean-then")).isNotEqualTo(before);
    journey.until(By.cssSelector("[data-slide=overlap][data-by='-5']")).click();
    assertThat(cell("mean-then")).isEqualTo(before);
  }

  private String cell(String id) {
    return journey.until(By.id(id)).getText();
  }

  private void slide(String id, int to) {
    WebElement slider = journey.until(By.id(id));
    journey.browser.executeScript(
        "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input'));",
        slider,
        to);
  }
}
