package lapline.journeys;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.print.PrintOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Wait;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A person in front of the running Lapline: opens pages, reads, types, presses. Waits for what a
 * person would see, never for time. Where no Chromium is installed the journeys say that they were
 * skipped; {@code -Djourneys=required} makes that an error.
 */
abstract class Journey {
  private static final String URL = System.getProperty("lapline.url", "http://localhost:9080");
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final int LOOKS = 5;
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  protected ChromeDriver browser;
  private Path profile;

  @RegisterExtension
  final AfterTestExecutionCallback pictureOnFailure =
      context -> {
        if (context.getExecutionException().isPresent() && browser != null) {
          picture(
              "failed-"
                  + context.getRequiredTestClass().getSimpleName()
                  + "-"
                  + context.getRequiredTestMethod().getName());
        }
      };

  @BeforeEach
  void openBrowser() throws IOException {
    boolean here = Files.exists(CHROMIUM) && Files.exists(DRIVER);
    if (!here && "required".equals(System.getProperty("journeys"))) {
      Assertions.fail("no Chromium: install Debian's chromium and chromium-driver");
    }
    Assumptions.assumeTrue(here, "journey skipped: no Chromium on this machine");
    profile = Files.createTempDirectory("lapline-journey");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    browser = new PatientBrowser(service, options);
    width(1440);
  }

  @AfterEach
  void closeBrowser() {
    if (browser != null) {
      browser.quit();
    }
  }

  protected void width(int pixels) {
    browser.manage().window().setSize(new Dimension(pixels, 900));
  }

  protected void open(String page) {
    browser.get(URL + page);
  }

  /** Signs in as one of the demo workshop's people, such as {@code apprentice1}. */
  protected void signIn(String signInName) {
    signIn(signInName, DemoAccounts.password());
  }

  protected void signIn(String signInName, String password) {
    open("/sign-in");
    type("sign-in:name", signInName);
    type("sign-in:password", password);
    press("sign-in:go");
    until(By.cssSelector("header.frame nav"));
    untilLoaded();
  }

  /**
   * A page that is asked for while the one before still loads would else be looked at too early.
   */
  private void untilLoaded() {
    waiting().until(d -> "complete".equals(browser.executeScript("return document.readyState")));
  }

  protected void signOut() {
    browser.findElement(By.cssSelector("#out input[type=submit]")).click();
    until(By.id("sign-in:name"));
  }

  protected void type(String id, String text) {
    waiting()
        .until(
            page -> {
              WebElement field = until(By.id(id));
              field.clear();
              field.sendKeys(text);
              return true;
            });
  }

  protected void press(String id) {
    waiting()
        .until(
            page -> {
              WebElement button = until(By.id(id));
              // as a person does, out from behind the main action that stays at the lower edge
              browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
              button.click();
              return true;
            });
  }

  protected WebElement until(By what) {
    return waiting().until(ExpectedConditions.visibilityOfElementLocated(what));
  }

  protected void untilText(String text) {
    waiting().until(page -> text().contains(text));
  }

  /**
   * Waits until a condition holds; looks again where the page was renewed between finding a thing
   * and reading it.
   */
  protected Wait<WebDriver> waiting() {
    return new WebDriverWait(browser, Duration.ofSeconds(15))
        .ignoring(StaleElementReferenceException.class);
  }

  protected String title() {
    return waiting().until(page -> until(By.tagName("h1")).getText());
  }

  /** All that is to be read; looked at again where another page came in while it was read. */
  protected String text() {
    for (int look = 1; ; look++) {
      try {
        return browser.findElement(By.tagName("body")).getText();
      } catch (WebDriverException pageLeft) {
        if (look == LOOKS) {
          throw pageLeft;
        }
      }
    }
  }

  /** Fails with the rules and places where the page on screen is not accessible (WCAG 2.2 AA). */
  protected void isAccessible() {
    Assertions.assertThat(barriers()).as("axe on " + browser.getCurrentUrl()).isEmpty();
  }

  /** The rules that the page on screen breaks, each with the places where. */
  protected List<String> barriers() {
    Results results =
        new AxeBuilder()
            .withTags(
                List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
            .analyze(browser);
    return results.getViolations().stream()
        .map(
            (Rule r) ->
                r.getId()
                    + ": "
                    + r.getHelp()
                    + " at "
                    + r.getNodes().stream().map(n -> n.getTarget().toString()).toList())
        .toList();
  }

  /** Pictures at the three widths that people use. */
  protected void pictures(String name) {
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      picture(name + "-" + pixels);
    }
  }

  /** The page as it comes out of a printer, kept for people to look at. */
  protected PDDocument printed(String name) throws IOException {
    byte[] file = Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent());
    Path folder = Path.of(System.getProperty("screenshots", "target/screenshots"));
    Files.createDirectories(folder);
    Files.write(folder.resolve(name + ".pdf"), file);
    return Loader.loadPDF(file);
  }

  /** Keeps a picture of the page for people to look at. */
  protected void picture(String name) {
    try {
      Path folder = Path.of(System.getProperty("screenshots", "target/screenshots"));
      Files.createDirectories(folder);
      Files.write(folder.resolve(name + ".png"), browser.getScreenshotAs(OutputType.BYTES));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
