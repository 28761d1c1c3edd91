package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URL;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import lapline.demo.Arranged;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.container.test.api.RunAsClient;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;

/**
 * One page about one person, for an inspector: what they may do today, what stands in the way of
 * the rest, who signed when, by what proof, and what the page does not show.
 */
@ExtendWith(ArquillianExtension.class)
@RunAsClient
class RecordJourneyIT extends Journey {
  private static final String REASON = "The fit test of the mask has run out.";
  private static final String MAY = "Ansel Corbel may do this unsupervised today: Masking";

  /** What an inspector asks for, on the page and on paper alike. */
  private static final String[] ASKED = {
    MAY,
    "Corbel Panel Works. As of",
    "Preparing a panel: suspended since",
    "by Emory Corbel. Reason: " + REASON,
    "Coverage and step-out: not yet",
    "Clear: not begun",
    "by Emory Corbel, rule version",
    "Had been signed off",
    "accepted at the bench",
    "Check it: code",
    "Every step, latest first",
    "Isocyanate training",
    "respirator fit tests"
  };

  @ArquillianResource private URL desk;
  private Arranged shop;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  /** Signed off for two operations, of which one is stopped. */
  @BeforeEach
  void arrange() throws Exception {
    shop = Arranging.workshop(desk, "Corbel");
    enter("examiner");
    decide("masking", "grant", "Masked a car with me, stage by stage.");
    untilText("Signed off. It stands in the record");
    decide("preparing", "suspend", REASON);
    untilText("The step stands in the record.");
    signOut();
  }

  @Test
  void the_owner_finds_what_the_inspector_asks_for_on_the_page_and_on_one_sheet() throws Exception {
    enter("owner");
    browser.findElement(By.linkText("Ansel Corbel")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/record"));
    assertThat(title()).isEqualTo(MAY);
    assertThat(said(text())).contains(ASKED);
    assertThat(browser.findElements(By.cssSelector(".may-not .caution"))).hasSize(1);
    seen("record");
    try (PDDocument paper = printed("record-print")) {
      assertThat(paper.getNumberOfPages()).isEqualTo(1);
      assertThat(said(new PDFTextStripper().getText(paper))).contains(ASKED);
    }
    for (String paper : new String[] {"a4", "letter"}) {
      try (PDDocument file = Loader.loadPDF(pdf("pdf-" + paper))) {
        assertThat(file.getNumberOfPages()).isEqualTo(1);
        assertThat(said(new PDFTextStripper().getText(file)))
            .contains("Training record: Ansel Corbel")
            .contains(ASKED);
      }
    }
    open("/shop/skills-board");
    browser.findElement(By.linkText("Bea Corbel")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/record"));
    assertThat(title()).isEqualTo("Bea Corbel may do nothing unsupervised today");
    assertThat(said(text())).contains("Coverage and step-out, Clear: not begun");
    seen("record-nothing");
  }

  @Test
  void the_person_sees_the_same_of_themselves_and_whom_to_ask_and_nobody_elses() throws Exception {
    enter("apprentice");
    open("/learn/record");
    assertThat(title()).isEqualTo(MAY.replace("Ansel Corbel may", "You may"));
    assertThat(said(text()))
        .contains("Preparing a panel: suspended since", REASON, "Ask Emory Corbel");
    seen("my-record");
    try (PDDocument paper = printed("my-record-print")) {
      assertThat(said(new PDFTextStripper().getText(paper)))
          .contains("You may do this unsupervised today", "suspended since");
    }
    signOut();
    enter("beginner");
    open("/shop/record?person=" + shop.one("learner"));
    assertThat(title()).isEqualTo("This page is not for your role");
  }

  private void enter(String what) {
    signIn(shop.people().get(what), shop.password());
  }

  private void decide(String skill, String button, String reason) {
    open("/examine/decision?skill=" + skill + "&person=" + shop.one("learner"));
    type("decide:reason", reason);
    press("decide:" + button);
  }

  private void seen(String name) {
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      isAccessible();
      picture(name + "-" + pixels);
    }
  }

  /** Words as they are read, however the lines are broken. */
  private static String said(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  private byte[] pdf(String link) throws Exception {
    String address = browser.findElement(By.id(link)).getDomProperty("href");
    String session = browser.manage().getCookieNamed("JSESSIONID").getValue();
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address))
            .header("Cookie", "JSESSIONID=" + session)
            .build();
    HttpResponse<byte[]> answer =
        Web.client().send(request, HttpResponse.BodyHandlers.ofByteArray());
    assertThat(answer.statusCode()).isEqualTo(200);
    Path folder = Path.of(System.getProperty("screenshots", "target/screenshots"));
    Files.createDirectories(folder);
    Files.write(folder.resolve("record-" + link + ".pdf"), answer.body());
    return answer.body();
  }
}
