package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A person makes a token, and a program scores and keeps panels with it. */
class ProgramJourneyIT extends Journey {
  private static final String API =
      System.getProperty("lapline.url", "http://localhost:9080") + "/api/v1";
  private static final ObjectMapper JSON = new ObjectMapper();
  private static int made;

  private final HttpClient http = Web.client();
  private String named;

  @Test
  void every_example_of_the_description_is_answered_as_it_says() throws Exception {
    String token = token("apprentice5");
    JsonNode paths = description().get("paths");
    for (JsonNode example :
        paths.at("/~1scores/post/requestBody/content/application~1json/examples")) {
      HttpResponse<String> answer = send("POST", "/scores", token, example.get("value").toString());
      assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
      assertThat(JSON.readTree(answer.body()).get("practiceScore").asDouble())
          .isBetween(0.0, 100.0);
    }
    JsonNode start = paths.at("/~1attempts/post/requestBody/content/application~1json/example");
    HttpResponse<String> made = send("POST", "/attempts", token, start.toString());
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    String id = JSON.readTree(made.body()).at("/attempt/id").asText();
    JsonNode patch =
        paths.at("/~1attempts~1{id}~1readings/patch/requestBody/content/application~1json/example");
    assertThat(send("PATCH", "/attempts/" + id + "/readings", token, patch.toString()).statusCode())
        .isEqualTo(200);
    assertThat(send("GET", "/attempts", token, null).body()).contains(id);
    String started = JSON.readTree(made.body()).at("/attempt/started").asText();
    assertThat(Instant.parse(started)).as("a date-time as described").isBefore(Instant.now());
    isRefusedToAnother(id);
  }

  @Test
  void a_stroke_is_read_and_its_places_are_planned_as_the_examples_say() throws Exception {
    String token = token("apprentice5");
    JsonNode read = answeredAsDescribed("/stroke-readings", token);
    assertThat(read.at("/findings/0/fault").asText()).isEqualTo("arcing");
    assertThat(answeredAsDescribed("/reading-plans", token).get("places")).hasSize(12);
    String narrow = "{\"panel\":{\"width\":0.6,\"height\":0.4},\"fan\":{\"width\":-1},";
    isProblem(
        send(
            "POST",
            "/reading-plans",
            token,
            narrow + "\"overlap\":{\"meant\":0.7},\"coats\":[{}],\"count\":9,\"uncertainty\":0.1}"),
        422,
        "fan.width");
    isProblem(send("POST", "/stroke-readings", token, "{}"), 400, "panel");
    String noCoat = narrow.replace("-1", "0.2") + "\"overlap\":{\"meant\":0.7},\"coats\":[null]}";
    isProblem(send("POST", "/stroke-readings", token, noCoat), 400, "coats");
    isProblem(send("POST", "/stroke-readings", token, firstPassAt(0.9)), 422, "first pass");
    assertThat(send("POST", "/stroke-readings", token, firstPassAt(-0.01)).statusCode())
        .as("a first pass above the upper edge")
        .isEqualTo(200);
  }

  /** The example with where the first pass of its first coat lay, metres below the upper edge. */
  private String firstPassAt(double below) throws Exception {
    JsonNode question =
        description()
            .at("/paths/~1stroke-readings/post/requestBody/content/application~1json/example");
    ((ObjectNode) question.at("/coats/0")).put("first", below);
    return question.toString();
  }

  /** Every number of the example answer within 2 % of what is answered. */
  private JsonNode answeredAsDescribed(String path, String token) throws Exception {
    JsonNode post = description().get("paths").get(path).get("post");
    String question = post.at("/requestBody/content/application~1json/example").toString();
    HttpResponse<String> answer = send("POST", path, token, question);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    JsonNode body = JSON.readTree(answer.body());
    isLike(body, post.at("/responses/200/content/application~1json/example"), path);
    return body;
  }

  private static void isLike(JsonNode there, JsonNode example, String where) {
    if (example.isNumber()) {
      assertThat(there.asDouble()).as(where).isCloseTo(example.asDouble(), withinPercentage(2.0));
    } else if (example.isContainerNode()) {
      assertThat(there.size()).as(where).isEqualTo(example.size());
      example
          .fields()
          .forEachRemaining(f -> isLike(there.get(f.getKey()), f.getValue(), where + f.getKey()));
      for (int i = 0; example.isArray() && i < example.size(); i++) {
        isLike(there.get(i), example.get(i), where + i);
      }
    } else {
      assertThat(there).as(where).isEqualTo(example);
    }
  }

