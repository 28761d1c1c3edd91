package lapline.people.store;

import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.security.enterprise.identitystore.Pbkdf2PasswordHash;
import java.util.Map;
import lapline.people.Passwords;

/**
 * Passwords as PBKDF2 with HMAC-SHA-512, 210,000 rounds and a random salt each, the count that the
 * OWASP password storage guide gives for this function (from memory of the guide).
 */
@ApplicationScoped
public class Pbkdf2Passwords implements Passwords {
  @Inject private Pbkdf2PasswordHash function;

  @PostConstruct
  void configure() {
    function.initialize(
        Map.of(
            "Pbkdf2PasswordHash.Algorithm", "PBKDF2WithHmacSHA512",
            "Pbkdf2PasswordHash.Iterations", "210000",
            "Pbkdf2PasswordHash.SaltSizeBytes", "32",
            "Pbkdf2PasswordHash.KeySizeBytes", "32"));
  }

  @Override
  public String hash(char[] password) {
    return function.generate(password);
  }

  @Override
  public boolean matches(char[] password, String hash) {
    return function.verify(password, hash);
  }
}
