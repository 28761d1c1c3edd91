package lapline.exams;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lapline.exams.ItemRecords.Answered;
import lapline.exams.ItemRecords.Given;
import lapline.exams.ItemStudied.ChoiceStudied;
import lapline.exams.bank.Bank;
import lapline.exams.bank.Item;
import lapline.exams.bank.QuestionBanks;
import lapline.judgement.items.ItemSums;
import lapline.people.NotFoundException;
import lapline.people.Person;
import lapline.people.Role;

/**
 * Are our questions any good? What the papers of the instructor's workshop say about each item of a
 * unit, in two queries. A reworded item begins anew, for the old answers were to another question.
 */
@ApplicationScoped
public class StudyItems {
  private ItemRecords records;
  private QuestionBanks banks;

  protected StudyItems() {}

  @Inject
  public StudyItems(ItemRecords records, QuestionBanks banks) {
    this.records = records;
    this.banks = banks;
  }

  /** The items of a unit, those that need a look first, those set aside last. */
  @Transactional
  public List<ItemStudied> run(Person by, String unit) {
    by.mustBe(Role.INSTRUCTOR);
    Bank bank = banks.bank(unit).orElseThrow(NotFoundException::new);
    List<Answered> answered = records.answered(by.workshop(), unit);
    List<Given> given = records.given(by.workshop(), unit);
    Set<String> aside = records.aside(by.workshop(), unit);
    return bank.items().stream()
        .map(item -> studied(item, answered, given, aside.contains(item.id())))
        .sorted(Comparator.comparing(ItemStudied::aside).thenComparing(ItemStudied::worth))
        .toList();
  }

  /** One item, from the papers that had it as it is worded now. */
  @Transactional
  public ItemStudied one(Person by, String unit, String id) {
    by.mustBe(Role.INSTRUCTOR);
    Item item =
        banks
            .bank(unit)
            .flatMap(bank -> bank.items().stream().filter(i -> i.id().equals(id)).findFirst())
            .orElseThrow(NotFoundException::new);
    ItemSums sums = records.answered(by.workshop(), unit, id, item.version());
    List<Given> given =
        item instanceof Item.ChoiceItem
            ? records.given(by.workshop(), unit, id, item.version())
            : List.of();
    boolean aside = records.aside(by.workshop(), unit).contains(id);
    return new ItemStudied(item, sums, choices(item, given, sums.papers()), aside);
  }

  private static ItemStudied studied(
      Item item, List<Answered> answered, List<Given> given, boolean aside) {
    String version = item.version();
    ItemSums sums =
        answered.stream()
            .filter(a -> a.item().equals(item.id()) && a.version().equals(version))
            .map(Answered::sums)
            .reduce(ItemSums.NONE, ItemSums::and);
    List<Given> own =
        given.stream()
            .filter(g -> g.item().equals(item.id()) && g.version().equals(version))
            .toList();
    return new ItemStudied(item, sums, choices(item, own, sums.papers()), aside);
  }

  private static List<ChoiceStudied> choices(Item item, List<Given> given, long papers) {
    List<ChoiceStudied> studied = new ArrayList<>();
    if (item instanceof Item.ChoiceItem choosing) {
      Map<String, ItemSums> byKey = byKey(given);
      for (int key = 1; key <= choosing.choices().size(); key++) {
        ItemSums ticked = byKey.getOrDefault(String.valueOf(key), ItemSums.NONE);
        double share = papers == 0 ? 0 : (double) ticked.papers() / papers;
        studied.add(
            new ChoiceStudied(
                choosing.choices().get(key - 1), ticked.papers(), share, ticked.meanRest()));
      }
    }
    return studied;
  }

  /** An answer of several ticks counts for each of them. */
  private static Map<String, ItemSums> byKey(List<Given> given) {
    return given.stream()
        .flatMap(g -> Arrays.stream(g.given().split(",")).map(key -> Map.entry(key, g.sums())))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, ItemSums::and));
  }
}
