package lapline.trade.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedList;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import lapline.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Differences taken many at once are those taken one by one. */
class ColourDifferencesProperties {
  private static final int MILLION = 1_000_000;

  /** Sharma, Wu, Dalal, Color Research and Application 30 (2005) 21–30, table 1. */
  @ParameterizedTest
  @CsvFileSource(resources = "ciede2000-published.csv", useHeadersInDisplayName = true)
  void published_pairs_differ_as_printed(
      int pair, double l1, double a1, double b1, double l2, double a2, double b2, double printed) {
    Lab first = new Lab(l1, a1, b1);
    Lab second = new Lab(l2, a2, b2);

    double found = ColourDifferences.of(List.of(first), List.of(second))[0];

    assertThat(found).as("pair %s", pair).isCloseTo(printed, within(5e-5));
    assertThat(found).isCloseTo(Ciede2000.of(first, second), within(1e-12));
  }

  @Test
  void a_million_pairs_of_every_kind_differ_as_they_do_one_by_one() {
    RandomGenerator chance = new Random(1);
    List<Lab> first = new ArrayList<>(MILLION);
    List<Lab> second = new ArrayList<>(MILLION);
    for (int i = 0; i < MILLION; i++) {
      Lab colour = colour(chance);
      first.add(colour);
      second.add(chance.nextBoolean() ? near(colour, chance) : colour(chance));
    }

    double[] found = ColourDifferences.of(first, second);

    for (int i = 0; i < MILLION; i++) {
      double single = Ciede2000.of(first.get(i), second.get(i));
      if (!(Math.abs(found[i] - single) <= 1e-12 * (1 + single))) {
        assertThat(found[i]).as("%s, %s", first.get(i), second.get(i)).isEqualTo(single);
      }
    }
  }

  /** Their chromas multiplied are too little to divide by. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-45, 1e-60, 1e-79, 1e-85, 1e-160, 1e-300})
  void colours_that_are_all_but_grey_differ_as_they_do_one_by_one(double chroma) {
    Lab first = new Lab(50, chroma, chroma);
    Lab second = new Lab(52, chroma, 2 * chroma);

    assertThat(ColourDifferences.of(List.of(first), List.of(second))[0])
        .isCloseTo(Ciede2000.of(first, second), within(1e-12));
  }

  /** Greys, colours on an axis and of any chroma among those of any hue. */
  private static Lab colour(RandomGenerator chance) {
    double lightness = Samples.oneOf(chance, 0.0, 50.0, 120 * chance.nextDouble());
    double angle = 2 * Math.PI * chance.nextDouble();
    double chroma = Samples.ofAnySize(chance, 1e-9, 180);
    return switch (chance.nextInt(8)) {
      case 0 -> new Lab(lightness, 0, 0);
      case 1 -> new Lab(lightness, 0, chance.nextBoolean() ? chroma : -chroma);
      case 2 -> new Lab(lightness, chance.nextBoolean() ? chroma : -chroma, 0);
      default -> new Lab(lightness, chroma * Math.cos(angle), chroma * Math.sin(angle));
    };
  }

  /** Itself, its opposite, and what lies about it. */
  private static Lab near(Lab colour, RandomGenerator chance) {
    return switch (chance.nextInt(5)) {
      case 0 -> colour;
      case 1 -> new Lab(colour.lightness(), -colour.a(), -colour.b());
      default ->
          new Lab(
              colour.lightness() + chance.nextDouble(),
              colour.a() + 4 * chance.nextDouble() - 2,
              colour.b() + 4 * chance.nextDouble() - 2);
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 255, 256, 257, 511, 512, 513, 1100})
  void each_difference_stands_at_its_pairs_place(int pairs) {
    Lab panel = new Lab(40, 20, -30);
    List<Lab> shelf = new ArrayList<>();
    for (int i = 0; i < pairs; i++) {
      shelf.add(new Lab(40 + 0.01 * i, 20, -30));
    }

    double[] found = ColourDifferences.of(Collections.nCopies(pairs, panel), shelf);

    assertThat(found).hasSize(pairs);
    assertThat(found)
        .isEqualTo(
            ColourDifferences.of(Collections.nCopies(pairs, panel), new LinkedList<>(shelf)));
    for (int i = 0; i < pairs; i++) {
      assertThat(found[i]).isCloseTo(Ciede2000.of(panel, shelf.get(i)), within(1e-12));
    }
  }
}
