package lapline.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import lapline.people.NotAllowedException;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;
import lapline.signoff.Step.Kind;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who may print a certificate, of what, and what it rests on. */
class ShowCertificateTest {
  private final SignOffShop shop = new SignOffShop();
  private final ShowCertificate certificates =
      new ShowCertificate(shop.signOffs, shop.people, shop.clock);

  @BeforeEach
  void arrange() {
    shop.people.addWorkshop(
        new Workshop(shop.workshop, "Invented", ZoneId.of("Europe/Dublin"), UnitSystem.METRIC),
        shop.clock.instant());
    called(shop.learner, "Learner Invented");
    called(shop.examiner, "Examiner Invented");
    shop.meetsTheRule(shop.learner);
    shop.grant(shop.examiner);
  }

  private void called(Person p, String name) {
    shop.people.change(
        new Person(
            p.id(), p.workshop(), name, p.signInName(), p.roles(), p.units(), p.zone(), true));
  }

  private ShowCertificate.Certified seenBy(Person by) {
    return certificates.of(by, shop.signOff().id());
  }

  @Test
  void it_names_who_may_where_who_said_so_and_when_it_was_put_together() {
    shop.clock.pass(Duration.ofDays(2));
    ShowCertificate.Certified shown = seenBy(shop.learner);
    assertThat(shown.person()).isEqualTo("Learner Invented");
    assertThat(shown.examiner()).isEqualTo("Examiner Invented");
    assertThat(shown.workshop()).isEqualTo("Invented");
    assertThat(shown.signOff()).isEqualTo(shop.signOff());
    assertThat(shown.made()).isEqualTo(shop.clock.instant());
  }

  @Test
  void its_person_and_those_who_teach_judge_and_run_the_shop_see_it_and_no_other_learner() {
    for (Person by : List.of(shop.learner, shop.instructor, shop.examiner, shop.owner)) {
      assertThat(seenBy(by).person()).isEqualTo("Learner Invented");
    }
    Person other = shop.person(shop.workshop, Role.APPRENTICE);
    assertThatThrownBy(() -> seenBy(other)).isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> seenBy(shop.neighbour)).isInstanceOf(NotFoundException.class);
  }

  @Test
  void there_is_none_of_a_sign_off_that_is_stopped_or_has_run_out() {
    shop.change(shop.owner, Kind.SUSPENDED);
    assertThatThrownBy(() -> seenBy(shop.learner)).isInstanceOf(NotAllowedException.class);
    shop.change(shop.examiner, Kind.RESUMED);
    assertThat(seenBy(shop.learner)).isNotNull();
    shop.clock.pass(Period.ofYears(1).plusDays(2));
    assertThatThrownBy(() -> seenBy(shop.learner)).isInstanceOf(NotAllowedException.class);
  }

  @Test
  void it_rests_on_the_evidence_of_its_own_decision_whatever_came_after() {
    shop.paperFalls(shop.learner);
    shop.change(shop.examiner, Kind.SUSPENDED);
    shop.change(shop.examiner, Kind.RESUMED);
    assertThat(shop.evidence().isComplete()).isFalse();
    assertThat(seenBy(shop.learner).evidence().isComplete()).isTrue();
    assertThat(seenBy(shop.learner).evidence().panels()).hasSize(3);
  }

  @Test
  void after_a_renewal_each_rests_on_its_own() {
    SignOff first = shop.signOff();
    shop.clock.pass(Duration.ofDays(320));
    shop.threePanels(shop.learner, shop.instructor);
    assertThat(shop.grant(shop.examiner)).isEmpty();
    assertThat(panels(first)).isNotEqualTo(panels(shop.signOff()));
    assertThat(panels(shop.signOff())).isEqualTo(shop.evidence().panels());
  }

  private List<Evidence.Panel> panels(SignOff signOff) {
    return certificates.of(shop.learner, signOff.id()).evidence().panels();
  }
}
