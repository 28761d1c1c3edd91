package lapline.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import lapline.demo.ScenarioClock;
import org.junit.jupiter.api.Test;

/** Who guesses passwords has to wait; who mistypes a few has not. */
class SignInThrottleTest {
  private final ScenarioClock clock = new ScenarioClock(Instant.parse("2031-03-04T14:05:00Z"));
  private final SignInThrottle throttle = new SignInThrottle(clock);

  @Test
  void a_name_may_be_tried_five_times_and_then_not_from_anywhere() {
    wrong(SignInThrottle.TRIES_PER_NAME - 1, "ansel", "10.0.0.1");
    assertThat(throttle.open("ansel", "10.0.0.1")).isTrue();
    wrong(1, "ansel", "10.0.0.1");
    assertThat(throttle.open("ansel", "10.0.0.1")).isFalse();
    assertThat(throttle.open("ansel", "10.0.0.2")).isFalse();
    assertThat(throttle.open("bea", "10.0.0.1")).isTrue();
  }

  @Test
  void after_a_quarter_of_an_hour_from_the_first_try_the_name_is_open_again() {
    wrong(SignInThrottle.TRIES_PER_NAME, "ansel", "10.0.0.1");
    clock.pass(SignInThrottle.WINDOW);
    assertThat(throttle.open("ansel", "10.0.0.1")).isFalse();
    clock.pass(Duration.ofMillis(1));
    assertThat(throttle.open("ansel", "10.0.0.1")).isTrue();
  }

  @Test
  void the_right_password_forgives_the_name() {
    wrong(SignInThrottle.TRIES_PER_NAME - 1, "ansel", "10.0.0.1");
    throttle.rightPassword("ansel");
    wrong(SignInThrottle.TRIES_PER_NAME - 1, "ansel", "10.0.0.1");
    assertThat(throttle.open("ansel", "10.0.0.1")).isTrue();
  }

  @Test
  void one_address_that_tries_many_names_has_to_wait_with_every_name() {
    for (int i = 0; i < SignInThrottle.TRIES_PER_ADDRESS; i++) {
      assertThat(throttle.open("name" + i, "10.0.0.1")).isTrue();
      wrong(1, "name" + i, "10.0.0.1");
    }
    throttle.rightPassword("name0");
    assertThat(throttle.open("ansel", "10.0.0.1")).isFalse();
    assertThat(throttle.open("ansel", "10.0.0.2")).isTrue();
  }

  private void wrong(int times, String name, String address) {
    for (int i = 0; i < times; i++) {
      throttle.wrongPassword(name, address);
    }
  }
}
