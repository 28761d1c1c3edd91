package lapline.practice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lapline.people.NotFoundException;
import lapline.people.Person;

/**
 * The targets a panel is held against: the task file's, unless the workshop's data sheet says
 * otherwise, unless the card of the gun in use says otherwise still.
 */
@ApplicationScoped
public class TargetsInForce {
  private TargetRecords records;

  protected TargetsInForce() {}

  @Inject
  public TargetsInForce(TargetRecords records) {
    this.records = records;
  }

  /**
   * @param gunCard null for none
   * @return the task with each criterion's target and where it comes from
   */
  @Transactional
  public PracticeTask apply(Person by, PracticeTask task, UUID gunCard) {
    Map<String, TargetOverride> sheets =
        records.inForce(by.workshop(), task.id()).stream()
            .collect(Collectors.toMap(TargetOverride::criterion, Function.identity()));
    Optional<GunCard> card = Optional.ofNullable(gunCard).map(id -> ownCard(by, id));
    List<Criterion> criteria =
        task.criteria().stream()
            .map(c -> fromSheet(by, c, sheets.get(c.id())))
            .map(c -> card.map(g -> fromCard(by, c, g)).orElse(c))
            .toList();
    return task.withCriteria(criteria);
  }

  private GunCard ownCard(Person by, UUID id) {
    GunCard card = records.gunCard(id).orElseThrow(NotFoundException::new);
    by.mustBeIn(card.workshop());
    return card;
  }

  private static Criterion fromSheet(Person by, Criterion criterion, TargetOverride override) {
    return override == null ? criterion : with(by, criterion, override.target(), override.sheet());
  }

  private static Criterion fromCard(Person by, Criterion criterion, GunCard card) {
    String range = card.byName().get(criterion.card());
    return range == null ? criterion : with(by, criterion, range, card.name());
  }

  private static Criterion with(Person by, Criterion criterion, String typed, String source) {
    ReadTarget read = TargetText.understand(typed, criterion.spoken(), by.units());
    return read.asRange().map(r -> criterion.withTarget(r, source)).orElse(criterion);
  }
}
