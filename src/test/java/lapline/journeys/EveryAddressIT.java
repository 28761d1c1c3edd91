package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URL;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.demo.Arranged;
import lapline.journeys.Caller.Answer;
import lapline.journeys.SiteMap.Way;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.container.test.api.RunAsClient;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The wall round a workshop, asked from outside: every page, every resource and every servlet,
 * found by itself, is asked for the neighbour's things by somebody of each role. The answer never
 * tells anything of theirs and never breaks.
 */
@ExtendWith(ArquillianExtension.class)
@RunAsClient
class EveryAddressIT {
  /** For people without an account. */
  private static final Set<String> PUBLIC =
      Set.of("/sign-in", "/setup", "/password", "/check", "/not-allowed", "/not-found", "/problem");

  /** What has to be sent for an address to be asked at all; else an empty object. */
  private static final Map<String, String> BODIES =
      Map.of("PATCH /api/v1/attempts/{id}/readings", "{\"since\":0,\"readings\":[]}");

  private static Arranged ours;
  private static Arranged theirs;

  @ArquillianResource private URL desk;

  @Deployment(testable = false)
  static WebArchive desk() {
    return Arranging.desk();
  }

  @BeforeEach
  void arrange() throws Exception {
    if (theirs == null) {
      ours = Arranging.workshop(desk, "Homestead");
      theirs = Arranging.workshop(desk, "Fencerow");
    }
  }

  @Test
  void no_page_tells_anybody_anything_of_another_workshop() {
    Map<String, String> broken = new TreeMap<>();
    everybody()
        .forEach(
            (who, caller) -> {
              for (Way page : pages()) {
                boolean opens = caller.get(Addresses.plain(page)).status() == 200;
                for (String address : Addresses.naming(page, theirs)) {
                  Answer answer = caller.get(address);
                  check(who + " " + address, address, answer, broken);
                  if (answer.status() == 200 && !opens) {
                    broken.put(who + " " + address, "was answered");
                  }
                }
              }
            });
    assertThat(broken).isEmpty();
  }

  @Test
  void no_page_breaks_on_ids_that_are_none() {
    Map<String, String> broken = new TreeMap<>();
    everybody()
        .forEach(
            (who, caller) -> {
              for (Way page : pages()) {
                for (String address : Addresses.naming(page, ours)) {
                  String wrong = address.replaceAll("=[^&]*", "=no-such%00thing");
                  check(who + " " + wrong, wrong, caller.get(wrong), broken);
                }
              }
            });
    assertThat(broken).isEmpty();
  }

