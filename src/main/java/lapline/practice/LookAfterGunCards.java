package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import lapline.people.NotFoundException;
import lapline.people.PeopleRecords;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Writes down what the makers of a workshop's guns say. A card is never changed, only followed by
 * another, so that a scored panel's card stays what it was; a panel not yet scored goes on under
 * the card that follows.
 */
@ApplicationScoped
public class LookAfterGunCards {
  private TargetRecords records;
  private AttemptRecords attempts;
  private PeopleRecords people;
  private Clock clock;

  protected LookAfterGunCards() {}

  @Inject
  public LookAfterGunCards(
      TargetRecords records, AttemptRecords attempts, PeopleRecords people, Clock clock) {
    this.records = records;
    this.attempts = attempts;
    this.people = people;
    this.clock = clock;
  }

  @Transactional
  public List<GunCard> inUse(Person by) {
    return records.gunCards(by.workshop());
  }

  /**
   * The cards in use, and the one that a panel was begun with where it was put away since, so that
   * it does not lose its card by being sent.
   *
   * @param begunWith null for none
   */
  @Transactional
  public List<GunCard> choosable(Person by, UUID begunWith) {
    Optional<GunCard> former =
        Optional.ofNullable(begunWith)
            .flatMap(records::gunCard)
            .filter(c -> !c.inUse() && c.workshop().equals(by.workshop()));
    return Stream.concat(inUse(by).stream(), former.stream()).toList();
  }

  /** A card of the person's own workshop, in use or not. */
  @Transactional
  public GunCard find(Person by, UUID id) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    GunCard card = records.gunCard(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(card.workshop());
    return card;
  }

  /**
   * @return what is wrong with the fields {@code name}, {@code distance} …; empty when it is kept
   */
  @Transactional
  public List<FieldProblem> add(Person by, String name, GunCard.Ranges ranges) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    people.hold(by.workshop());
    return keep(by, null, name, ranges);
  }

  /**
   * Puts another card in the place of one in use.
   *
   * @return as {@link #add}
   */
  @Transactional
  public List<FieldProblem> correct(Person by, UUID id, String name, GunCard.Ranges ranges) {
    people.hold(by.workshop());
    GunCard former = find(by, id);
    if (!former.inUse()) {
      String who = people.names(List.of(former.retiredBy())).getOrDefault(former.retiredBy(), "–");
      return List.of(new FieldProblem("name", "targets.wrong.card-followed", List.of(who)));
    }
    return keep(by, former, name, ranges);
  }

  @Transactional
  public void retire(Person by, UUID id) {
    people.hold(by.workshop());
    GunCard card = find(by, id);
    if (card.inUse()) {
      records.change(card.putAway(by.id(), clock.instant()));
    }
  }

  /** The cards that this one corrects, the last one first. */
  @Transactional
  public List<GunCard> before(Person by, GunCard card) {
    List<GunCard> before = new ArrayList<>();
    Optional<GunCard> former = Optional.ofNullable(card.follows()).map(id -> find(by, id));
    while (former.isPresent()) {
      before.add(former.get());
      former = Optional.ofNullable(former.get().follows()).map(id -> find(by, id));
    }
    return before;
  }

  private List<FieldProblem> keep(Person by, GunCard former, String name, GunCard.Ranges ranges) {
    List<GunCard> others =
        records.gunCards(by.workshop()).stream()
            .filter(c -> former == null || !c.id().equals(former.id()))
            .toList();
    List<FieldProblem> problems = new GunCardCheck(by.units()).problems(name, ranges, others);
    if (problems.isEmpty()) {
      GunCard card = card(by, former, name, ranges);
      records.add(card);
      if (former != null) {
        records.change(former.putAway(by.id(), clock.instant()));
        attempts.draftsFollow(former.id(), card.id());
      }
    }
    return problems;
  }

  private GunCard card(Person by, GunCard former, String name, GunCard.Ranges ranges) {
    return new GunCard(
        UUID.randomUUID(),
        by.workshop(),
        name.strip(),
        GunCardCheck.withUnits(ranges, by.units()),
        former == null ? null : former.id(),
        by.id(),
        clock.instant(),
        null,
        null);
  }
}
