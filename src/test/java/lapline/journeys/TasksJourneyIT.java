package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** An instructor asks whether a practice task and its targets are any good. */
class TasksJourneyIT extends Journey {

  @Test
  void an_instructor_reads_how_a_task_went_and_goes_on_to_its_targets() {
    signIn("instructor1");
    width(390);
    open("/teach/tasks");
    assertThat(title()).containsPattern("practice panel");
    isAccessible();
    pictures("tasks");

    width(390);
    open("/teach/task?task=clear/two-coats");
    assertThat(title()).startsWith("Two coats of clear on a flat panel");
    assertThat(text()).contains("Numbers and eye", "Range over reading");
    isAccessible();
    pictures("task");

    width(390);
    until(By.cssSelector("main .actions a.main")).click();
    untilText("Targets");
    assertThat(browser.getCurrentUrl()).contains("/office/targets?task=clear");
  }
}
