package lapline.server;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;

/** What the page shows that says that something broke. */
@Named
@RequestScoped
public class TroublePage {
  @Inject private HttpServletRequest request;

  public String getNumber() {
    Object number = request.getAttribute(TroubleNumber.ATTRIBUTE);
    return number == null ? "" : number.toString();
  }

  /** Where the person was before, on this server; empty where the browser does not say. */
  public String getBack() {
    return back(request.getHeader("Referer"), request.getHeader("Host"));
  }

  static String back(String referer, String host) {
    if (referer == null || host == null) {
      return "";
    }
    try {
      URI from = new URI(referer);
      String path = from.getRawPath() == null ? "" : from.getRawPath();
      // two strokes at the start would lead to another server
      boolean here = host.equals(from.getRawAuthority()) && path.matches("/([^/].*)?");
      String query = from.getRawQuery() == null ? "" : "?" + from.getRawQuery();
      return here ? path + query : "";
    } catch (URISyntaxException e) {
      return "";
    }
  }
}
