package lapline.server;

import jakarta.inject.Inject;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.annotation.WebFilter;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.security.Principal;
import java.util.UUID;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.SignedIn;

/**
 * Finds the signed-in person afresh for each request, so that a withdrawn role or a closed account
 * counts at once, and sends the headers that keep pages safe.
 */
@WebFilter(
    urlPatterns = "/*",
    dispatcherTypes = {DispatcherType.REQUEST, DispatcherType.ERROR})
public class WhoIsActing extends HttpFilter {
  private static final String POLICY =
      "default-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline';"
          + " script-src 'self' 'unsafe-inline'; frame-ancestors 'none'; form-action 'self'";

  @Inject private transient PeopleRecords records;
  @Inject private transient SignedIn signedIn;

  @Override
  protected void doFilter(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws IOException, ServletException {
    response.setHeader("Content-Security-Policy", POLICY);
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "same-origin");
    if (isResource(request)) {
      chain.doFilter(request, response);
      return;
    }
    response.setHeader("Cache-Control", "no-store");
    Principal principal = request.getUserPrincipal();
    if (principal != null && signedIn.maybe().isEmpty()) {
      Person person = records.person(UUID.fromString(principal.getName())).orElse(null);
      if (person == null || !person.active()) {
        request.getSession().invalidate();
        response.sendRedirect(request.getContextPath() + "/sign-in");
        return;
      }
      signedIn.act(person);
    }
    chain.doFilter(request, response);
  }

  private static boolean isResource(HttpServletRequest request) {
    return request.getServletPath().startsWith("/jakarta.faces.resource");
  }
}
