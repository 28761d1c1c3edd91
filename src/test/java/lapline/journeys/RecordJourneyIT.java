package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/**
 * One page about one person, for an inspector: what they may do today, what stands in the way of
 * the rest, who signed when, by what proof, and what the page does not show. Nell's mask has no fit
 * test at the moment, so she may not spray.
 */
class RecordJourneyIT extends Journey {
  private static final String MAY =
      "Nell Drystone may do this unsupervised today: Preparing a panel, Masking";

  /** What an inspector asks for, on the page and on paper alike. */
  private static final String[] ASKED = {
    MAY,
    "Harrowgate",
    "As of",
    "Coverage and step-out, Clear: suspended since",
    "Fit test of the breathing mask has run out",
    "by Xenia Holloway-Pike, rule version",
    "Had been signed off",
    "accepted at the bench",
    "Check it: code",
    "Every step, latest first",
    "Isocyanate training",
    "respirator fit tests"
  };

  @Test
  void the_owner_finds_what_the_inspector_asks_for_on_the_page_and_on_one_sheet() throws Exception {
    signIn("owner");
    openRecord("Nell Drystone");
    assertThat(title()).isEqualTo(MAY);
    assertThat(said(text())).contains(ASKED);
    assertThat(browser.findElements(By.cssSelector(".may-not .caution"))).hasSize(1);
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      isAccessible();
      picture("record-" + pixels);
    }
    try (PDDocument paper = printed("record-print")) {
      assertThat(paper.getNumberOfPages()).isEqualTo(1);
      assertThat(said(new PDFTextStripper().getText(paper))).contains(ASKED);
    }
    for (String paper : new String[] {"a4", "letter"}) {
      try (PDDocument file = Loader.loadPDF(pdf("pdf-" + paper))) {
        assertThat(file.getNumberOfPages()).isEqualTo(1);
        assertThat(said(new PDFTextStripper().getText(file)))
            .contains("Training record: Nell Drystone")
            .contains(ASKED);
      }
    }
  }

  @Test
  void who_has_no_sign_off_may_do_nothing_and_the_record_says_how_far_they_are() {
    signIn("owner");
    openRecord("Ada Quillfeather");
    assertThat(title()).isEqualTo("Ada Quillfeather may do nothing unsupervised today");
    assertThat(text()).contains("Preparing a panel: not yet");
    assertThat(browser.findElements(By.cssSelector(".may-not .caution"))).isEmpty();
    isAccessible();
    pictures("record-nothing");
  }

  @Test
  void the_person_sees_the_same_of_themselves_and_whom_to_ask_and_nobody_elses() throws Exception {
    signIn("owner");
    openRecord("Nell Drystone");
    String address = browser.getCurrentUrl();
    signOut();
    signIn("apprentice14");
    open("/learn/record");
    assertThat(title()).isEqualTo(MAY.replace("Nell Drystone may", "You may"));
    assertThat(said(text()))
        .contains(
            "Coverage and step-out, Clear: suspended since",
            "Fit test of the breathing mask has run out",
            "Ask");
    for (int pixels : new int[] {390, 820, 1440}) {
      width(pixels);
      isAccessible();
      picture("my-record-" + pixels);
    }
    try (PDDocument paper = printed("my-record-print")) {
      assertThat(said(new PDFTextStripper().getText(paper)))
          .contains(
              "You may do this unsupervised today",
              "Coverage and step-out, Clear: suspended since");
    }
    signOut();
    signIn("apprentice5");
    browser.get(address);
    assertThat(title()).isEqualTo("Not for your role");
  }

  private void openRecord(String name) {
    browser.findElement(By.linkText(name)).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/record"));
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
