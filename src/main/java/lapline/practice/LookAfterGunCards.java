package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;
import lapline.trade.measure.Dimension;

/**
 * Writes down what the makers of a workshop's guns say. A card is never changed, only followed by
 * another, so that a panel's card stays what it was.
 */
@ApplicationScoped
public class LookAfterGunCards {
  /** What each range on a card measures. */
  private static final Map<String, Dimension> KINDS =
      Map.of(
          "distance", Dimension.LENGTH,
          "pressure", Dimension.PRESSURE,
          "overlap", Dimension.SHARE,
          "speed", Dimension.SPEED,
          "fan", Dimension.LENGTH);

  private TargetRecords records;
  private Clock clock;

  protected LookAfterGunCards() {}

  @Inject
  public LookAfterGunCards(TargetRecords records, Clock clock) {
    this.records = records;
    this.clock = clock;
  }

  @Transactional
  public List<GunCard> inUse(Person by) {
    return records.gunCards(by.workshop());
  }

  /**
   * @return what is wrong with the fields {@code name}, {@code distance} …; empty when it is kept
   */
  @Transactional
  public List<FieldProblem> add(Person by, String name, GunCard.Ranges ranges) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    GunCard card =
        new GunCard(
            UUID.randomUUID(),
            by.workshop(),
            name.strip(),
            withUnits(by, ranges),
            by.id(),
            clock.instant(),
            null);
    List<FieldProblem> problems = problems(by, card);
    if (problems.isEmpty()) {
      records.add(card);
    }
    return problems;
  }

  @Transactional
  public void retire(Person by, UUID id) {
    by.mustBe(Role.REGISTRAR, Role.INSTRUCTOR);
    GunCard card = records.gunCard(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(card.workshop());
    records.retireGunCard(id, clock.instant());
  }

  private static GunCard.Ranges withUnits(Person by, GunCard.Ranges r) {
    return new GunCard.Ranges(
        withUnit(by, "distance", r.distance()),
        withUnit(by, "pressure", r.pressure()),
        withUnit(by, "overlap", r.overlap()),
        withUnit(by, "speed", r.speed()),
        withUnit(by, "fan", r.fan()));
  }

  private static String withUnit(Person by, String kind, String typed) {
    return TargetText.withUnit(typed, KINDS.get(kind), by.units());
  }

  private static List<FieldProblem> problems(Person by, GunCard card) {
    List<FieldProblem> problems = new ArrayList<>();
    if (card.name().isEmpty() || card.name().length() > 120) {
      problems.add(new FieldProblem("name", "targets.wrong.card-name", List.of("120")));
    }
    card.byName()
        .forEach(
            (kind, typed) -> {
              if (typed.length() > 60
                  || TargetText.read(typed, KINDS.get(kind), by.units()).isEmpty()) {
                problems.add(
                    new FieldProblem(kind, "targets.wrong.not-a-range", List.of(typed, "")));
              }
            });
    return problems;
  }
}
