package lapline.practice.pages;

import lapline.practice.FilmField;
import lapline.trade.measure.Dimension;

/**
 * The share of a panel inside its range with the ends of its interval, in whole per cent where that
 * tells the ends apart, else in tenths.
 */
final class ShareInside {
  /** Less than this share off all or nothing cannot be written in tenths of a per cent. */
  private static final double TENTH = 0.0005;

  private final FilmField film;
  private final PhraseWriter words;
  private final double steps;

  private ShareInside(FilmField film, PhraseWriter words) {
    this.film = film;
    this.words = words;
    this.steps =
        Math.round(100 * film.shareLow()) < Math.round(100 * film.shareHigh()) ? 100 : 1000;
  }

  static String of(FilmField film, PhraseWriter words) {
    return new ShareInside(film, words).written();
  }

  private String written() {
    // the map's own share may lie a grid cell off all or nothing that its interval is sure of
    if (film.shareLow() >= 1 - TENTH) {
      return words.say("practice-result.share-inside.all", written(1));
    }
    if (film.shareHigh() < TENTH) {
      return words.say("practice-result.share-inside.none", written(0));
    }
    return words.say(
        "practice-result.share-inside",
        written(film.shareInside()),
        words.figure(rounded(film.shareLow()), Dimension.SHARE),
        written(film.shareHigh()));
  }

  private String written(double share) {
    return words.quantity(rounded(share), Dimension.SHARE);
  }

  private double rounded(double share) {
    return Math.round(steps * share) / steps;
  }
}
