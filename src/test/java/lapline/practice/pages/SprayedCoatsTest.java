package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lapline.practice.Cell;
import lapline.practice.PanelEntry;
import lapline.practice.PanelOutline;
import lapline.practice.Reading;
import lapline.practice.WrittenPanel;
import org.junit.jupiter.api.Test;

/** Steps are counted from the upper edge down, and so are the passes drawn; panel of 400 mm. */
class SprayedCoatsTest {
  private static final PanelOutline PANEL =
      WrittenPanel.COURSE.find("clear/two-coats").orElseThrow().panel();

  private static Reading read(Cell cell, double value) {
    return new Reading(cell, value, 0.005, "");
  }

  private static List<Double> centres(Reading... more) {
    List<Reading> all = new ArrayList<>(Stream.of(more).toList());
    all.add(read(Cell.pass("distance-start", 1, 1), 0.15));
    all.add(read(Cell.pass("pass-spacing", 1, 2), 0.1));
    all.add(read(Cell.pass("pass-spacing", 1, 3), 0.08));
    SprayedCoat coat = new SprayedCoats(PANEL, PanelEntry.of(all)).all().get(0);
    return coat.passes().stream().map(SprayedCoat.Pass::centre).toList();
  }

  private static void are(List<Double> centres, double... wanted) {
    for (int i = 0; i < wanted.length; i++) {
      assertThat(centres.get(i)).isCloseTo(wanted[i], within(1e-9));
    }
  }

  @Test
  void they_lie_about_the_middle_where_nobody_wrote_where_the_first_one_lay() {
    are(centres(), 0.29, 0.19, 0.11);
  }

  @Test
  void and_from_there_on_where_somebody_did() {
    are(centres(read(Cell.coat("first-pass", 1), 0.02)), 0.38, 0.28, 0.2);
  }
}
