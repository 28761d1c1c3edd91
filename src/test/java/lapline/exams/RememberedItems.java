package lapline.exams;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import lapline.judgement.items.ItemSums;

/** What is kept about items, in memory, for tests of the rules. */
public final class RememberedItems implements ItemRecords {
  final List<Answered> answered = new ArrayList<>();
  final List<Given> given = new ArrayList<>();
  private final List<SetAside> aside = new ArrayList<>();

  @Override
  public List<Answered> answered(UUID workshop, String unit) {
    return answered;
  }

  @Override
  public List<Given> given(UUID workshop, String unit) {
    return given;
  }

  @Override
  public ItemSums answered(UUID workshop, String unit, String item, String version) {
    return answered.stream()
        .filter(a -> a.item().equals(item) && a.version().equals(version))
        .map(Answered::sums)
        .reduce(ItemSums.NONE, ItemSums::and);
  }

  @Override
  public List<Given> given(UUID workshop, String unit, String item, String version) {
    return given.stream()
        .filter(g -> g.item().equals(item) && g.version().equals(version))
        .toList();
  }

  @Override
  public Set<String> aside(UUID workshop, String unit) {
    return aside.stream()
        .filter(a -> a.workshop().equals(workshop) && a.unit().equals(unit) && a.back() == null)
        .map(SetAside::item)
        .collect(Collectors.toSet());
  }

  @Override
  public List<SetAside> history(UUID workshop, String unit, String item) {
    return aside.stream()
        .filter(a -> a.workshop().equals(workshop) && a.unit().equals(unit))
        .filter(a -> a.item().equals(item))
        .sorted(Comparator.comparing(SetAside::at).reversed())
        .toList();
  }

  @Override
  public void add(SetAside one) {
    aside.add(one);
  }

  @Override
  public void bringBack(UUID workshop, String unit, String item, Instant at, UUID by) {
    aside.replaceAll(
        a ->
            a.workshop().equals(workshop) && a.item().equals(item) && a.back() == null
                ? new SetAside(
                    a.id(), a.workshop(), a.unit(), a.item(), a.at(), a.by(), a.reason(), at, by)
                : a);
  }
}
