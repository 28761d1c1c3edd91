package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import lapline.pages.drawing.Paper;
import lapline.pages.drawing.PrintedSheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.print.PageMargin;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** An apprentice prints the task sheet from its page. */
class TaskSheetJourneyIT extends AtThePanel {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "preparing/flat-panel",
        "masking/hatch-lid-aperture",
        "coverage/spray-out-card",
        "coverage/base-over-spot",
        "clear/two-coats"
      })
  void it_is_one_sheet_of_either_paper_and_its_code_can_be_scanned(String task) throws Exception {
    signIn("apprentice9");
    open("/learn/start?task=" + task);
    until(By.cssSelector("#start\\:go, main .actions a.main")).click();
    waiting().until(d -> d.getCurrentUrl().contains("attempt="));
    String attempt = attempt();
    for (Paper paper : Paper.values()) {
      open("/learn/task-sheet?" + attempt + "&paper=" + paper.name().toLowerCase());
      String code = until(By.id("pdf")).getDomAttribute("download").replace(".pdf", "");
      PrintedSheet sheet = printed(paper, task.replace('/', '-'));
      assertThat(sheet.pages()).as("%s", paper).isEqualTo(1);
      assertThat(sheet.decoded()).endsWith("/s/" + code);
      assertThat(sheet.smallest()).isGreaterThan(7.9);
    }
  }

  /** apprentice14 thinks in metric units, apprentice9 in US units. */
  @ParameterizedTest
  @CsvSource({
    "apprentice14, about 100 mm across, 50 to 75 mm past, 140 kPa for",
    "apprentice9, about 4 in across, 2 to 3 in past, 20 psi for"
  })
  void its_words_give_quantities_in_the_readers_units(
      String who, String prepare, String step, String pressure) {
    signIn(who);
    open("/learn/start?task=coverage/base-over-spot");
    until(By.cssSelector("#start\\:go, main .actions a.main")).click();
    waiting().until(d -> d.getCurrentUrl().contains("attempt="));
    open("/learn/task-sheet?" + attempt());
    assertThat(until(By.tagName("main")).getText())
        .contains(prepare, step, pressure)
        .doesNotContain("{", "}");
    for (int pixels : new int[] {390, 1440}) {
      width(pixels);
      browser.executeScript("document.querySelector('.words').scrollIntoView()");
      picture("task-sheet-units-" + who + "-" + pixels);
    }
  }

  private PrintedSheet printed(Paper paper, String name) throws IOException {
    PrintOptions options = new PrintOptions();
    options.setPageSize(new PageSize(paper.height() / 10, paper.width() / 10));
    options.setPageMargin(new PageMargin(0, 0, 0, 0));
    byte[] file = Base64.getDecoder().decode(browser.print(options).getContent());
    Path folder = Path.of(System.getProperty("screenshots", "target/screenshots"));
    Files.createDirectories(folder);
    Files.write(folder.resolve("sheet-" + name + "-" + paper + ".pdf"), file);
    return PrintedSheet.of(file);
  }
}
