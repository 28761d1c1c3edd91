package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What Lapline has acknowledged is there after it was killed in the middle of saving. Kills the
 * server that is running on the test ports, so it runs alone: {@code -Dit.test=KillWhileSaving}.
 */
class KillWhileSaving {
  private static final String SITE = System.getProperty("lapline.url", "http://localhost:9080");
  private static final Path DATA = Path.of(System.getProperty("lapline.test.data"));
  private static final Path HOME = Path.of(System.getProperty("jboss.home"));
  private static final String CELL = "squares-seen.c1";
  private static final ObjectMapper JSON = new ObjectMapper();
  private final HttpClient client = Web.client();

  @Test
  void the_last_acknowledged_reading_is_there_after_each_kill() throws Exception {
    String token = token();
    String attempt =
        send(token, "POST", "", Map.of("task", "coverage/spray-out-card"))
            .at("/attempt/id")
            .asText();
    int acknowledged = 0;
    for (int kill = 1; kill <= 3; kill++) {
      acknowledged = saveUntilKilled(token, attempt, acknowledged);
      assertThat(acknowledged).isPositive();
      startAgain();
      JsonNode kept = send(token, "GET", "/" + attempt, null).at("/readings").get(CELL);
      // one more may have been written without its answer having got through
      assertThat(kept.asInt()).isBetween(acknowledged, acknowledged + 1);
    }
  }

  private int saveUntilKilled(String token, String attempt, int last) throws Exception {
    Thread killer = new Thread(KillWhileSaving::killSoon);
    killer.start();
    int acknowledged = last;
    long revision = Long.MAX_VALUE;
    try {
      while (true) {
        revision = save(token, attempt, acknowledged + 1, revision);
        acknowledged++;
      }
    } catch (java.io.IOException gone) {
      killer.join();
      return acknowledged;
    }
  }

  /** The revision after it; the base of the first is beyond all, since nobody else writes. */
  private long save(String token, String attempt, int value, long base) throws Exception {
    var reading = Map.of("cell", CELL, "typed", String.valueOf(value), "base", base);
    var patch = Map.of("since", 0, "readings", List.of(reading));
    JsonNode answer = send(token, "PATCH", "/" + attempt + "/readings", patch);
    assertThat(answer.get("conflicts")).isEmpty();
    return answer.get("revision").asLong();
  }

  private static void killSoon() {
    try {
      TimeUnit.MILLISECONDS.sleep(2500);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    server().forEach(ProcessHandle::destroyForcibly);
    while (!server().isEmpty()) {
      Thread.onSpinWait();
    }
  }

  private static List<ProcessHandle> server() {
    return ProcessHandle.allProcesses()
        .filter(
            p ->
                Optional.of(p.info())
                    .flatMap(ProcessHandle.Info::arguments)
                    .map(a -> String.join(" ", a).contains("-Dlapline.data=" + DATA))
                    .orElse(false))
        .toList();
  }

  private void startAgain() throws Exception {
    new ProcessBuilder(
            "bash",
            HOME.resolve("bin/lapline.sh").toString(),
            "-Djboss.socket.binding.port-offset=" + (URI.create(SITE).getPort() - 8080),
            "-Dlapline.data=" + DATA,
            "-Dlapline.demo=true",
            "-Dlapline.demo.story=false")
        .redirectErrorStream(true)
        .redirectOutput(new File(DATA.getParent().toFile(), "killed-server.log"))
        .start();
    Instant end = Instant.now().plus(Duration.ofMinutes(4));
    while (!up()) {
      assertThat(Instant.now()).as("started again").isBefore(end);
      TimeUnit.SECONDS.sleep(1);
    }
  }

  private static boolean up() throws InterruptedException {
    try {
      return Visitor.nobody().get("/sign-in").statusCode() == 200;
    } catch (java.io.IOException notYet) {
      return false;
    }
  }

  private static String token() throws Exception {
    Visitor visitor = Visitor.as("apprentice9");
    Visitor.Form form =
        Visitor.forms(visitor.get("/account").body()).stream()
            .filter(f -> f.fields().containsKey("token:make"))
            .findFirst()
            .orElseThrow();
    String page = visitor.send(form.with("token:name", "saver")).body();
    var found = Pattern.compile("lap_\\w+").matcher(page);
    assertThat(found.find()).isTrue();
    return found.group();
  }

  private JsonNode send(String token, String method, String where, Object body) throws Exception {
    var answer =
        client.send(
            HttpRequest.newBuilder(URI.create(SITE + "/api/v1/attempts" + where))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .method(
                    method,
                    body == null
                        ? BodyPublishers.noBody()
                        : BodyPublishers.ofString(JSON.writeValueAsString(body)))
                .build(),
            BodyHandlers.ofString());
    assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 201);
    return JSON.readTree(answer.body());
  }
}
