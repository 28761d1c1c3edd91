package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class ColourReferenceTest {
  private static final double PRINTED = 5.1e-7;

  @ParameterizedTest
  @CsvFileSource(resources = "cielab.csv", useHeadersInDisplayName = true)
  void coordinates_follow_from_tristimulus_values_and_their_white(ArgumentsAccessor row) {
    White white = new White("D65", 2, new Xyz(number(row, 3), number(row, 4), number(row, 5)));

    Lab found = Lab.of(new Xyz(number(row, 0), number(row, 1), number(row, 2)), white);

    assertThat(found.lightness()).isCloseTo(number(row, 6), within(PRINTED));
    assertThat(found.a()).isCloseTo(number(row, 7), within(PRINTED));
    assertThat(found.b()).isCloseTo(number(row, 8), within(PRINTED));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "ciede2000-published.csv", useHeadersInDisplayName = true)
  void all_published_pairs_differ_as_printed_and_the_same_both_ways_round(ArgumentsAccessor row) {
    Lab first = colour(row, 1);
    Lab second = colour(row, 4);

    assertThat(Ciede2000.of(first, second)).isCloseTo(number(row, 7), within(5e-5));
    assertThat(Ciede2000.of(second, first)).isCloseTo(Ciede2000.of(first, second), within(1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "second-opinion.csv", useHeadersInDisplayName = true)
  void other_libraries_find_the_same_differences(ArgumentsAccessor row) {
    Lab first = colour(row, 0);
    Lab second = colour(row, 3);

    assertThat(Ciede2000.of(first, second)).isCloseTo(number(row, 6), within(1e-9));
    assertThat(Cmc.SEEN.of(first, second)).isCloseTo(number(row, 7), within(1e-9));
    assertThat(Cmc.ACCEPTABLE.of(first, second)).isCloseTo(number(row, 8), within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "cmc.csv", useHeadersInDisplayName = true)
  void a_calculators_values_come_out_and_others_the_other_way_round(ArgumentsAccessor row) {
    Lab first = colour(row, 0);
    Lab second = colour(row, 3);

    assertThat(Cmc.SEEN.of(first, second)).isCloseTo(number(row, 6), within(PRINTED));
    assertThat(Cmc.ACCEPTABLE.of(first, second)).isCloseTo(number(row, 7), within(PRINTED));
    assertThat(Cmc.ACCEPTABLE.of(second, first)).isCloseTo(number(row, 8), within(PRINTED));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "flop-index.csv", useHeadersInDisplayName = true)
  void the_flop_index_follows_from_three_lightnesses(
      double l15, double l45, double l110, double index) {
    AngleSet set =
        new AngleSet(
            White.D65_10,
            Map.of(
                AspecularAngle.A15, new Lab(l15, 0, 0),
                AspecularAngle.A45, new Lab(l45, 0, 0),
                AspecularAngle.A110, new Lab(l110, 0, 0)));

    assertThat(set.flopIndex().orElseThrow()).isCloseTo(index, within(PRINTED));
  }

  private static Lab colour(ArgumentsAccessor row, int from) {
    return new Lab(number(row, from), number(row, from + 1), number(row, from + 2));
  }

  private static double number(ArgumentsAccessor row, int column) {
    return row.getDouble(column);
  }
}
