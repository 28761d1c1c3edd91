package lapline.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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

  private static Set<String> described() throws IOException {
    Set<String> ways = new TreeSet<>();
    try (InputStream in =
        DescriptionTest.class.getResourceAsStream("/lapline/exchange/openapi.yaml")) {
      Map<?, ?> all = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in);
      ((Map<?, ?>) all.get("paths"))
          .forEach(
              (path, methods) ->
                  ((Map<?, ?>) methods)
                      .keySet().stream()
                          .map(String::valueOf)
                          .filter(METHODS::contains)
                          .forEach(
                              m -> ways.add(m.toUpperCase(java.util.Locale.ROOT) + " " + path)));
    }
    return ways;
  }
}
