package lapline.practice.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lapline.pages.Messages;
import lapline.practice.SprayChange;
import lapline.practice.SprayPlan;
import lapline.practice.SprayPlan.Thing;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.QuantityWriter;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the what-if page says is what the model has, and what the model leaves out is said. */
class WhatIfAnswerTest {
  private static final SprayPlan NOW = new SprayPlan(55e-6, 0.45, 0.1, 0.06, 0.2, 0.1, 0.3, 2);

  private static WhatIfAnswer changing(Thing thing, double to, UnitSystem units) {
    return new WhatIfAnswer(
        SprayChange.of(NOW, thing, to).orElseThrow(), new PhraseWriter(new Messages(), units));
  }

  @ParameterizedTest
  @EnumSource
  void the_figures_are_those_of_the_plan_in_the_readers_units(UnitSystem units) {
    SprayPlan then = SprayChange.of(NOW, Thing.SPEED, 0.4).orElseThrow().then();
    List<WhatIfAnswer.Line> lines = changing(Thing.SPEED, 0.4, units).lines();
    assertThat(lines)
        .extracting(WhatIfAnswer.Line::then)
        .containsExactly(
            QuantityWriter.write(then.wetFilm(), Dimension.FILM, units),
            QuantityWriter.write(then.passFilm(), Dimension.FILM, units),
            QuantityWriter.write(then.dryFilm(), Dimension.FILM, units),
            QuantityWriter.write(then.overlap(), Dimension.SHARE, units),
            QuantityWriter.write(then.ripple().variation(), Dimension.SHARE, units),
            QuantityWriter.write(then.ripple().evenness(), Dimension.SHARE, units));
    assertThat(lines.get(2).now())
        .isEqualTo(QuantityWriter.write(NOW.dryFilm(), Dimension.FILM, units));
  }

  @Test
  void farther_away_is_never_shown_as_free() {
    WhatIfAnswer farther = changing(Thing.DISTANCE, 0.2, UnitSystem.METRIC);
    assertThat(farther.title())
        .isEqualTo("From farther away, each pass would be 5.8\u00a0µm wet instead of 16.5\u00a0µm");
    assertThat(farther.notes()).hasSize(2).first().asString().contains("misses the panel", "drier");
    assertThat(farther.notes().get(1)).contains("no public table", "30\u00a0% less");
  }

  @Test
  void film_that_is_not_known_for_sure_is_shown_from_a_least_to_a_most() {
    // 45 µm dry; at twice the distance 30, 60 and 0 % less
    WhatIfAnswer.Line dry = changing(Thing.DISTANCE, 0.2, UnitSystem.METRIC).lines().get(2);
    assertThat(dry.then()).isEqualTo("31.5\u00a0µm");
    assertThat(dry.band()).isEqualTo("18 to 45\u00a0µm");
    assertThat(changing(Thing.SPEED, 0.4, UnitSystem.METRIC).lines())
        .allMatch(line -> line.band().isEmpty());
  }

  @Test
  void nearer_says_that_it_can_run_and_another_change_says_nothing_more() {
    assertThat(changing(Thing.DISTANCE, 0.08, UnitSystem.METRIC).notes())
        .first()
        .asString()
        .contains("can run");
    assertThat(changing(Thing.SPACING, 0.08, UnitSystem.METRIC).notes()).isEmpty();
  }

  @Test
  void a_step_wider_than_the_fan_is_bare_stripes_and_no_overlap_below_nothing() {
    WhatIfAnswer bare = changing(Thing.SPACING, 0.254, UnitSystem.METRIC);
    assertThat(bare.title()).startsWith("Bare stripes");
    assertThat(bare.lines().get(3).then()).isEqualTo("none: bare stripes of 54\u00a0mm");
    assertThat(bare.notes()).singleElement().asString().contains("wider than the fan, 200\u00a0mm");
  }
}
