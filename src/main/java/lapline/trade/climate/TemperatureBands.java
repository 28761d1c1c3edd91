package lapline.trade.climate;

import java.util.List;
import java.util.Optional;
import lapline.trade.measure.Conformance;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.measure.TargetRange;
import lapline.trade.measure.Valid;

/**
 * The bands of one product card, without gap or overlap, from the coldest to the warmest.
 *
 * <p>Outside them the card says nothing, and so does this: no band is stretched, and the nearest
 * one is not taken for the right one. Plain data from a product's sheet; nothing is computed but
 * how surely a temperature read with an error lies in its band (JCGM 106:2012, 7.4; accuracy 1e-9).
 *
 * @param inOrder at least one, coldest first, each beginning where the one before ends; ends within
 *     −40 to 250 °C
 */
public record TemperatureBands<B extends TemperatureBand>(List<B> inOrder) {
  private static final double COLDEST = -40;
  private static final double HOTTEST = 250;

  /** Where a temperature lies beside the bands. */
  public enum Place {
    INSIDE,
    COLDER_THAN_ALL,
    WARMER_THAN_ALL
  }

  /**
   * @throws MeasureException when there is no band, one has no width, or one does not begin where
   *     the one before ends
   */
  public TemperatureBands {
    if (inOrder.isEmpty()) {
      throw new MeasureException("bands", 0, "1 or more");
    }
    inOrder = List.copyOf(inOrder);
    double end = Double.NaN;
    for (B band : inOrder) {
      Valid.between("from", band.from(), COLDEST, HOTTEST);
      Valid.between("to", band.to(), COLDEST, HOTTEST);
      if (!(band.to() > band.from())) {
        throw new MeasureException("to", band.to(), "above the band's lower end " + band.from());
      }
      if (!Double.isNaN(end) && band.from() != end) {
        throw new MeasureException("from", band.from(), end + ", where the band before ends");
      }
      end = band.to();
    }
  }

  /** Lower end of the coldest band, °C. */
  public double least() {
    return inOrder.get(0).from();
  }

  /** Upper end of the warmest band, °C. */
  public double most() {
    return inOrder.get(inOrder.size() - 1).to();
  }

  /**
   * Where a temperature lies.
   *
   * @param temperature °C, finite
   */
  public Place place(double temperature) {
    Valid.finite("temperature", temperature);
    return temperature < least()
        ? Place.COLDER_THAN_ALL
        : temperature > most() ? Place.WARMER_THAN_ALL : Place.INSIDE;
  }

  /**
   * The band of a temperature; on an end that two bands share, the warmer one.
   *
   * @param temperature °C, finite
   * @return empty where it lies in none of the card's bands
   */
  public Optional<B> at(double temperature) {
    if (place(temperature) != Place.INSIDE) {
      return Optional.empty();
    }
    return inOrder.stream().filter(b -> temperature >= b.from()).reduce((colder, b) -> b);
  }

  /**
   * Probability that the true temperature lies in the band in which it was read.
   *
   * @param temperature °C with the thermometer's uncertainty
   * @return 0 to 1; 0 where it was read outside all bands
   */
  public double sureness(Estimate temperature) {
    return at(temperature.value())
        .map(b -> Conformance.probability(temperature, new TargetRange(b.from(), b.to())))
        .orElse(0.0);
  }
}