  private void isRefusedToAnother(String id) throws Exception {
    signOut();
    HttpResponse<String> refused = send("GET", "/attempts/" + id, token("apprentice6"), null);
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.body()).contains("rights of the person").doesNotContain("page");
    HttpResponse<String> nowhere =
        send("GET", "/attempts/00000000-0000-0000-0000-000000000000", null, null);
    assertThat(nowhere.statusCode()).as("who says no token hears no more").isEqualTo(401);
  }

  @Test
  void what_is_not_there_or_too_long_is_told_in_a_programs_words() throws Exception {
    String token = token("instructor2");
    String none = "/00000000-0000-0000-0000-000000000000";
    isProblem(send("GET", "/attempts" + none, token, null), 404, "no such thing in your workshop");
    isProblem(send("GET", "/attempts/x", token, null), 404, "no such thing in your workshop");
    isProblem(
        send("GET", "/sign-offs" + none + "/certificate.pdf", token, null), 404, "no such thing");
    String tooLong = "{\"task\":\"clear/two-coats\",\"readings\":{\"x\":\"" + "9".repeat(1_100_000);
    isProblem(send("POST", "/scores", token, tooLong + "\"}}"), 413, "longer than 1 MB");
    isProblem(send("DELETE", "/attempts", token, null), 405, "does not answer that method");
  }

  private static void isProblem(HttpResponse<String> answer, int status, String says) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
    assertThat(answer.headers().firstValue("Content-Type").orElse(""))
        .startsWith("application/problem+json");
    assertThat(answer.body()).contains(says).doesNotContain("page");
  }

  @Test
  void what_an_instructor_put_down_at_the_bench_is_kept_as_described() throws Exception {
    String learner = token("apprentice9");
    String attempt = scored(learner);
    String bench = "/attempts/" + attempt + "/bench";
    signOut();
    String token = token("instructor1");
    JsonNode patch = description().get("paths").get("/attempts/{id}/bench").get("patch");
    String example = patch.at("/requestBody/content/application~1json/example").toString();
    isProblem(send("PATCH", bench, learner, example), 403, "rights of the person");
    isProblem(send("PATCH", bench, token, example), 409, "Somebody else has signed in");
    open("/teach/bench?attempt=" + attempt);
    String self = until(By.id("bench")).getDomAttribute("data-grader");
    String mine = "{\"grader\":\"" + self + "\",\"remark\":\"Even.\",\"marks\":{}}";
    HttpResponse<String> kept = send("PATCH", bench, token, mine);
    assertThat(kept.statusCode()).as(kept.body()).isEqualTo(200);
    assertThat(JSON.readTree(kept.body()).get("savedTime").asText()).matches("\\d\\d:\\d\\d");
  }

  /** A card that was scored through the interface, and so waits for the bench. */
  private String scored(String token) throws Exception {
    String body =
        """
        {"task":"coverage/spray-out-card",
         "readings":{"squares-seen.c1":"20","squares-seen.c2":"6","squares-seen.c3":"0"}}
        """;
    HttpResponse<String> made = send("POST", "/attempts", token, body);
    assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
    String id = JSON.readTree(made.body()).at("/attempt/id").asText();
    HttpResponse<String> judged = send("POST", "/attempts/" + id + "/score", token, "{}");
    assertThat(judged.statusCode()).as(judged.body()).isEqualTo(200);
    assertThat(JSON.readTree(judged.body()).at("/attempt/state").asText()).isEqualTo("scored");
    return id;
  }

  private JsonNode description() throws Exception {
    String yaml = send("GET", "/openapi.yaml", null, null).body();
    return JSON.valueToTree(new Load(LoadSettings.builder().build()).loadFromString(yaml));
  }

  @Test
  void what_is_wrong_is_named_field_by_field_and_no_trace_is_shown() throws Exception {
    String token = token("apprentice6");
    HttpResponse<String> wrong =
        send(
            "POST",
            "/scores",
            token,
            "{\"task\":\"coverage/spray-out-card\",\"readings\":{\"squares-seen.c1\":\"many\"}}");
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.headers().firstValue("Content-Type").orElse(""))
        .contains("application/problem+json");
    assertThat(wrong.body()).contains("readings.squares-seen.c1").doesNotContain("Exception");
    for (String body :
        new String[] {
          "", "{", "[]", "{\"task\":7,\"readings\":{}}", "{\"task\":\"no/such\",\"readings\":{}}"
        }) {
      HttpResponse<String> answer = send("POST", "/scores", token, body);
      assertThat(answer.statusCode()).as(body + answer.body()).isBetween(400, 499);
      assertThat(answer.body()).doesNotContain("Exception").doesNotContain("at lapline");
    }
  }

  @Test
  void without_a_good_token_nothing_opens() throws Exception {
    HttpResponse<String> none = send("GET", "/attempts", null, null);
    assertThat(none.statusCode()).isEqualTo(401);
    assertThat(none.headers().firstValue("WWW-Authenticate").orElse("")).startsWith("Bearer");
    assertThat(none.body()).contains("Authorization: Bearer");
    assertThat(send("GET", "/attempts", "lap_wrong", null).statusCode()).isEqualTo(401);
    String token = token("apprentice7");
    assertThat(send("GET", "/attempts", token, null).statusCode()).isEqualTo(200);
    open("/account");
    browser.findElement(By.cssSelector("[aria-label='Revoke " + named + "']")).click();
    untilText("no longer opens anything");
    assertThat(send("GET", "/attempts", token, null).statusCode()).isEqualTo(401);
  }

  private String token(String person) {
    signIn(person);
    open("/account");
    // a name that no other test has given a program of this person
    named = "test program " + ++made;
    type("token:name", named);
    press("token:make");
    return until(By.id("fresh-token")).getText();
  }

  private HttpResponse<String> send(String method, String path, String token, String body)
      throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(API + path));
    if (token != null) {
      request.header("Authorization", "Bearer " + token);
    }
    request.header("Content-Type", "application/json");
    request.method(
        method,
        body == null
            ? HttpRequest.BodyPublishers.noBody()
            : HttpRequest.BodyPublishers.ofString(body));
    return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }
}
