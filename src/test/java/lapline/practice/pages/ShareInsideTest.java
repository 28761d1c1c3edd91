package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.practice.FilmField;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** How sure a share is can be seen, however near it is to all or nothing. */
class ShareInsideTest {

  private static String said(double share, double low, double high) {
    FilmField film =
        new FilmField(
            1,
            1,
            0,
            0,
            List.of(),
            new TargetRange(50e-6, 65e-6),
            0,
            0,
            share,
            low,
            high,
            List.of(),
            List.of(),
            List.of());
    PhraseWriter words = new PhraseWriter(new Messages(), UnitSystem.METRIC);
    return ShareInside.of(film, words).replace('\u00a0', ' ');
  }

  @Test
  void whole_per_cent_where_they_tell_the_ends_apart() {
    assertThat(said(0.634, 0.512, 0.741)).isEqualTo("63 % (51 to 74 %)");
    assertThat(said(0.999, 0.991, 1)).isEqualTo("100 % (99 to 100 %)");
  }

  @Test
  void tenths_where_both_ends_would_read_the_same() {
    assertThat(said(0.9988, 0.9962, 0.9999)).isEqualTo("99.9 % (99.6 to 100 %)");
  }

  @Test
  void all_and_nothing_say_how_sure_they_are() {
    assertThat(said(1, 0.99991, 1)).isEqualTo("100 % (more than 99.9 %)");
    assertThat(said(0.999, 0.99991, 1)).isEqualTo("100 % (more than 99.9 %)");
    assertThat(said(0, 0, 0.0001)).isEqualTo("0 % (less than 0.1 %)");
  }
}
