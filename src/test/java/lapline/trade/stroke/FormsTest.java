package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.trade.measure.Estimate;
import lapline.trade.stroke.Departure.End;
import org.junit.jupiter.api.Test;

/** Which departures are tried on a panel, and what each means there. */
class FormsTest {
  private static final double FAN = 0.24;
  private static final double HEIGHT = 0.48;
  private final Forms forms =
      new Forms(
          new PassPlan(
              0.6,
              HEIGHT,
              List.of(PassPlan.Coat.even(0, 0.08, FAN, HEIGHT, 0.006, 0.05, 0.02)),
              Estimate.of(FAN, 0.01),
              Estimate.of(2, 0.2)));

  private List<Departure> all() {
    return forms.beside(List.of());
  }

  @Test
  void every_kind_is_tried_and_strips_an_eighth_of_a_fan_apart_from_edge_to_edge() {
    assertThat(all())
        .contains(new Departure.Arc(), new Departure.Along(), new Departure.Across())
        .contains(new Departure.Tilt(), new Departure.Ends(End.LEFT, 0.15 * 0.6))
        .contains(new Departure.Ends(End.BOTH, 0.25 * 0.6));
    List<Double> strips =
        all().stream()
            .filter(d -> d instanceof Departure.Strip)
            .map(d -> ((Departure.Strip) d).height())
            .toList();
    assertThat(strips.get(0)).isEqualTo(-FAN / 4);
    assertThat(strips.get(strips.size() - 1)).isBetween(HEIGHT + FAN / 8, HEIGHT + FAN / 4 + 1e-9);
    assertThat(strips.get(1) - strips.get(0)).isCloseTo(FAN / 8, within(1e-12));
  }

  @Test
  void a_kind_that_is_in_is_not_tried_again_but_another_strip_is() {
    Departure strip = all().get(all().size() - 1);
    List<Departure> rest =
        forms.beside(List.of(new Departure.Ends(End.LEFT, 0.09), new Departure.Arc(), strip));
    assertThat(rest).noneMatch(d -> d instanceof Departure.Ends || d instanceof Departure.Arc);
    assertThat(rest).doesNotContain(strip).anyMatch(d -> d instanceof Departure.Strip);
  }

  @Test
  void a_departure_means_what_its_sign_and_place_say() {
    assertThat(forms.fault(new Departure.Arc(), 0.2)).isEqualTo(Fault.ARCING);
    assertThat(forms.fault(new Departure.Along(), -0.2)).isEqualTo(Fault.DRIFT_ALONG);
    assertThat(forms.fault(new Departure.Across(), 0.2)).isEqualTo(Fault.DRIFT_ACROSS);
    assertThat(forms.fault(new Departure.Tilt(), 0.2)).isEqualTo(Fault.TILT);
    Departure end = new Departure.Ends(End.BOTH, 0.1);
    assertThat(forms.fault(end, 0.3)).isEqualTo(Fault.LINGERING);
    assertThat(forms.fault(end, -0.3)).isEqualTo(Fault.TRIGGER_EARLY);
    assertThat(forms.fault(new Departure.Strip(0.07), 0.3)).isEqualTo(Fault.EDGES_HEAVY);
    assertThat(forms.fault(new Departure.Strip(HEIGHT), -0.3)).isEqualTo(Fault.EDGES_THIN);
    assertThat(forms.fault(new Departure.Strip(0.09), -0.3)).isEqualTo(Fault.ONE_STEP);
    assertThat(forms.fault(new Departure.Strip(HEIGHT - 0.09), 0.3)).isEqualTo(Fault.ONE_STEP);
  }

  @Test
  void a_fault_shares_its_prior_among_its_forms() {
    assertThat(forms.of(Fault.ARCING)).isEqualTo(1);
    assertThat(forms.of(Fault.LINGERING)).isEqualTo(6);
    long strips = all().stream().filter(d -> d instanceof Departure.Strip).count();
    assertThat(forms.of(Fault.ONE_STEP)).isEqualTo(strips / 2.0);
  }
}
