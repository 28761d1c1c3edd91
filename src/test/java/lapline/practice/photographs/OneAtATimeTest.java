package lapline.practice.photographs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import lapline.practice.photographs.PhotographRefusedException.Reason;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class OneAtATimeTest {
  private final OneAtATime turn = new OneAtATime(Duration.ofMillis(20));

  @AfterEach
  void nobodyElseIsInterrupted() {
    Thread.interrupted();
  }

  @Test
  void who_comes_while_another_picture_lies_there_is_asked_to_come_again() {
    turn.run(
        () -> {
          assertThatThrownBy(() -> turn.run(() -> "second"))
              .isInstanceOfSatisfying(
                  PhotographRefusedException.class,
                  e -> assertThat(e.reason()).isEqualTo(Reason.BUSY));
          return "first";
        });
    assertThat(turn.<String, RuntimeException>run(() -> "third")).isEqualTo("third");
  }

  @Test
  void a_picture_that_spoils_the_work_leaves_the_place_free() {
    assertThatThrownBy(
            () ->
                turn.run(
                    () -> {
                      throw new IllegalStateException("damaged");
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(turn.<String, RuntimeException>run(() -> "next")).isEqualTo("next");
  }

  @Test
  void a_server_that_stops_does_not_wait_for_the_place() {
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> turn.run(() -> "late"))
        .isInstanceOfSatisfying(
            PhotographRefusedException.class, e -> assertThat(e.reason()).isEqualTo(Reason.BUSY));
    assertThat(Thread.currentThread().isInterrupted()).isTrue();
  }
}
