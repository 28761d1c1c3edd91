package lapline.trade.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lapline.trade.climate.PotLife;
import lapline.trade.climate.Spell;
import lapline.trade.climate.TemperatureBands.Place;
import lapline.trade.measure.Estimate;
import lapline.trade.mixing.MixRatio.AdditiveOf;
import org.junit.jupiter.api.Test;

/** A card with invented figures. */
class ProductCardTest {
  private static final ProductCard CARD =
      ProductCard.of(
          "Invented clear, sheet of March",
          MixRatio.of(2, 1),
          AdditiveOf.SUM,
          List.of(
              new ReducerBand("fast", 10, 18, 0.05),
              new ReducerBand("medium", 18, 25, 0.10),
              new ReducerBand("none", 25, 30, 0)),
          Optional.of(new PotLife(7200, 20)));

  private static ProductCard.Reducer at(double temperature, double u) {
    return CARD.reducerAt(Estimate.of(temperature, u));
  }

  @Test
  void the_band_of_the_temperature_names_the_reducer_and_makes_the_mix() {
    ProductCard.Reducer found = at(21, 0.5);

    assertThat(found.band().orElseThrow().reducer()).isEqualTo("medium");
    assertThat(found.place()).isEqualTo(Place.INSIDE);
    assertThat(found.mix().orElseThrow().parts().get(2)).isCloseTo(0.3, within(1e-12));
    assertThat(found.sureness()).isGreaterThan(0.999);
  }

  @Test
  void a_shared_end_belongs_to_the_warmer_band_and_the_last_end_to_the_last_band() {
    assertThat(at(18, 0).band().orElseThrow().reducer()).isEqualTo("medium");
    assertThat(at(30, 0).band().orElseThrow().reducer()).isEqualTo("none");
    assertThat(at(10, 0).band().orElseThrow().reducer()).isEqualTo("fast");
  }

  @Test
  void a_thermometer_cannot_tell_two_bands_apart_at_their_end() {
    assertThat(at(18, 0.5).sureness()).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void none_of_the_bands_is_said_and_on_which_side() {
    assertThat(at(9.9, 0.5))
        .isEqualTo(
            new ProductCard.Reducer(Optional.empty(), Place.COLDER_THAN_ALL, 0, Optional.empty()));
    assertThat(at(30.1, 0.5).place()).isEqualTo(Place.WARMER_THAN_ALL);
    assertThat(at(30.1, 0.5).band()).isEmpty();
  }

  @Test
  void a_band_without_reducer_leaves_the_mix_as_it_is() {
    assertThat(at(27, 0.5).mix()).contains(MixRatio.of(2, 1));
  }

  @Test
  void what_the_reducer_is_taken_of_is_the_cards_own() {
    ProductCard ofPaint =
        ProductCard.of(
            "Invented clear, sheet of March",
            MixRatio.of(2, 1),
            AdditiveOf.FIRST_PART,
            List.of(new ReducerBand("fast", 10, 18, 0.1)),
            Optional.empty());

    assertThat(ofPaint.reducerAt(Estimate.of(15, 0)).mix().orElseThrow().parts())
        .containsExactly(2.0, 1.0, 0.2);
  }

  /** By hand: 1 h of 2 h at 20 °C, then 15 min of 1 h at 30 °C: three quarters gone. */
  @Test
  void each_spell_uses_up_its_share_of_the_pot_life() {
    PotLife life = CARD.potLife().orElseThrow();

    PotLifeLeft left = PotLifeLeft.of(life, List.of(new Spell(3600, 20), new Spell(900, 30)));

    assertThat(left.shareUsed()).isCloseTo(0.75, within(1e-12));
    assertThat(left.seconds()).isCloseTo(900, within(1e-9));
    assertThat(left.over()).isFalse();
  }

  @Test
  void a_pot_life_can_be_over() {
    PotLifeLeft over = PotLifeLeft.of(new PotLife(3600, 20), List.of(new Spell(5400, 20)));

    assertThat(over.over()).isTrue();
    assertThat(over.seconds()).isCloseTo(-1800, within(1e-9));
    assertThat(PotLifeLeft.of(new PotLife(3600, 20), List.of(new Spell(3600, 20))).over()).isTrue();
  }
}
