package lapline.journeys;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who asks for addresses without a browser, with the cookies of one. */
public final class Caller {
  static final String URL = System.getProperty("lapline.url", "http://localhost:9080");
  private static final Pattern VIEW =
      Pattern.compile("name=\"jakarta.faces.ViewState\"[^>]*value=\"([^\"]*)\"");

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
    Matcher view = VIEW.matcher(get("/sign-in").text());
    if (!view.find()) {
      throw new IllegalStateException("the sign-in page has no form");
    }
    return form(
        "/sign-in",
        Map.of(
            "sign-in",
            "sign-in",
            "sign-in:name",
            name,
            "sign-in:password",
            password,
            "sign-in:go",
            "go",
            "jakarta.faces.ViewState",
            view.group(1)));
  }

  public Answer get(String path) {
    return send(request(path).GET());
  }

  Answer form(String path, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
            .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
            .collect(Collectors.joining("&"));
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
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

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
