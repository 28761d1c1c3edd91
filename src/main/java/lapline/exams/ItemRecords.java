package lapline.exams;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import lapline.judgement.items.ItemSums;

/** What is kept about items: how papers answered them, and which a workshop has set aside. */
public interface ItemRecords {

  /** How one wording of an item was answered on the papers of a workshop. */
  record Answered(String item, String version, ItemSums sums) {}

  /**
   * How often one answer was given to an item of choices.
   *
   * @param given keys of the ticked choices, as in {@link ItemMark#given()}
   */
  record Given(String item, String version, String given, ItemSums sums) {}

  /**
   * An item that is drawn no more until it is brought back.
   *
   * @param back null while it is set aside
   * @param backBy null likewise
   */
  record SetAside(
      UUID id,
      UUID workshop,
      String unit,
      String item,
      Instant at,
      UUID by,
      String reason,
      Instant back,
      UUID backBy) {}

  /** Every wording of every item of the unit that was answered on a paper handed in. */
  List<Answered> answered(UUID workshop, String unit);

  /** Every answer to the unit's items of choices. */
  List<Given> given(UUID workshop, String unit);

  /** How one wording of one item was answered, without reading the papers that did not have it. */
  ItemSums answered(UUID workshop, String unit, String item, String version);

  /** Every answer to one wording of one item of choices. */
  List<Given> given(UUID workshop, String unit, String item, String version);

  /** Ids of the unit's items that are set aside now. */
  Set<String> aside(UUID workshop, String unit);

  /** All times an item was set aside, the newest first. */
  List<SetAside> history(UUID workshop, String unit, String item);

  void add(SetAside aside);

  /** Brings an item back; nothing happens when it is not set aside. */
  void bringBack(UUID workshop, String unit, String item, Instant at, UUID by);
}
