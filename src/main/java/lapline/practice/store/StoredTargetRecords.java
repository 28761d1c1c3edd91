package lapline.practice.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import lapline.practice.GunCard;
import lapline.practice.TargetOverride;
import lapline.practice.TargetRecords;

/** Keeps a workshop's own targets and gun cards in the database. */
@ApplicationScoped
@Transactional
public class StoredTargetRecords implements TargetRecords {
  private static final String OVERRIDES =
      "select o from TargetOverrideEntity o where o.workshop = :workshop and o.task = :task";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<TargetOverride> inForce(UUID workshop, String task) {
    return overrides(OVERRIDES + " and o.retiredAt is null order by o.criterion", workshop, task);
  }

  @Override
  public List<TargetOverride> history(UUID workshop, String task) {
    return overrides(OVERRIDES + " order by o.madeAt desc, o.id", workshop, task);
  }

  private List<TargetOverride> overrides(String query, UUID workshop, String task) {
    return rows.createQuery(query, TargetOverrideEntity.class)
        .setParameter("workshop", workshop)
        .setParameter("task", task)
        .setMaxResults(500)
        .getResultStream()
        .map(TargetOverrideEntity::asOverride)
        .toList();
  }

  @Override
  public void add(TargetOverride override) {
    rows.persist(TargetOverrideEntity.of(override));
  }

  @Override
  public void retire(UUID override, UUID by, Instant at) {
    TargetOverrideEntity row = rows.find(TargetOverrideEntity.class, override);
    row.retiredBy = by;
    row.retiredAt = at;
  }

  @Override
  public List<GunCard> gunCards(UUID workshop) {
    return rows.createQuery(
            "select c from GunCardEntity c where c.workshop = :workshop and c.retiredAt is null"
                + " order by c.name, c.id",
            GunCardEntity.class)
        .setParameter("workshop", workshop)
        .setMaxResults(200)
        .getResultStream()
        .map(GunCardEntity::asCard)
        .toList();
  }

  @Override
  public Optional<GunCard> gunCard(UUID id) {
    return Optional.ofNullable(rows.find(GunCardEntity.class, id)).map(GunCardEntity::asCard);
  }

  @Override
  public void add(GunCard card) {
    rows.persist(GunCardEntity.of(card));
  }

  @Override
  public void change(GunCard putAway) {
    GunCardEntity row = rows.find(GunCardEntity.class, putAway.id());
    row.retiredBy = putAway.retiredBy();
    row.retiredAt = putAway.retired();
  }
}
