package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever is sent to whichever page, by whomever: an answer in words, never a broken page, never a
 * trace. Pages are found by walking from link to link and by reading which parameters the pages
 * declare, so a new page is tried without a line here.
 */
class BadInputIT {
  private static final List<String> GARBAGE =
      List.of(
          "",
          "x",
          "-1",
          "999999999999",
          "99999999-9999-9999-9999-999999999999",
          "../../WEB-INF/web.xml",
          "<script>alert(1)</script>",
          "#{1+1}",
          "\u0000",
          "\ud83d\ude00".repeat(20),
          "a".repeat(1000));
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final Pattern DECLARED =
      Pattern.compile("viewParam name=\"(\\w+)\"|#\\{param\\.(\\w+)}");

  @ParameterizedTest
  @ValueSource(strings = {"", "apprentice1", "instructor1", "examiner", "owner", "registrar"})
  void garbage_in_any_parameter_of_a_linked_page_is_answered_in_words(String who) throws Exception {
    Visitor visitor = who.isEmpty() ? Visitor.nobody() : Visitor.as(who);
    List<String> broken = new ArrayList<>();
    for (String address : walk(visitor)) {
      for (String spoilt : spoilt(address)) {
        check(visitor.get(spoilt), broken);
      }
    }
    assertThat(broken).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "apprentice1", "instructor1", "examiner", "owner", "registrar"})
  void garbage_in_every_parameter_of_every_page_is_answered_in_words(String who) throws Exception {
    Visitor visitor = who.isEmpty() ? Visitor.nobody() : Visitor.as(who);
    List<String> broken = new ArrayList<>();
    Set<String> names = declared();
    assertThat(names).contains("attempt", "person", "unit", "page");
    for (String page : pages()) {
      for (String value : GARBAGE) {
        String all =
            names.stream()
                .map(n -> n + "=" + Visitor.encoded(value))
                .collect(Collectors.joining("&"));
        check(visitor.get(page + "?" + all), broken);
      }
    }
    assertThat(broken).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "apprentice1", "instructor1", "examiner", "owner", "registrar"})
  void a_form_that_the_server_no_longer_knows_leads_back_to_its_page(String who) throws Exception {
    Visitor visitor = who.isEmpty() ? Visitor.nobody() : Visitor.as(who);
    List<String> broken = new ArrayList<>();
    for (String address : walk(visitor)) {
      for (Visitor.Form form : Visitor.forms(visitor.get(address).body())) {
        if (form.fields().containsKey("jakarta.faces.ViewState")) {
          for (String state : List.of("-1:-1", "12345:67890", "garbage", "", "a:b")) {
            check(visitor.send(form.with("jakarta.faces.ViewState", state)), broken);
          }
          check(Visitor.nobody().send(form), broken);
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void a_broken_parameter_opens_no_page_that_is_closed_to_the_role() throws Exception {
    Visitor apprentice = Visitor.as("apprentice1");
    for (String page : pages()) {
      int plain = apprentice.get(page).statusCode();
      if (plain == 403) {
        for (String name : declared()) {
          assertThat(apprentice.get(page + "?" + name + "=x").statusCode())
              .as(page + " with a broken " + name)
              .isIn(403, 404);
        }
      }
    }
  }

  @Test
  void unknown_pages_and_methods_are_refused_in_words() throws Exception {
    Visitor visitor = Visitor.as("registrar");
    List<String> broken = new ArrayList<>();
    for (String address :
        List.of(
            "/nothing-here",
            "/learn/nothing",
            "/learn/nothing.xhtml",
            "/learn/../WEB-INF/web.xml",
            "/WEB-INF/web.xml",
            "/jakarta.faces.resource/none.css?ln=lapline",
            "/jakarta.faces.resource/x?ln=../../WEB-INF",
            "/learn/today;jsessionid=x",
            "/%00",
            "/learn/%ff")) {
      HttpResponse<String> answer = visitor.get(address);
      check(answer, broken);
      assertThat(answer.body()).doesNotContain("web-app");
    }
    for (String page : pages()) {
      for (String method : List.of("PUT", "DELETE", "OPTIONS", "PATCH", "HEAD")) {
        check(visitor.send(method, page, "text/plain", ""), broken);
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void a_body_that_is_no_form_or_far_too_long_is_refused() throws Exception {
    List<String> broken = new ArrayList<>();
    for (String page : List.of("/sign-in", "/setup", "/check")) {
      Visitor visitor = Visitor.nobody();
      check(visitor.send("POST", page, "multipart/form-data", "no boundary"), broken);
      check(visitor.send("POST", page, "multipart/form-data; boundary=b", "--b\r\nbroken"), broken);
      check(visitor.send("POST", page, "text/plain", "a=b"), broken);
      check(visitor.send("POST", page, FORM, "%zz=%&&=="), broken);
      check(visitor.send("POST", page, FORM, "a=" + "b".repeat(9_000_000)), broken);
      check(visitor.send("POST", page, FORM, "a=b&".repeat(5_000)), broken);
    }
    assertThat(broken).isEmpty();
  }

  /** It is read to its end all the same, since a browser that is cut off shows its own error. */
  @Test
  void a_form_too_long_to_be_typed_is_told_so_and_the_next_visitor_is_served() throws Exception {
    String tooLong = "a=" + "b".repeat(64 * 1024 * 1024);
    assertToldThatItCannotBeRead(BodyPublishers.ofString(tooLong));
    assertThat(Visitor.nobody().get("/sign-in").statusCode()).isEqualTo(200);
  }

  /** It may be of any length, and would be read into memory. */
  @Test
  void a_form_that_does_not_say_how_long_it_is_is_told_so() throws Exception {
    byte[] small = "a=b".getBytes(StandardCharsets.UTF_8);
    assertToldThatItCannotBeRead(
        BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(small)));
  }

  private static void assertToldThatItCannotBeRead(BodyPublisher body) throws Exception {
    HttpResponse<String> answer = Visitor.nobody().send("POST", "/sign-in", FORM, body);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).startsWith("What was sent could not be read").contains("too long");
  }

  private static void check(HttpResponse<String> answer, List<String> broken) {
    String body = answer.body();
    boolean traced = body.contains("Exception") || body.contains("\tat ");
    boolean open = body.contains("<script>alert(1)");
    if (answer.statusCode() >= 500 && answer.statusCode() != 501 || traced || open) {
      String address = answer.request().uri().toString();
      broken.add(
          answer.statusCode()
              + " "
              + answer.request().method()
              + " "
              + address.substring(0, Math.min(300, address.length())));
    }
  }

  /** One address of each page and set of parameters that this person can reach by links. */
  private static Collection<String> walk(Visitor visitor) throws Exception {
    Map<String, String> seen = new LinkedHashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of("/", "/sign-in", "/setup", "/check"));
    while (!open.isEmpty()) {
      String address = open.pop();
      if (isPage(address) && seen.putIfAbsent(shape(address), address) == null) {
        open.addAll(Visitor.links(visitor.get(address).body()));
      }
    }
    return seen.values();
  }

  private static boolean isPage(String address) {
    return !address.contains("jakarta.faces.resource") && !address.startsWith("/api/");
  }

  private static String shape(String address) {
    return address.replaceAll("=[^&]*", "=");
  }

  /** The address with each of its parameters spoilt in turn, and taken away. */
  private static List<String> spoilt(String address) {
    int at = address.indexOf('?');
    List<String> all = new ArrayList<>();
    if (at > 0) {
      List<String> parts = List.of(address.substring(at + 1).split("&"));
      for (String part : parts) {
        String others =
            parts.stream().filter(p -> !p.equals(part)).collect(Collectors.joining("&"));
        String start = address.substring(0, at) + "?" + others;
        all.add(start);
        String name = part.split("=")[0];
        GARBAGE.forEach(g -> all.add(start + "&" + name + "=" + Visitor.encoded(g)));
        all.add(start + "&" + name + "=%C3%28");
      }
    }
    return all;
  }

  private static List<String> pages() {
    Path root = Path.of("src/main/webapp");
    return files(root, ".xhtml")
        .map(f -> "/" + root.relativize(f).toString().replace(".xhtml", ""))
        .filter(p -> !p.startsWith("/WEB-INF") && !p.startsWith("/resources"))
        // it says that something broke, and so answers as if it had
        .filter(p -> !p.equals("/problem"))
        .toList();
  }

  private static Set<String> declared() {
    return Stream.concat(
            files(Path.of("src/main/webapp"), ".xhtml"),
            files(Path.of("src/main/java"), "Page.java"))
        .flatMap(f -> DECLARED.matcher(text(f)).results())
        .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Stream<Path> files(Path root, String ending) {
    try {
      return Files.walk(root).filter(f -> f.toString().endsWith(ending));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
