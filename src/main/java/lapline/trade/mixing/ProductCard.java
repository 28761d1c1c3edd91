package lapline.trade.mixing;

import java.util.List;
import java.util.Optional;
import lapline.trade.climate.PotLife;
import lapline.trade.climate.TemperatureBands;
import lapline.trade.climate.TemperatureBands.Place;
import lapline.trade.measure.Estimate;
import lapline.trade.measure.MeasureException;
import lapline.trade.mixing.MixRatio.AdditiveOf;

/**
 * What a workshop entered from a product's sheet: the ratio before reducing, the reducer of each
 * temperature, the pot life. Data and nothing else; where the card is silent, so is this.
 *
 * @param sheet title and date of the sheet, so that a mix can be traced; not blank
 * @param unreduced parts by volume before reducer, such as 4 : 1
 * @param reducerOf what the reducer's share is taken of
 * @param reducers by temperature, without gap or overlap
 * @param potLife seconds at a temperature; empty where the sheet gives none, as for a base coat
 *     without hardener
 */
public record ProductCard(
    String sheet,
    MixRatio unreduced,
    AdditiveOf reducerOf,
    TemperatureBands<ReducerBand> reducers,
    Optional<PotLife> potLife) {

  public ProductCard {
    if (sheet.isBlank()) {
      throw new MeasureException("letters of sheet", 0, "1 or more");
    }
  }

  /**
   * @param bands at least one, coldest first, each beginning where the one before ends
   * @throws MeasureException when they leave a gap or overlap
   */
  public static ProductCard of(
      String sheet,
      MixRatio unreduced,
      AdditiveOf reducerOf,
      List<ReducerBand> bands,
      Optional<PotLife> potLife) {
    return new ProductCard(sheet, unreduced, reducerOf, new TemperatureBands<>(bands), potLife);
  }

  /**
   * The reducer for a temperature.
   *
   * @param band empty where the temperature lies in none of the card's bands
   * @param place whether it is colder or warmer than all of them
   * @param sureness probability that the true temperature lies in that band, 0 to 1; 0 where there
   *     is none. Near 0.5 the thermometer cannot tell two bands apart.
   * @param mix ready to spray, the reducer last; empty with the band
   */
  public record Reducer(
      Optional<ReducerBand> band, Place place, double sureness, Optional<MixRatio> mix) {}

  /**
   * @param temperature that the sheet means, as a rule of panel and booth, °C with the
   *     thermometer's uncertainty
   */
  public Reducer reducerAt(Estimate temperature) {
    Optional<ReducerBand> band = reducers.at(temperature.value());
    return new Reducer(
        band,
        reducers.place(temperature.value()),
        reducers.sureness(temperature),
        band.map(this::reduced));
  }

  private MixRatio reduced(ReducerBand band) {
    return band.share() == 0 ? unreduced : unreduced.plus(band.share(), reducerOf);
  }
}
