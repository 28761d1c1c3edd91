package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The registrar looks whether the course's files are in order. */
class NoticesJourneyIT extends Journey {

  @Test
  void a_registrar_sees_that_all_is_in_order_and_an_apprentice_is_told_it_is_not_theirs() {
    signIn("registrar");
    open("/office/notices");
    assertThat(title()).isEqualTo("The course’s files are in order");
    for (int width : List.of(390, 820, 1440)) {
      width(width);
      isAccessible();
      picture("notices-" + width);
    }
    signOut();
    signIn("apprentice2");
    open("/office/notices");
    assertThat(title()).isEqualTo("This page is not for your role");
  }
}
