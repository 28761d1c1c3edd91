package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** The owner sees who may do what today, and what runs out. */
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
  void the_board_goes_on_one_sheet_of_paper_with_what_explains_it() throws Exception {
    signIn("owner");
    try (PDDocument board = printed("skills-board-print")) {
      assertThat(board.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(board))
          .contains("A full ring is a good sign-off")
          .contains("Harrowgate")
          .contains("respirator fit tests");
    }
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
  void an_apprentice_sees_their_own_record_and_nobody_elses_board() {
    signIn("apprentice1");
    open("/shop/skills-board");
    assertThat(title()).isEqualTo("This page is not for your role");
    open("/shop/due");
    assertThat(title()).isEqualTo("This page is not for your role");
  }
}
