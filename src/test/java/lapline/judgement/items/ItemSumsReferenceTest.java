package lapline.judgement.items;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ItemSumsReferenceTest {

  /** By the R packages ltm 1.2-0 and psych 2.2.9, which agree; limits by SciPy 1.17.1, pearsonr. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.924, 0.112833, 0.0511977, 0.1736114",
    "2, 0.709, 0.153178, 0.0920592, 0.2131472",
    "3, 0.553, 0.172779, 0.1119853, 0.2322840",
    "4, 0.763, 0.144428, 0.0831798, 0.2045894",
    "5, 0.870, 0.121596, 0.0600560, 0.1822159"
  })
  void a_published_test_comes_out_as_other_programs_find(
      int item, double difficulty, double itemRest, double least, double most) throws IOException {
    ItemSums sums = ItemSums.NONE;
    for (int[] pattern : patterns()) {
      int others = IntStream.range(0, 5).map(i -> i == item - 1 ? 0 : pattern[i]).sum();
      for (int person = 0; person < pattern[5]; person++) {
        sums = sums.and(ItemSums.ofPaper(pattern[item - 1], others));
      }
    }

    assertThat(sums.papers()).isEqualTo(1000);
    assertThat(sums.difficulty()).hasValueCloseTo(difficulty, within(1e-9));
    assertThat(sums.itemRest()).hasValueCloseTo(itemRest, within(5.1e-7));
    ItemSums.Limits limits = sums.itemRestLimits().orElseThrow();
    assertThat(limits.least()).isCloseTo(least, within(5.1e-8));
    assertThat(limits.most()).isCloseTo(most, within(5.1e-8));
  }

  private static int[][] patterns() throws IOException {
    try (InputStream file = ItemSumsReferenceTest.class.getResourceAsStream("lsat-6.csv")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(l -> l.matches("[01],.*"))
          .map(l -> Arrays.stream(l.split(",")).mapToInt(Integer::parseInt).toArray())
          .toArray(int[][]::new);
    }
  }

  /** Invented: five persons in a perfect order, by exact fractions. */
  @ParameterizedTest
  @CsvSource({"0, 0.8, 0.514496", "1, 0.6, 0.720577", "2, 0.4, 0.720577", "3, 0.2, 0.514496"})
  void a_perfect_order_of_persons_is_worked_out_by_hand(
      int item, double difficulty, double itemRest) {
    ItemSums sums = ItemSums.NONE;
    for (int right = 0; right <= 4; right++) {
      int own = item < right ? 1 : 0;
      sums = sums.and(ItemSums.ofPaper(own, right - own));
    }

    assertThat(sums.difficulty()).hasValueCloseTo(difficulty, within(1e-12));
    assertThat(sums.itemRest()).hasValueCloseTo(itemRest, within(5.1e-7));
  }

  /** A straight line through all papers leaves no scatter to work limits out from. */
  @Test
  void full_correlation_and_three_papers_have_no_limits() {
    ItemSums three = ItemSums.ofPaper(0, 1).and(ItemSums.ofPaper(1, 2)).and(ItemSums.ofPaper(1, 5));
    assertThat(three.itemRest()).isPresent();
    assertThat(three.itemRestLimits()).isEmpty();
    ItemSums line = ItemSums.NONE;
    for (int paper = 0; paper < 6; paper++) {
      line = line.and(ItemSums.ofPaper(paper % 2, paper % 2));
    }
    assertThat(line.itemRest()).hasValue(1);
    assertThat(line.itemRestLimits()).isEmpty();
  }

  @Test
  void where_all_are_alike_nothing_is_told_apart() {
    assertThat(ItemSums.NONE.difficulty()).isEmpty();
    assertThat(ItemSums.NONE.itemRest()).isEmpty();
    ItemSums alike = ItemSums.ofPaper(1, 0.1).and(ItemSums.ofPaper(1, 0.7));
    assertThat(alike.itemRest()).isEmpty();
    assertThat(alike.itemRestLimits()).isEmpty();
    assertThat(alike.meanRest()).hasValueCloseTo(0.4, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ItemSums(-1, 0, 0, 0, 0, 0))
        .withMessageContaining("papers is -1");
  }
}
