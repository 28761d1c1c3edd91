package lapline.server;

import jakarta.inject.Inject;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.annotation.WebFilter;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import lapline.pages.Messages;

/**
 * Refuses what no page can read: a form that is cut off, one of far too many fields or far too long
 * to be typed, and the sign NUL, which PostgreSQL does not keep. The answer is plain text, since a
 * page would read it again.
 */
@WebFilter("/*")
public class UnreadableForms extends HttpFilter {
  private static final Logger LOG = Logger.getLogger("lapline.pages");

  private static final long MOST_TYPED = 64L * 1024 * 1024;

  @Inject private transient Messages words;

  @Override
  protected void doFilter(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws IOException, ServletException {
    if (readable(request)) {
      chain.doFilter(request, response);
      return;
    }
    response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
    response.setContentType("text/plain;charset=UTF-8");
    response.getWriter().write(words.say("frame.unreadable-form"));
  }

  private static boolean readable(HttpServletRequest request) {
    return !isTooLong(request) && isWhole(request);
  }

  /** A form without files is read into memory; one that does not say its length may be any. */
  private static boolean isTooLong(HttpServletRequest request) {
    String kind = String.valueOf(request.getContentType()).toLowerCase(Locale.ROOT);
    long length = request.getContentLengthLong();
    return "POST".equals(request.getMethod())
        && kind.startsWith("application/x-www-form-urlencoded")
        && (length < 0 || length > MOST_TYPED);
  }

  private static boolean isWhole(HttpServletRequest request) {
    try {
      return request.getParameterMap().values().stream()
          .flatMap(Arrays::stream)
          .noneMatch(value -> value.indexOf('\0') >= 0);
    } catch (IllegalStateException tooLarge) {
      // files over their limit: whoever takes files says how large they may be, beside the field
      return true;
    } catch (RuntimeException e) {
      // the server names no narrower type for a form that it cannot parse
      LOG.log(Level.FINE, "a form could not be read", e);
      return false;
    }
  }
}
