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
    String share = words.quantity(rounded(film.shareInside()), Dimension.SHARE);
    if (film.shareLow() >= 1 - TENTH) {
      return words.say("practice-result.share-inside.all", share);
    }
    if (film.shareHigh() < TENTH) {
      return words.say("practice-result.share-inside.none", share);
    }
    return words.say(
        "practice-result.share-inside",
        share,
        words.figure(rounded(film.shareLow()), Dimension.SHARE),
        words.quantity(rounded(film.shareHigh()), Dimension.SHARE));
  }

  private double rounded(double share) {
    return Math.round(steps * share) / steps;
  }
}
