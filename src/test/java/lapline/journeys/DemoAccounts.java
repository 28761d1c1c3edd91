package lapline.journeys;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The password that the demo workshop drew when it was made. */
public final class DemoAccounts {
  private DemoAccounts() {}

  public static String password() {
    Path file =
        Path.of(System.getProperty("lapline.test.data", "target/test-data"), "demo-accounts.txt");
    try {
      return Files.readAllLines(file).get(0).substring("password ".length());
    } catch (IOException e) {
      throw new UncheckedIOException("the demo workshop has not been made: " + file, e);
    }
  }
}
