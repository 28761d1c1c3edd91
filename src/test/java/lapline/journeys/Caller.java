package lapline.journeys;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Somebody who asks for addresses without a browser, with the cookies of one. */
public final class Caller {
  static final String URL = System.getProperty("lapline.url", "http://localhost:9080");

  private final CookieManager cookies = new CookieManager();
  private final HttpClient http = Web.builder().cookieHandler(cookies).build();

  /** What came back. */
  public record Answer(int status, String text, java.net.http.HttpHeaders headers) {
    public String header(String name) {
      return headers.firstValue(name).orElse("");
    }
  }

  public static Caller signedIn(String name, String password) {
    Caller visitor = new Caller();
    Answer answer = visitor.signIn(name, password);
    if (answer.status() != 302) {
      throw new IllegalStateException(name + " could not sign in: " + answer.status());
    }
    return visitor;
  }

  Answer signIn(String name, String password) {
    Visitor.Form form = Visitor.forms(get("/sign-in").text()).iterator().next();
    return form(
        form.action(), form.with("sign-in:name", name).with("sign-in:password", password).fields());
  }

  public Answer get(String path) {
    return send(request(path).GET());
  }

  Answer form(String path, Map<String, String> fields) {
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(Visitor.encoded(fields))));
  }

  static HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(URL + path));
  }

  Answer send(HttpRequest.Builder request) {
    try {
      HttpResponse<byte[]> answer =
          http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
      return new Answer(
          answer.statusCode(), new String(answer.body(), StandardCharsets.UTF_8), answer.headers());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The session the visitor is known by; empty where there is none. */
  String session() {
    return cookies.getCookieStore().getCookies().stream()
        .filter(c -> c.getName().equals("JSESSIONID"))
        .map(java.net.HttpCookie::getValue)
        .findFirst()
        .orElse("");
  }
}
