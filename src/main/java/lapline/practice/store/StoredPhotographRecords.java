package lapline.practice.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.practice.photographs.Photograph;
import lapline.practice.photographs.PhotographRecords;

/** Keeps the list of photographs in the database. */
@ApplicationScoped
@Transactional
public class StoredPhotographRecords implements PhotographRecords {
  @PersistenceContext private EntityManager rows;

  @Override
  public void add(Photograph photograph) {
    rows.persist(PhotographEntity.of(photograph));
  }

  @Override
  public List<Photograph> of(UUID attempt) {
    return rows.createQuery(
            "select p from PhotographEntity p where p.attempt = :attempt order by p.addedAt, p.id",
            PhotographEntity.class)
        .setParameter("attempt", attempt)
        .getResultStream()
        .map(PhotographEntity::asPhotograph)
        .toList();
  }

  @Override
  public Optional<Photograph> photograph(UUID id) {
    return Optional.ofNullable(rows.find(PhotographEntity.class, id))
        .map(PhotographEntity::asPhotograph);
  }

  @Override
  public void remove(UUID id) {
    rows.remove(rows.find(PhotographEntity.class, id));
  }

  @Override
  public Set<String> shown(String beginning) {
    return rows.createQuery(
            "select p.hash from PhotographEntity p where p.hash like concat(:beginning, '%')",
            String.class)
        .setParameter("beginning", beginning)
        .getResultStream()
        .collect(Collectors.toSet());
  }
}
