package lapline.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.annotation.WebFilter;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;

/**
 * What breaks outside the pages, such as a picture or a file on its way in, gets its number in the
 * log too, and the page that says so can show it.
 */
@WebFilter("/*")
public class BrokenRequests extends HttpFilter {

  @Override
  protected void doFilter(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws IOException, ServletException {
    try {
      chain.doFilter(request, response);
    } catch (IOException | ServletException | RuntimeException | Error e) {
      if (response.isCommitted()) {
        // half an answer is out; the server cuts it off
        throw e;
      }
      TroubleNumber.give(request, e);
      response.sendError(HttpServletResponse.SC_INTERNAL_SERVER_ERROR);
    }
  }
}
