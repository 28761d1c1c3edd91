package lapline.server;

import jakarta.servlet.http.HttpServletRequest;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The number under which the log holds what broke, so that who saw the page can name it. */
final class TroubleNumber {
  /** Where the page that says so looks for it. */
  static final String ATTRIBUTE = "number";

  private static final Logger LOG = Logger.getLogger("lapline.pages");

  private TroubleNumber() {}

  static void give(HttpServletRequest request, Throwable cause) {
    String number = UUID.randomUUID().toString().substring(0, 8);
    LOG.log(Level.SEVERE, "a page broke, number " + number, cause);
    request.setAttribute(ATTRIBUTE, number);
  }
}
