package lapline.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.Random;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The first workshop is opened by a link that is good once; until then it is waited for. */
class SetUpWorkshopTest {
  private final PeopleOffice office = new PeopleOffice();
  private final SetUpWorkshop fresh =
      new SetUpWorkshop(new RememberedPeople(), office.passwords, office.clock, new Random(7));

  @Test
  void a_fresh_lapline_waits_until_its_first_registrar_is_made() {
    assertThat(fresh.isWaiting()).isFalse();
    String code = fresh.offer().orElseThrow();
    assertThat(fresh.isWaiting()).isTrue();
    fresh.run(
        code,
        "Long Acre Panel School",
        ZoneId.of("Europe/Dublin"),
        UnitSystem.METRIC,
        "Ana Field",
        "ana",
        "a short sentence is good".toCharArray());
    assertThat(fresh.isWaiting()).isFalse();
    assertThat(fresh.good(code)).isFalse();
  }

  @Test
  void where_there_is_a_registrar_nothing_is_waited_for() {
    SetUpWorkshop later =
        new SetUpWorkshop(office.records, office.passwords, office.clock, new Random(7));
    assertThat(later.offer()).isEmpty();
    assertThat(later.isWaiting()).isFalse();
  }
}
