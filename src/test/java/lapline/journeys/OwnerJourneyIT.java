package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.print.PrintOptions;
import org.openqa.selenium.support.ui.Select;

/** The owner sees who may do what today, what runs out, and prints a record for the inspector. */
class OwnerJourneyIT extends Journey {

  @Test
  void the_board_says_who_may_do_what_today_and_can_be_narrowed_to_a_skill() {
    signIn("owner");
    assertThat(title()).contains("unsupervised today");
    isAccessible();
    picture("skills-board-1440");
    new Select(until(By.id("skill"))).selectByValue("clear");
    browser.findElement(By.cssSelector(".filter .other")).click();
    waiting().until(d -> d.getCurrentUrl().contains("skill=clear"));
    assertThat(title()).endsWith(": Clear");
    width(390);
    isAccessible();
    picture("skills-board-390");
  }

  @Test
  void board_and_record_go_on_one_sheet_of_paper_each_with_what_explains_them() throws Exception {
    signIn("owner");
    try (PDDocument board = printed("skills-board-print")) {
      assertThat(board.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(board))
          .contains("A full ring is a good sign-off")
          .contains("Harrowgate")
          .contains("respirator fit tests");
    }
    browser.findElement(By.linkText("Nell Drystone")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/record"));
    isAccessible();
    picture("record-sign-offs-1440");
    try (PDDocument record = printed("record-print")) {
      assertThat(record.getNumberOfPages()).isEqualTo(1);
    }
  }

  private PDDocument printed(String name) throws Exception {
    byte[] file = Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent());
    Path folder = Path.of(System.getProperty("screenshots", "target/screenshots"));
    Files.createDirectories(folder);
    Files.write(folder.resolve(name + ".pdf"), file);
    return Loader.loadPDF(file);
  }

  @Test
  void what_runs_out_is_listed_by_how_soon() {
    signIn("registrar");
    for (int days : new int[] {30, 60, 90, 0}) {
      open("/shop/due?days=" + days);
      assertThat(title()).contains(days == 0 ? "expired" : "in the next " + days + " days");
      isAccessible();
    }
    open("/shop/due?days=90");
    picture("due-1440");
    width(390);
    isAccessible();
    picture("due-390");
  }

  @Test
  void a_persons_record_is_one_page_on_paper_and_says_what_it_does_not_show() throws Exception {
    signIn("owner");
    browser.findElement(By.linkText("Ada Quillfeather")).click();
    waiting().until(d -> d.getCurrentUrl().contains("/shop/record"));
    assertThat(title()).startsWith("Ada Quillfeather may do ");
    assertThat(text()).contains("respirator fit tests");
    isAccessible();
    picture("record-1440");
    for (String paper : new String[] {"a4", "letter"}) {
      try (PDDocument file = Loader.loadPDF(pdf("pdf-" + paper))) {
        assertThat(file.getNumberOfPages()).isEqualTo(1);
        assertThat(new PDFTextStripper().getText(file))
            .contains("Training record: Ada Quillfeather")
            .contains("Clear")
            .contains("respirator fit tests");
      }
    }
    width(390);
    isAccessible();
    picture("record-390");
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

  @Test
  void an_apprentice_sees_their_own_record_and_nobody_elses_board() {
    signIn("apprentice1");
    open("/shop/skills-board");
    assertThat(title()).isEqualTo("This page is not for your role");
    open("/shop/due");
    assertThat(title()).isEqualTo("This page is not for your role");
  }
}
