package lapline.exchange;

import jakarta.annotation.Priority;
import jakarta.inject.Inject;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.ext.Provider;
import java.util.Set;
import lapline.people.ChangeAccount;
import lapline.people.SignedIn;

/**
 * Lets in who is signed in on a page or sends an access token. A change made through a page's
 * session must carry the header {@code X-Lapline: page}, which another site's page cannot send in a
 * person's name; a token is proof enough by itself.
 */
@Provider
@Priority(Priorities.AUTHENTICATION)
public class Door implements ContainerRequestFilter {
  static final String FROM_PAGE = "X-Lapline";
  private static final String BEARER = "Bearer ";
  private static final Set<String> READING =
      Set.of(HttpMethod.GET, HttpMethod.HEAD, HttpMethod.OPTIONS);

  @Inject private SignedIn signedIn;
  @Inject private ChangeAccount accounts;

  @Override
  public void filter(ContainerRequestContext request) {
    String authorization = request.getHeaderString(HttpHeaders.AUTHORIZATION);
    if (request.getUriInfo().getPath().equals("/" + OpenApiResource.PATH)) {
      return;
    }
    if (authorization != null && authorization.startsWith(BEARER)) {
      byToken(authorization.substring(BEARER.length()).strip());
    } else {
      byPage(request);
    }
  }

  private void byToken(String token) {
    signedIn.act(
        accounts
            .byToken(token)
            .orElseThrow(() -> new RefusedException(401, "exchange.token-not-good")));
  }

  private void byPage(ContainerRequestContext request) {
    if (signedIn.maybe().isEmpty()) {
      throw new RefusedException(401, "exchange.sign-in");
    }
    boolean changes = !READING.contains(request.getMethod());
    if (changes && !"page".equals(request.getHeaderString(FROM_PAGE))) {
      throw new RefusedException(403, "exchange.not-from-page");
    }
  }
}
