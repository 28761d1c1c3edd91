package lapline.journeys;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Somebody who speaks HTTP without a browser, and so can send what no browser would: broken
 * parameters, old forms, bodies that are no forms.
 */
final class Visitor {
  private static final String SITE = System.getProperty("lapline.url", "http://localhost:9080");
  private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
  private static final Pattern FORM = Pattern.compile("(?s)<form\\b([^>]*)>(.*?)</form>");
  private static final Pattern FIELD = Pattern.compile("<(?:input|select|textarea|button)\\b[^>]*");

  private final HttpClient client =
      Web.builder()
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.NORMAL)
          .build();

  /** A form as it stands on a page: where it goes and what it would send. */
  record Form(String action, Map<String, String> fields) {
    Form with(String field, String value) {
      Map<String, String> changed = new LinkedHashMap<>(fields);
      changed.put(field, value);
      return new Form(action, changed);
    }

    /** As it is sent when of all its buttons this one was pressed. */
    Form pressed(String button, String... others) {
      Map<String, String> changed = new LinkedHashMap<>(fields);
      changed.keySet().removeAll(Set.of(others));
      changed.put(button, "pressed");
      return new Form(action, changed);
    }
  }

  static Visitor nobody() {
    return new Visitor();
  }

  static Visitor as(String signInName) throws Exception {
    return as(signInName, DemoAccounts.password());
  }

  static Visitor as(String signInName, String password) throws Exception {
    Visitor visitor = new Visitor();
    Form form = forms(visitor.get("/sign-in").body()).iterator().next();
    HttpResponse<String> home =
        visitor.send(form.with("sign-in:name", signInName).with("sign-in:password", password));
    if (!home.body().contains("id=\"out\"")) {
      throw new IllegalStateException(signInName + " was not let in");
    }
    return visitor;
  }

  HttpResponse<String> get(String address) throws IOException, InterruptedException {
    return client.send(to(address).build(), BodyHandlers.ofString());
  }

  HttpResponse<String> send(Form form) throws IOException, InterruptedException {
    return send("POST", form.action(), "application/x-www-form-urlencoded", encoded(form.fields()));
  }

  HttpResponse<String> send(String method, String address, String kind, String body)
      throws IOException, InterruptedException {
    return send(method, address, kind, BodyPublishers.ofString(body));
  }

  HttpResponse<String> send(String method, String address, String kind, BodyPublisher body)
      throws IOException, InterruptedException {
    HttpRequest request = to(address).header("Content-Type", kind).method(method, body).build();
    return client.send(request, BodyHandlers.ofString());
  }

  private static HttpRequest.Builder to(String address) {
    return HttpRequest.newBuilder(URI.create(SITE + address));
  }

  static String encoded(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(f -> encoded(f.getKey()) + "=" + encoded(f.getValue()))
        .collect(Collectors.joining("&"));
  }

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Addresses of this site that a page leads to. */
  static Set<String> links(String page) {
    return LINK.matcher(page)
        .results()
        .map(m -> m.group(1).replace("&amp;", "&"))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  static Set<Form> forms(String page) {
    return FORM.matcher(page)
        .results()
        .map(Visitor::form)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Form form(MatchResult found) {
    Map<String, String> fields = new LinkedHashMap<>();
    FIELD
        .matcher(found.group(2))
        .results()
        .map(MatchResult::group)
        .filter(f -> !attribute(f, "name").isEmpty())
        .forEach(f -> fields.put(attribute(f, "name"), attribute(f, "value")));
    return new Form(attribute(found.group(1), "action").replace("&amp;", "&"), fields);
  }

  private static String attribute(String tag, String name) {
    var found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
    return found.find() ? found.group(1) : "";
  }
}
