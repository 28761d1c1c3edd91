package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lapline.practice.SprayPlan;
import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.Unit;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WhatIfSliderTest {
  @Test
  void a_slider_moves_in_steps_that_a_hand_can_tell_apart() {
    assertThat(WhatIfSlider.of(Thing.DISTANCE, 0.1, UnitSystem.METRIC))
        .isEqualTo(new WhatIfSlider(50, 350, 1, 100));
    assertThat(WhatIfSlider.of(Thing.SOLIDS, 0.45, UnitSystem.METRIC))
        .isEqualTo(new WhatIfSlider(10, 100, 1, 45));
    WhatIfSlider inches = WhatIfSlider.of(Thing.DISTANCE, 0.1016, UnitSystem.US);
    assertThat(inches.least()).isEqualTo(2);
    assertThat(inches.step()).isEqualTo(0.1);
  }

  /** A browser counts the steps of a slider from its least. */
  @ParameterizedTest
  @EnumSource
  void it_stands_on_the_number_beside_it(UnitSystem units) {
    for (Thing thing : Thing.values()) {
      for (double share : new double[] {0.83, 1, 1.137}) {
        double value = thing == Thing.COATS ? 3 : WhatIfPage.usual(units).get(thing) * share;
        WhatIfSlider slider = WhatIfSlider.of(thing, value, units);
        Unit unit = Unit.preferred(thing.dimension(), units);
        assertThat(slider.at()).isCloseTo(unit.fromSi(value), within(1e-6));
        double steps = (slider.at() - slider.least()) / slider.step();
        assertThat(steps).as(thing + " " + value).isCloseTo(Math.round(steps), within(1e-4));
        assertThat(slider.most()).isGreaterThan(slider.at());
      }
    }
  }

  @Test
  void where_people_think_in_inches_the_page_begins_with_round_ones() {
    SprayPlan usual = WhatIfPage.usual(UnitSystem.US);
    assertThat(inches(usual.spacing())).isEqualTo("2.4");
    assertThat(inches(usual.fanWidth())).isEqualTo("8");
    assertThat(inches(usual.distance())).isEqualTo("4");
    assertThat(inches(WhatIfPage.suggested(Thing.SPACING, usual.spacing(), UnitSystem.US)))
        .isEqualTo("3");
    assertThat(WhatIfPage.suggested(Thing.WET_FILM, 55e-6, UnitSystem.METRIC))
        .isCloseTo(69e-6, within(1e-12));
  }

  private static String inches(double metres) {
    return QuantityWriter.number(metres, Dimension.LENGTH, UnitSystem.US);
  }

  @Test
  void it_reaches_as_far_as_the_number_beside_it() {
    assertThat(WhatIfSlider.of(Thing.COATS, 9, UnitSystem.METRIC))
        .isEqualTo(new WhatIfSlider(1, 9, 1, 9));
  }
}
