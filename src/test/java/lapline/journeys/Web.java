package lapline.journeys;

import java.net.http.HttpClient;

/**
 * How programs of the tests speak to the server: HTTP/1.1. The JDK's own try to change an open
 * connection to HTTP/2 broke off once where a request with a body was refused.
 */
public final class Web {
  private Web() {}

  public static HttpClient client() {
    return builder().build();
  }

  public static HttpClient.Builder builder() {
    return HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1);
  }
}
