package lapline.practice.fit;

import static lapline.practice.Phrase.message;
import static lapline.practice.Phrase.quantity;
import static lapline.practice.Phrase.word;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lapline.practice.PanelOutline;
import lapline.practice.PanelScore.Finding;
import lapline.practice.PanelScore.NextPlace;
import lapline.practice.Phrase;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.Spot;
import lapline.trade.stroke.StripesSeen;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.StrokeReading.Suspected;

/** What the readings of a panel leave open: single ones that stray, and film that no hand makes. */
final class Doubts {
  /** Places that may show less of a stripe than this share of its height are no witnesses. */
  private static final double SEEN = 0.3;

  private final StrokeReading reading;
  private final PlacedFilm film;
  private final double[] stripedSteps;

  /**
   * @param stripedSteps that would leave stripes, metres
   */
  Doubts(StrokeReading reading, PlacedFilm film, double[] stripedSteps) {
    this.reading = reading;
    this.film = film;
    this.stripedSteps = stripedSteps;
  }

  /** That these places cannot show what they are asked about; comes before all else. */
  Optional<Finding> blind() {
    List<Double> heights = DoubleStream.of(film.y).boxed().toList();
    if (StripesSeen.share(heights, stripedSteps) >= SEEN) {
      return Optional.empty();
    }
    List<Spot> places =
        IntStream.range(0, film.size()).mapToObj(i -> new Spot(film.x[i], film.y[i])).toList();
    double worst =
        DoubleStream.of(stripedSteps)
            .boxed()
            .min(Comparator.comparingDouble(s -> StripesSeen.share(heights, s)))
            .orElseThrow();
    return Optional.of(
        new Finding(
            "hidden-stripes" + Finding.BLIND,
            1,
            message("cause.hidden-stripes"),
            List.of(message("cause.hidden-stripes.evidence", quantity(worst, Dimension.LENGTH))),
            List.of(),
            message("cause.hidden-stripes.change"),
            null,
            StripesSeen.next(reading.film().plan(), places, stripedSteps).stream()
                .map(s -> NextPlace.of(s.x(), s.y()))
                .toList()));
  }

  /** That too few places were read for any pattern. */
  static Finding tooFew(int read) {
    return new Finding(
        "too-few" + Finding.BLIND,
        1,
        message("cause.too-few"),
        List.of(
            message(
                "cause.too-few.evidence",
                word(String.valueOf(read)),
                word(String.valueOf(StrokeReading.LEAST_PLACES)))),
        List.of(),
        message("cause.too-few.change"),
        null,
        List.of());
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    reading.suspected().map(Doubts::suspected).ifPresent(findings::add);
    strays().ifPresent(findings::add);
    if (reading.faults().isEmpty() && reading.fits() < StrokeReading.FITS_NOTHING) {
      findings.add(noPattern(1 - reading.fits()));
    }
    return findings;
  }

  /** A fault that is likely and not sure: where to read before anything is changed. */
  private static Finding suspected(Suspected s) {
    Cause cause = Cause.of(s.fault());
    return new Finding(
        cause.id() + Finding.DOUBT,
        s.probability(),
        message(cause.key() + ".suspected"),
        List.of(
            message(
                s.oneReading() ? "cause.suspected.one" : "cause.suspected.weak",
                quantity(Math.min(0.99, Amount.whole(s.probability())), Dimension.SHARE)),
            message(
                StrokeWords.FIT,
                quantity(s.without(), Dimension.FILM),
                quantity(s.with(), Dimension.FILM))),
        List.of(),
        message("cause.suspected.change"),
        null,
        StrokeWords.places(s.next()));
  }

  private Optional<Finding> strays() {
    if (reading.strays().isEmpty()) {
      return Optional.empty();
    }
    List<Integer> strays = reading.strays().stream().sorted().toList();
    List<Integer> places = strays.stream().map(i -> film.place[i]).toList();
    String key = strays.size() == 1 ? "cause.stray.place" : "cause.stray.places";
    return Optional.of(
        new Finding(
            Finding.STRAY,
            1,
            message(key, word(PanelOutline.namesOf(places))),
            strays.stream().map(this::stray).toList(),
            List.of(),
            message(key + ".change"),
            null,
            strays.stream().map(i -> NextPlace.of(film.x[i], film.y[i])).toList()));
  }

  private Phrase stray(int i) {
    return message(
        Finding.STRAY_EVIDENCE + ".at",
        word(PanelOutline.nameOf(film.place[i])),
        quantity(Estimate.of(film.film[i], film.uncertainty[i]), Dimension.FILM),
        quantity(reading.film().at(film.x[i], film.y[i]), Dimension.FILM),
        quantity(film.x[i], Dimension.LENGTH),
        quantity(film.y[i], Dimension.LENGTH));
  }

  /** That the film fits no stroke that is known here. */
  static Finding noPattern(double support) {
    return new Finding(
        Finding.NO_PATTERN,
        support,
        message("cause.no-pattern"),
        List.of(),
        List.of(),
        message("cause.no-pattern.change"),
        null,
        List.of());
  }
}
