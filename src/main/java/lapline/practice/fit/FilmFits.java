package lapline.practice.fit;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Krigings of one film by a small set of covariances, each with its weight: how well it tells the
 * readings. The weights add up to 1.
 */
final class FilmFits {
  /** Length scales tried, as shares of the panel's width and height. */
  private static final double[] LENGTHS = {0.15, 0.35, 0.8, 2.0};

  /** Spreads tried, as shares of that of the readings. */
  private static final double[] SPREADS = {0.5, 1.0, 2.0, 4.0};

  private final Kriging[] fits;
  private final double[] weights;
  private final double logEvidence;

  private FilmFits(Kriging[] fits, double[] weights, double logEvidence) {
    this.fits = fits;
    this.weights = weights;
    this.logEvidence = logEvidence;
  }

  static FilmFits of(PlacedFilm film) {
    Kriging[] fits = fits(film);
    double best = Arrays.stream(fits).mapToDouble(Kriging::logLikelihood).max().orElseThrow();
    double[] weights =
        Arrays.stream(fits).mapToDouble(f -> Math.exp(f.logLikelihood() - best)).toArray();
    double sum = Arrays.stream(weights).sum();
    return new FilmFits(
        fits,
        Arrays.stream(weights).map(w -> w / sum).toArray(),
        best + Math.log(sum / fits.length));
  }

  /**
   * These and others, where one or the other is right.
   *
   * @param logOdds of the others against these
   */
  FilmFits or(FilmFits others, double logOdds) {
    double these = 1 / (1 + Math.exp(logOdds));
    return new FilmFits(
        Stream.of(fits, others.fits).flatMap(Arrays::stream).toArray(Kriging[]::new),
        DoubleStream.concat(
                Arrays.stream(weights).map(w -> w * these),
                Arrays.stream(others.weights).map(w -> w * (1 - these)))
            .toArray(),
        logEvidence - Math.log(these));
  }

  private static Kriging[] fits(PlacedFilm film) {
    double spread = Math.max(film.scatter(), 0.5 * film.meanUncertainty());
    return DoubleStream.of(LENGTHS)
        .boxed()
        .flatMap(
            along ->
                DoubleStream.of(LENGTHS)
                    .boxed()
                    .flatMap(
                        across ->
                            DoubleStream.of(SPREADS)
                                .mapToObj(
                                    share ->
                                        new Kriging(
                                            film,
                                            new FilmCovariance(
                                                along * film.width,
                                                across * film.height,
                                                share * spread)))))
        .toArray(Kriging[]::new);
  }

  /** Each with the weight of the same number in {@link #weights}. */
  Kriging[] all() {
    return fits;
  }

  double[] weights() {
    return weights;
  }

  Kriging likeliest() {
    int best = 0;
    for (int i = 1; i < weights.length; i++) {
      best = weights[i] > weights[best] ? i : best;
    }
    return fits[best];
  }

  /**
   * Log of the probability of the readings, each covariance as likely as the next, up to a
   * constant.
   */
  double logEvidence() {
    return logEvidence;
  }
}
