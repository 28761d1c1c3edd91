package lapline.exams.store;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceContext;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import lapline.exams.ItemRecords;
import lapline.judgement.items.ItemSums;

/** Adds up in the database how items were answered, and keeps which are set aside. */
@ApplicationScoped
@Transactional
public class StoredItemRecords implements ItemRecords {
  /** The marks of a unit's papers, each with the sum of all marks on its paper. */
  private static final String MARKS =
      " from paper p join paper_mark m on m.paper_id = p.id"
          + " join (select x.paper_id, sum(x.mark) as total from paper y"
          + " join paper_mark x on x.paper_id = y.id"
          + " where y.workshop_id = :workshop and y.unit_id = :unit and y.handed_in_at is not null%s"
          + " group by x.paper_id) t on t.paper_id = p.id"
          + " where p.workshop_id = :workshop and p.unit_id = :unit and p.handed_in_at is not null";

  /** Of all papers only those that had one wording of one item. */
  private static final String THAT_HAD_IT =
      " and exists (select 1 from paper_mark o where o.paper_id = y.id and o.unit_id = :unit"
          + " and o.item_id = :item and o.item_version = :version)";

  private static final String THIS_ONE = " and m.item_id = :item and m.item_version = :version";
  private static final String CHOICES = " and m.kind in ('SINGLE', 'SEVERAL')";

  private static final String SUMS =
      "count(*), sum(m.mark), sum(m.mark * m.mark), sum(t.total - m.mark),"
          + " sum((t.total - m.mark) * (t.total - m.mark)), sum(m.mark * (t.total - m.mark))";

  @PersistenceContext private EntityManager rows;

  @Override
  public List<Answered> answered(UUID workshop, String unit) {
    return sums("m.item_id, m.item_version", "", "", Map.of("workshop", workshop, "unit", unit))
        .stream()
        .map(r -> new Answered((String) r[0], (String) r[1], sums(r, 2)))
        .toList();
  }

  @Override
  public List<Given> given(UUID workshop, String unit) {
    return given("", CHOICES, Map.of("workshop", workshop, "unit", unit));
  }

  @Override
  public ItemSums answered(UUID workshop, String unit, String item, String version) {
    String by = "m.item_id, m.item_version";
    return sums(by, THAT_HAD_IT, THIS_ONE, wording(workshop, unit, item, version)).stream()
        .map(r -> sums(r, 2))
        .findFirst()
        .orElse(ItemSums.NONE);
  }

  @Override
  public List<Given> given(UUID workshop, String unit, String item, String version) {
    return given(THAT_HAD_IT, CHOICES + THIS_ONE, wording(workshop, unit, item, version));
  }

  private static Map<String, Object> wording(
      UUID workshop, String unit, String item, String version) {
    return Map.of("workshop", workshop, "unit", unit, "item", item, "version", version);
  }

  private List<Given> given(String papers, String marks, Map<String, Object> values) {
    return sums("m.item_id, m.item_version, m.given", papers, marks, values).stream()
        .map(r -> new Given((String) r[0], (String) r[1], (String) r[2], sums(r, 3)))
        .toList();
  }

  private List<Object[]> sums(String by, String papers, String marks, Map<String, Object> values) {
    String from = MARKS.formatted(papers) + marks;
    var query =
        rows.createNativeQuery(
            "select " + by + ", " + SUMS + from + " group by " + by, Object[].class);
    values.forEach(query::setParameter);
    return query.getResultList();
  }

  private static ItemSums sums(Object[] row, int from) {
    return new ItemSums(
        ((Number) row[from]).longValue(),
        number(row[from + 1]),
        number(row[from + 2]),
        number(row[from + 3]),
        number(row[from + 4]),
        number(row[from + 5]));
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  @Override
  public Set<String> aside(UUID workshop, String unit) {
    return new HashSet<>(
        rows.createQuery(
                "select a.item from ItemSetAsideEntity a where a.workshop = :workshop"
                    + " and a.unit = :unit and a.back is null",
                String.class)
            .setParameter("workshop", workshop)
            .setParameter("unit", unit)
            .getResultList());
  }

  @Override
  public List<SetAside> history(UUID workshop, String unit, String item) {
    return rows.createQuery(
            "select a from ItemSetAsideEntity a where a.workshop = :workshop and a.unit = :unit"
                + " and a.item = :item order by a.at desc",
            ItemSetAsideEntity.class)
        .setParameter("workshop", workshop)
        .setParameter("unit", unit)
        .setParameter("item", item)
        .getResultStream()
        .map(ItemSetAsideEntity::read)
        .toList();
  }

  @Override
  public void add(SetAside aside) {
    rows.persist(ItemSetAsideEntity.of(aside));
  }

  @Override
  public void bringBack(UUID workshop, String unit, String item, Instant at, UUID by) {
    rows.createQuery(
            "update ItemSetAsideEntity a set a.back = :at, a.backBy = :by, a.openKey = null"
                + " where a.openKey = :key")
        .setParameter("at", at)
        .setParameter("by", by)
        .setParameter("key", ItemSetAsideEntity.openKey(workshop, unit, item))
        .executeUpdate();
  }
}
