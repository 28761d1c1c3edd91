package lapline.server;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.random.RandomGenerator;

/** Hands out time, chance and settings, so that nothing else has to reach for them. */
@ApplicationScoped
public class Ground {

  @Produces
  Clock clock() {
    return Clock.systemUTC();
  }

  @Produces
  RandomGenerator chance() {
    return new SecureRandom();
  }

  @Produces
  Settings settings() {
    return Settings.fromSystem();
  }
}
