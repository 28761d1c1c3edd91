package lapline.exams.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CalculationReferenceTest {
  private static final Percentage PRINTED = Percentage.withPercentage(1e-7);

  @ParameterizedTest
  @CsvFileSource(resources = "shop-arithmetic.csv", useHeadersInDisplayName = true)
  void shop_arithmetic_agrees_with_its_reference(String word, String values, double result) {
    Calculation calculation = Calculation.named(word).orElseThrow();
    Map<String, Double> given = new HashMap<>();
    Arrays.stream(values.split(" "))
        .map(pair -> pair.split("="))
        .forEach(pair -> given.put(pair[0], Double.valueOf(pair[1])));

    assertThat(given.keySet()).containsExactlyInAnyOrderElementsOf(calculation.needs());
    assertThat(calculation.of(given)).isCloseTo(result, PRINTED);
  }

  @Test
  void every_calculation_has_a_row() throws Exception {
    Set<String> rows;
    try (var in = getClass().getResourceAsStream("shop-arithmetic.csv")) {
      rows =
          new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
              .lines()
              .map(line -> line.split(",")[0])
              .collect(Collectors.toSet());
    }
    assertThat(rows).containsAll(Calculation.words());
  }
}
