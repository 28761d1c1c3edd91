package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The description of the interface names each of its ways in, and none that is not there. */
class DescriptionTest {
  private static final Set<String> METHODS = Set.of("get", "post", "patch", "put", "delete");

  @Test
  void every_resource_is_described_and_everything_described_is_there() throws IOException {
    Set<String> there =
        SiteMap.resources().stream()
            .map(w -> w.toString().replace("/api/v1", ""))
            .filter(way -> !way.endsWith("/openapi.yaml"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(described()).isEqualTo(there);
  }

  /** What a program has to be ready for, wherever it asks. */
  @Test
  void every_way_in_says_how_it_may_be_refused() throws IOException {
    Set<String> untold = new TreeSet<>();
    operations(
        (way, operation) -> {
          Set<Object> told = new HashSet<>(((Map<?, ?>) operation.get("responses")).keySet());
          expected(way, operation).stream()
              .filter(status -> !told.contains(status))
              .forEach(status -> untold.add(way + " " + status));
        });
    assertThat(untold).isEmpty();
  }

  private static Set<String> expected(String way, Map<?, ?> operation) {
    Set<String> statuses = new TreeSet<>(Set.of("401", "500"));
    if (way.contains("{id}")) {
      statuses.addAll(Set.of("403", "404"));
    }
    if (operation.containsKey("requestBody")) {
      statuses.addAll(Set.of("400", "413"));
    }
    return statuses;
  }

  private static Set<String> described() throws IOException {
    Set<String> ways = new TreeSet<>();
    operations((way, operation) -> ways.add(way));
    return ways;
  }

  private static void operations(BiConsumer<String, Map<?, ?>> each) throws IOException {
    try (InputStream in =
        DescriptionTest.class.getResourceAsStream("/lapline/exchange/openapi.yaml")) {
      Map<?, ?> all = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in);
      ((Map<?, ?>) all.get("paths"))
          .forEach((path, methods) -> ofPath(path, (Map<?, ?>) methods, each));
    }
  }

  private static void ofPath(Object path, Map<?, ?> methods, BiConsumer<String, Map<?, ?>> each) {
    methods.forEach(
        (method, operation) -> {
          if (METHODS.contains(method)) {
            String way = method.toString().toUpperCase(Locale.ROOT) + " " + path;
            each.accept(way, (Map<?, ?>) operation);
          }
        });
  }
}
