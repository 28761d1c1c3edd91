package lapline.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Locale;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.FilmAt;
import lapline.trade.stroke.NextSpot;
import lapline.trade.stroke.Spot;
import lapline.trade.stroke.StrokeReading;
import lapline.trade.stroke.StrokeReading.Found;

/**
 * What the film says about the stroke, for programs; metres and shares.
 *
 * @param fits probability of readings at least as far off if this is what happened
 * @param scatter root mean square of the readings about the film
 * @param strays numbers of the readings, from 0, that no hand explains
 * @param film at each reading as all this has it
 * @param suspected where no fault is sure, the one that is likely all the same; left out without
 *     one
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record StrokeText(
    Interval meanFilm,
    Interval overlap,
    List<Finding> findings,
    List<Integer> strays,
    double fits,
    boolean fitsNothingKnown,
    double scatter,
    double[] film,
    Suspected suspected) {

  /** A value with the ends of value ± expanded uncertainty. */
  public record Interval(double value, double standardUncertainty, double low, double high) {
    static Interval of(Estimate e) {
      double half = e.expandedUncertainty();
      return new Interval(e.value(), e.standardUncertainty(), e.value() - half, e.value() + half);
    }
  }

  /**
   * @param departure what {@code estimate} is of; left out where it is of the overlap
   * @param film highest less lowest of what it does to the film
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Finding(
      String fault,
      double probability,
      String departure,
      Interval estimate,
      Interval film,
      List<Rival> rivals,
      List<NextPlace> nextPlaces) {}

  /** Where one more reading is worth taking, and the film to expect there. */
  public record NextPlace(double x, double y, double filmIfSo, double filmIfNot) {}

  /** Likely and not sure, and where further readings would settle it. */
  public record Suspected(
      String fault, double probability, boolean oneReading, List<NextPlace> nextPlaces) {}

  /** What else it could be. */
  public record Rival(String fault, double probability) {}

  static StrokeText of(StrokeReading reading, List<FilmAt> readings) {
    List<Spot> places = readings.stream().map(r -> new Spot(r.x(), r.y())).toList();
    return new StrokeText(
        Interval.of(reading.meanFilm()),
        Interval.of(reading.overlap()),
        reading.faults().stream().map(StrokeText::finding).toList(),
        reading.strays(),
        reading.fits(),
        reading.fits() < StrokeReading.FITS_NOTHING,
        reading.scatter(),
        reading.film().at(places),
        reading.suspected().map(StrokeText::suspected).orElse(null));
  }

  private static Suspected suspected(StrokeReading.Suspected s) {
    return new Suspected(name(s.fault()), s.probability(), s.oneReading(), places(s.next()));
  }

  private static List<NextPlace> places(List<NextSpot> spots) {
    return spots.stream()
        .map(s -> new NextPlace(s.spot().x(), s.spot().y(), s.ifSo(), s.ifNot()))
        .toList();
  }

  private static Finding finding(Found found) {
    return new Finding(
        name(found.fault()),
        found.probability(),
        found.departure().map(d -> d.getClass().getSimpleName()).map(StrokeText::name).orElse(null),
        Interval.of(found.value()),
        Interval.of(found.film()),
        found.rivals().stream().map(r -> new Rival(name(r.fault()), r.probability())).toList(),
        places(found.next()));
  }

  private static String name(Enum<?> one) {
    return name(one.name());
  }

  private static String name(String one) {
    return one.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
