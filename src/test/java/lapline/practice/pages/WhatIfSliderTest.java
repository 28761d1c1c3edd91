package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class WhatIfSliderTest {
  @Test
  void a_slider_moves_in_round_steps_of_the_readers_unit() {
    assertThat(WhatIfSlider.of(Thing.DISTANCE, 0.1, UnitSystem.METRIC))
        .isEqualTo(new WhatIfSlider(50, 350, 5, 100));
    WhatIfSlider inches = WhatIfSlider.of(Thing.DISTANCE, 0.1016, UnitSystem.US);
    assertThat(inches.least()).isEqualTo(2);
    // 50 to 350 mm are 11.8 in, over 60 steps
    assertThat(inches.step()).isEqualTo(0.1);
  }

  @Test
  void it_reaches_as_far_as_the_number_beside_it() {
    assertThat(WhatIfSlider.of(Thing.COATS, 9, UnitSystem.METRIC))
        .isEqualTo(new WhatIfSlider(1, 9, 1, 9));
  }
}
