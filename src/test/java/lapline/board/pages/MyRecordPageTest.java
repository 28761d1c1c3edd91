package lapline.board.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.signoff.Evidence;
import org.junit.jupiter.api.Test;

/** A figure of the rule leads to what it counts, from the unit's own page too. */
class MyRecordPageTest {

  @Test
  void panels_lead_to_their_list_and_not_to_the_top_of_the_page_they_stand_on() {
    MyRecordPage page = new MyRecordPage();
    Evidence.Line panels = new Evidence.Line("signoff.evidence.panels", 2, 4, false, null);
    assertThat(page.way(panels)).isEqualTo("/learn/unit");
    assertThat(page.part(panels)).isEqualTo("panels");
    Evidence.Line exam = new Evidence.Line("signoff.evidence.exam", 1, 1, true, null);
    assertThat(page.way(exam)).isEqualTo("/learn/paper");
    assertThat(page.part(exam)).isNull();
  }
}
