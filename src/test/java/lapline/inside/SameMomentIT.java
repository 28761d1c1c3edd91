package lapline.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.annotation.Resource;
import jakarta.enterprise.concurrent.ManagedExecutorService;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.UserTransaction;
import java.net.URL;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import lapline.demo.Arranged;
import lapline.exams.SetItemAside;
import lapline.grading.GradePanel;
import lapline.grading.Grading;
import lapline.journeys.Arranging;
import lapline.journeys.Web;
import lapline.people.AccountRefusedException;
import lapline.people.ChangeAccount;
import lapline.people.CorrectNames;
import lapline.people.LookAfterPeople;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;
import lapline.people.Workshop;
import lapline.practice.ChangeTargets;
import lapline.practice.FieldProblem;
import lapline.practice.GunCard;
import lapline.practice.LookAfterGunCards;
import lapline.signoff.DecideSkill;
import org.jboss.arquillian.container.test.api.Deployment;
import org.jboss.arquillian.junit5.ArquillianExtension;
import org.jboss.arquillian.test.api.ArquillianResource;
import org.jboss.shrinkwrap.api.spec.WebArchive;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Two people, or two windows, do the same at the same moment: the second begins before the first
 * has ended, on the real database, and is told what the first did.
 */
@ExtendWith(ArquillianExtension.class)
class SameMomentIT {
  private static final String UNIT = "masking";
  private static final String ITEM = "soft-edge";

  @Deployment
  static WebArchive war() {
    return Arranging.desk()
        .addClasses(SameMomentIT.class, Arranging.class, BuiltWar.class, Web.class);
  }

  private static Arranged shop;

  @ArquillianResource private URL desk;

  @Resource private ManagedExecutorService threads;
  @Inject private UserTransaction transaction;
  @Inject private PeopleRecords people;
  @Inject private SetItemAside aside;
  @Inject private ChangeAccount accounts;
  @Inject private LookAfterPeople lookAfter;
  @Inject private CorrectNames names;
  @Inject private ChangeTargets targets;
  @Inject private LookAfterGunCards cards;
  @Inject private GradePanel grade;
  @Inject private DecideSkill decide;
  @PersistenceContext private EntityManager rows;

  /** What both came to, when the second begins while the first is not yet written for good. */
  private <T> List<T> both(Callable<T> first, Callable<T> second) throws Exception {
    List<T> outcomes = new ArrayList<>();
    Future<T> slower;
    transaction.begin();
    try {
      outcomes.add(first.call());
      rows.flush();
      slower = threads.submit(second);
      untilItWaits(slower);
    } finally {
      transaction.commit();
    }
    outcomes.add(slower.get(20, TimeUnit.SECONDS));
    return outcomes;
  }

  private static void untilItWaits(Future<?> slower) throws Exception {
    try {
      slower.get(700, TimeUnit.MILLISECONDS);
    } catch (TimeoutException waits) {
      // as it should: it waits for the first
    }
  }

  @BeforeEach
  void arrange() throws Exception {
    if (shop == null) {
      shop = Arranging.workshop(desk, "Tandem");
    }
  }

  private Person the(String who) {
    return people.bySignInName(shop.people().get(who)).orElseThrow();
  }

  @Test
  void of_two_who_set_a_question_aside_the_second_sees_that_it_is() throws Exception {
    Person one = the("instructor");
    Person two = the("grader");
    int before = aside.history(one, UNIT, ITEM).size();
    assertEquals(
        List.of(SetItemAside.Outcome.DONE, SetItemAside.Outcome.ALREADY),
        both(
            () -> aside.run(one, UNIT, ITEM, "Two answers fit."),
            () -> aside.run(two, UNIT, ITEM, "Unclear.")));
    var history = aside.history(two, UNIT, ITEM);
    assertEquals(before + 1, history.size());
    assertEquals(one.id(), history.get(0).by());
    assertEquals(
        List.of(SetItemAside.Outcome.DONE, SetItemAside.Outcome.ALREADY),
        both(() -> aside.bringBack(two, UNIT, ITEM), () -> aside.bringBack(one, UNIT, ITEM)));
    assertEquals(two.id(), aside.history(one, UNIT, ITEM).get(0).backBy());
  }

  @Test
  void of_two_presses_one_makes_a_token() throws Exception {
    Person owner = the("owner");
    String name = "press " + UUID.randomUUID();
    List<Optional<String>> made =
        both(() -> accounts.makeToken(owner, name), () -> accounts.makeToken(owner, name));
    assertTrue(made.get(0).isPresent());
    assertTrue(made.get(1).isEmpty());
    accounts.revokeToken(owner, accounts.goodToken(owner, name).orElseThrow().id());
  }

