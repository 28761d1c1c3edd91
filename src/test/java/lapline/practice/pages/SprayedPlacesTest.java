package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import lapline.pages.Messages;
import lapline.practice.FilmField;
import lapline.practice.FilmField.PlaceFilm;
import lapline.practice.pages.SprayedPlaces.Place;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** Nine places held against 50 to 65 µm; each reads 60 µm, but for place 8 with one nought more. */
class SprayedPlacesTest {
  private static final PhraseWriter WORDS = new PhraseWriter(new Messages(), UnitSystem.METRIC);

  private static SprayedPlaces places(Integer... aside) {
    return reading(60e-6, aside);
  }

  private static SprayedPlaces reading(double film, Integer... aside) {
    return new SprayedPlaces(field(film, List.of(aside)));
  }

  private static FilmField field(double film, List<Integer> aside) {
    List<PlaceFilm> places =
        IntStream.rangeClosed(1, 9).mapToObj(n -> place(n, n == 8 ? 600e-6 : film)).toList();
    return new FilmField(
        0.6,
        0.4,
        1,
        1,
        List.of(film),
        new TargetRange(50e-6, 65e-6),
        film,
        0,
        1,
        1,
        1,
        List.of(),
        places,
        aside);
  }

  private static PlaceFilm place(int number, double film) {
    return new PlaceFilm(number, 0.06 * number, 0.2, film, 0.02 * film);
  }

  @Test
  void a_reading_that_is_set_aside_does_not_stretch_the_cut() {
    assertThat(places(8).highest()).isEqualTo(65e-6);
    assertThat(reading(80e-6, 8).highest()).isEqualTo(80e-6);
    assertThat(places().highest()).isEqualTo(600e-6);
  }

  /** One crazy reading would make the gauge look too rough to find anything amiss. */
  @Test
  void the_gauge_is_taken_as_unsure_as_it_is_where_readings_count() {
    assertThat(places(8).uncertainty()).isCloseTo(1.2e-6, within(1e-12));
    assertThat(places().uncertainty()).isGreaterThan(2e-6);
  }

  @Test
  void the_script_is_told_which_readings_are_set_aside_and_still_has_them_all() {
    List<Place> drawn = places(8).drawn();
    assertThat(drawn).hasSize(9);
    assertThat(drawn).filteredOn(Place::aside).extracting(Place::film).containsExactly(600e-6);
  }

  @Test
  void the_page_says_which_reading_is_left_out_and_to_read_it_again() {
    assertThat(places(8).setAside(WORDS))
        .isEqualTo(
            "The reading at place 8 fits nothing around it. It stands in brackets here and is"
                + " left out of what was worked out on this page.");
    assertThat(places(8).readAgain(WORDS)).isEqualTo("Read it again first");
    assertThat(places(8).off(WORDS)).contains("in brackets where the reading is set aside");
  }

  @Test
  void several_are_named_together() {
    assertThat(places(4, 8).setAside(WORDS))
        .startsWith("The readings at places 4, 8 fit nothing around them. They stand")
        .contains("and are left out");
    assertThat(places(4, 8).readAgain(WORDS)).isEqualTo("Read them again first");
  }

  @Test
  void where_every_reading_counts_the_page_says_nothing_of_it() {
    assertThat(places().setAside(WORDS)).isEmpty();
    assertThat(places().off(WORDS)).doesNotContain("brackets");
  }
}
