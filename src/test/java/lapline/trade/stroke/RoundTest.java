package lapline.trade.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Faults, a stray and 'nothing further' share a weight of 1, by prior and evidence. */
class RoundTest {
  private static final Departure ARC = new Departure.Arc();
  private static final double NO_STRAY = Double.NEGATIVE_INFINITY;

  private static Claim claim(Fault fault, double evidence) {
    return new Claim(fault, ARC, 0.2, evidence);
  }

  /** One fault among nine has a ninth of the prior that 'nothing further' has. */
  @Test
  void without_evidence_the_priors_stand() {
    Round round = new Round(Map.of(Fault.ARCING, claim(Fault.ARCING, 0)), -1, NO_STRAY);
    assertThat(round.chance()).isCloseTo(9 / 10.0, within(1e-12));
    assertThat(round.weight(round.claims().get(0))).isCloseTo(1 / 10.0, within(1e-12));
  }

  @Test
  void evidence_multiplies_the_odds() {
    Round round = new Round(Map.of(Fault.ARCING, claim(Fault.ARCING, Math.log(81))), -1, NO_STRAY);
    assertThat(round.chance()).isCloseTo(1 / 10.0, within(1e-12));
  }

  @Test
  void the_heaviest_leads_and_all_weights_sum_to_one() {
    Claim arc = claim(Fault.ARCING, 800);
    Claim drift = claim(Fault.DRIFT_ALONG, 802);
    Round round = new Round(Map.of(Fault.ARCING, arc, Fault.DRIFT_ALONG, drift), 3, 799);
    assertThat(round.leader().orElseThrow().fault()).isEqualTo(Fault.DRIFT_ALONG);
    double faults = round.claims().stream().mapToDouble(round::weight).sum();
    assertThat(faults + round.strayWeight() + round.chance()).isCloseTo(1, within(1e-12));
    assertThat(round.weight(round.claims().get(0)) / round.weight(round.claims().get(1)))
        .isCloseTo(Math.exp(2), within(1e-9));
    assertThat(round.stray()).isEqualTo(3);
  }

  /** Two of a hundred readings are strays, whatever they say. */
  @Test
  void a_stray_needs_more_evidence_than_it_is_common() {
    assertThat(new Round(Map.of(), 0, Math.log(98 / 2.0)).strayWeight())
        .isCloseTo(0.5, within(1e-12));
  }
}