  @Test
  void of_two_workshops_that_want_one_sign_in_name_the_second_is_told() throws Exception {
    Person here = the("registrar");
    Person there = registrarOfAnotherWorkshop();
    String name = "new." + UUID.randomUUID();
    Set<Role> roles = Set.of(Role.APPRENTICE);
    List<Optional<String>> told =
        both(
            () -> refused(() -> lookAfter.add(here, "Nia Fairlead", name, roles)),
            () -> refused(() -> lookAfter.add(there, "Noor Bowline", name, roles)));
    assertEquals(List.of(Optional.empty(), Optional.of("people.add.taken")), told);
    assertEquals(here.workshop(), people.bySignInName(name).orElseThrow().workshop());

    Person one = lookAfter.add(here, "Oda Thimble", "old." + UUID.randomUUID(), roles);
    Person two = lookAfter.add(there, "Otis Marline", "old." + UUID.randomUUID(), roles);
    String next = "next." + UUID.randomUUID();
    told =
        both(
            () -> refused(() -> names.run(here, one.id(), one.name(), next)),
            () -> refused(() -> names.run(there, two.id(), two.name(), next)));
    assertEquals(List.of(Optional.empty(), Optional.of("people.add.taken")), told);
    assertEquals(one.id(), people.bySignInName(next).orElseThrow().id());
  }

  private Person registrarOfAnotherWorkshop() {
    Person here = the("registrar");
    Workshop another =
        new Workshop(UUID.randomUUID(), "Loft " + UUID.randomUUID(), here.zone(), here.units());
    people.addWorkshop(another, Instant.EPOCH);
    Person registrar =
        new Person(
            UUID.randomUUID(),
            another.id(),
            "Rolf Halyard",
            "rolf." + UUID.randomUUID(),
            Set.of(Role.REGISTRAR),
            here.units(),
            here.zone(),
            true);
    people.add(registrar, Instant.EPOCH);
    return registrar;
  }

  /** Key of what was refused; empty where nothing was. */
  private static Optional<String> refused(Callable<?> done) throws Exception {
    try {
      done.call();
      return Optional.empty();
    } catch (AccountRefusedException e) {
      return Optional.of(e.problems().get(0).key());
    }
  }

  @Test
  void of_two_targets_one_is_in_force_and_the_second_is_told() throws Exception {
    Person one = the("instructor");
    Person two = the("registrar");
    Object[] own = ownTarget();
    String task = (String) own[0];
    String criterion = (String) own[1];
    String target = (String) own[2];
    UUID seen = (UUID) own[3];
    List<List<FieldProblem>> told =
        both(
            () -> targets.run(one, task, criterion, target, "Sheet 1", "Ours.", seen),
            () -> targets.run(two, task, criterion, target, "Sheet 2", "Ours.", seen));
    assertEquals(List.of(), told.get(0));
    assertEquals(ChangeTargets.CHANGED_SINCE, told.get(1).get(0).key());
    assertEquals(one.name(), told.get(1).get(0).args().get(0));
    assertEquals(
        1,
        targets.history(one, task).stream()
            .filter(o -> o.inForce() && o.criterion().equals(criterion))
            .count());
  }

  /** The target that the workshop took from its data sheet. */
  private Object[] ownTarget() {
    return (Object[])
        rows.createQuery(
                "select o.task, o.criterion, o.target, o.id from TargetOverrideEntity o"
                    + " where o.retiredAt is null and o.workshop = :w",
                Object[].class)
            .setParameter("w", the("instructor").workshop())
            .setMaxResults(1)
            .getSingleResult();
  }

  @Test
  void of_two_gun_cards_of_one_name_one_is_written() throws Exception {
    Person one = the("instructor");
    Person two = the("grader");
    String name = "Gun " + UUID.randomUUID();
    var ranges = new GunCard.Ranges("4 to 6 in", "", "", "", "");
    List<List<FieldProblem>> told =
        both(() -> cards.add(one, name, ranges), () -> cards.add(two, name, ranges));
    assertEquals(List.of(), told.get(0));
    assertEquals("targets.wrong.card-twice", told.get(1).get(0).key());
    UUID card = card(one, name).id();
    var wider = new GunCard.Ranges("4 to 7 in", "", "", "", "");
    told =
        both(
            () -> cards.correct(one, card, name, wider),
            () -> cards.correct(two, card, name, wider));
    assertEquals(List.of(), told.get(0));
    assertEquals("targets.wrong.card-followed", told.get(1).get(0).key());
    assertEquals(one.name(), told.get(1).get(0).args().get(0));
    cards.retire(one, card(one, name).id());
  }

  private GunCard card(Person by, String name) {
    List<GunCard> named = cards.inUse(by).stream().filter(c -> c.name().equals(name)).toList();
    assertEquals(1, named.size());
    return named.get(0);
  }

  @Test
  void of_two_who_decide_about_a_panel_the_second_is_told() throws Exception {
    UUID panel = UUID.fromString(shop.one("waiting"));
    var bench =
        new GradePanel.Bench(
            Grading.Decision.RETURNED, "Look at the lower edge.", Map.of(), List.of());
    List<List<GradePanel.Refusal>> told =
        both(
            () -> grade.run(the("instructor"), panel, bench, null),
            () -> grade.run(the("grader"), panel, bench, null));
    assertEquals(List.of(), told.get(0));
    assertEquals(GradePanel.DECIDED_SINCE, told.get(1).get(0).key());
  }

  @Test
  void of_two_decisions_on_the_same_evidence_the_second_is_told() throws Exception {
    Person examiner = the("examiner");
    UUID person = UUID.fromString(shop.one("learner"));
    List<List<String>> told =
        both(
            () -> decide.run(examiner, person, UNIT, false, "Two more panels.", null),
            () -> decide.run(examiner, person, UNIT, true, "Three even panels.", null));
    assertEquals(List.of(List.of(), List.of(DecideSkill.DECIDED_SINCE)), told);
  }
}