  @Test
  void no_resource_gives_a_program_anything_of_another_workshop() {
    Map<String, String> broken = new TreeMap<>();
    for (Map.Entry<String, String> token : ours.tokens().entrySet()) {
      for (Way way : SiteMap.resources()) {
        for (String address : filled(way)) {
          Answer answer = program(token.getValue(), way, address);
          String asked = token.getKey() + " " + way.method() + " " + address;
          check(asked, address, answer, broken);
          if (way.path().contains("{") && !Set.of(403, 404).contains(answer.status())) {
            broken.put(asked, "was answered " + answer.status());
          }
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  private static Answer program(String token, Way way, String address) {
    String body = BODIES.getOrDefault(way.toString(), "{}");
    HttpRequest.Builder request =
        Caller.request(address)
            .header("Authorization", "Bearer " + token)
            .header("Content-Type", "application/json");
    boolean bare = Set.of("GET", "DELETE").contains(way.method());
    return new Caller()
        .send(
            request.method(
                way.method(), bare ? BodyPublishers.noBody() : BodyPublishers.ofString(body)));
  }

  /** With one thing of every kind in the path, and what may be asked behind it. */
  private static List<String> filled(Way way) {
    List<Way> ways = new ArrayList<>();
    if (way.path().contains("{")) {
      theirs.things().values().stream()
          .filter(ids -> !ids.isEmpty())
          .map(ids -> way.path().replaceAll("\\{\\w+}", ids.get(0)))
          .forEach(path -> ways.add(new Way(way.method(), path, way.parameters())));
    } else {
      ways.add(way);
    }
    return ways.stream()
        .flatMap(
            w -> Stream.concat(Stream.of(Addresses.plain(w)), Addresses.naming(w, theirs).stream()))
        .distinct()
        .toList();
  }

  @Test
  void every_servlet_is_known_here_and_keeps_the_photographs_of_others() {
    assertThat(SiteMap.servlets())
        .as("a new servlet has to be asked for the neighbour's things here")
        .containsExactly("/learn/photographs/*", "/sign-out");
    assertThat(SiteMap.servletsInDescriptor()).containsExactly("*.xhtml");
    String photograph = "/learn/photographs/" + theirs.one("photograph");
    Map<String, String> broken = new TreeMap<>();
    everybody()
        .forEach(
            (who, caller) -> {
              for (String address : List.of(photograph, photograph + "?small")) {
                expect(404, who + " " + address, caller.get(address), broken);
              }
              expect(404, who + " takes away", post(caller, photograph), broken);
              expect(404, who + " adds", post(caller, "/learn/photographs"), broken);
            });
    assertThat(broken).isEmpty();
    Caller learner = Caller.signedIn(theirs.people().get("apprentice"), theirs.password());
    assertThat(learner.get(photograph).status()).isEqualTo(200);
  }

  private static Answer post(Caller caller, String address) {
    String attempt = theirs.one("waiting");
    String body =
        "--edge\r\nContent-Disposition: form-data; name=\"attempt\"\r\n\r\n"
            + attempt
            + "\r\n--edge\r\nContent-Disposition: form-data; name=\"photograph\"; filename=\"a.jpg\"\r\n\r\n"
            + "no picture\r\n--edge--\r\n";
    return caller.send(
        Caller.request(address)
            .header("Content-Type", "multipart/form-data; boundary=edge")
            .header("Origin", Caller.URL)
            .POST(BodyPublishers.ofString(body)));
  }

  private static void expect(int status, String asked, Answer answer, Map<String, String> broken) {
    if (answer.status() != status) {
      broken.put(asked, "was answered " + answer.status());
    }
  }

  @Test
  void who_is_not_signed_in_is_led_to_the_sign_in_page_from_every_page() {
    Map<String, String> broken = new TreeMap<>();
    for (Way page : SiteMap.pages()) {
      for (String ending : List.of("", ".xhtml")) {
        Answer answer = new Caller().get(page.path() + ending);
        boolean led = answer.status() == 302 && answer.header("Location").contains("/sign-in");
        boolean open = PUBLIC.contains(page.path()) && answer.status() < 500;
        if (PUBLIC.contains(page.path()) ? !open : !led) {
          broken.put(page.path() + ending, answer.status() + " " + answer.header("Location"));
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void without_a_token_no_resource_answers_but_the_description() {
    Map<String, String> broken = new TreeMap<>();
    for (Way way : SiteMap.resources()) {
      String address = way.path().replaceAll("\\{\\w+}", theirs.one("attempt"));
      int status = program("lap_none", way, address).status();
      if (status != (address.endsWith("/openapi.yaml") ? 200 : 401)) {
        broken.put(way.toString(), "was answered " + status);
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void enough_was_found_for_the_rules_to_mean_something() {
    assertThat(SiteMap.pages()).hasSizeGreaterThan(25);
    assertThat(SiteMap.resources()).hasSizeGreaterThan(7);
    assertThat(SiteMap.pages().stream().map(Way::path)).containsAll(PUBLIC);
    assertThat(marks("")).hasSizeGreaterThan(50);
  }

  private static List<Way> pages() {
    return SiteMap.pages().stream().filter(p -> !PUBLIC.contains(p.path())).toList();
  }

  private static Map<String, Caller> everybody() {
    Map<String, Caller> all = new LinkedHashMap<>();
    ours.people().forEach((who, name) -> all.put(who, Caller.signedIn(name, ours.password())));
    return all;
  }

  /** Nothing broke, and nothing of theirs stands in the answer but what was asked for itself. */
  private static void check(
      String asked, String address, Answer answer, Map<String, String> broken) {
    if (answer.status() >= 500) {
      broken.put(asked, "broke: " + answer.status());
    }
    marks(address).stream()
        .filter(answer.text()::contains)
        .findFirst()
        .ifPresent(mark -> broken.put(asked, "tells " + mark));
  }

  private static Set<String> marks(String asked) {
    return Stream.concat(
            Stream.of(theirs.surname()), theirs.things().values().stream().flatMap(List::stream))
        .filter(mark -> !asked.contains(mark))
        .collect(Collectors.toSet());
  }
}
