package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A person makes a token, and a program scores and keeps panels with it. */
class ProgramJourneyIT extends Journey {
  private static final String API =
      System.getProperty("lapline.url", "http://localhost:9080") + "/api/v1";
  private static final ObjectMapper JSON = new ObjectMapper();
  private final HttpClient http = HttpClient.newHttpClient();

  @Test
  void every_example_of_the_description_is_answered_as_it_says() throws Exception {
    String token = token("apprentice5");
    String yaml = send("GET", "/openapi.yaml", null, null).body();
    Map<?, ?> description =
        (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(yaml);
    JsonNode paths = JSON.valueToTree(description).get("paths");
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

  private void isRefusedToAnother(String id) throws Exception {
    signOut();
    HttpResponse<String> refused = send("GET", "/attempts/" + id, token("apprentice6"), null);
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(refused.body()).contains("rights of the person").doesNotContain("page");
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
    browser.findElement(By.cssSelector("[aria-label='Revoke test program']")).click();
    untilText("no longer opens anything");
    assertThat(send("GET", "/attempts", token, null).statusCode()).isEqualTo(401);
  }

  private String token(String person) {
    signIn(person);
    open("/account");
    type("token:name", "test program");
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
