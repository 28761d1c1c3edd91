package lapline.exams.bank;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The questions of one unit's short exam.
 *
 * @param unit id of the unit, the same as the bank's own
 */
public record Bank(String unit, String title, Blueprint blueprint, List<Item> items) {

  public Bank {
    items = List.copyOf(items);
  }

  public List<Item> of(ItemKind kind) {
    return items.stream().filter(i -> i.kind() == kind).toList();
  }

  /** This bank without the items of these ids. */
  public Bank without(Set<String> ids) {
    return new Bank(
        unit, title, blueprint, items.stream().filter(i -> !ids.contains(i.id())).toList());
  }

  public Set<String> topics() {
    return items.stream().map(Item::topic).collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
