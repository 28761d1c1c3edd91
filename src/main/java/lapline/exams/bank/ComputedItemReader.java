package lapline.exams.bank;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.content.units.PerSystem;
import lapline.exams.bank.Item.ComputedItem;
import lapline.exams.bank.Item.ComputedSlip;

/** Reads a question whose number is worked out from drawn values. */
final class ComputedItemReader {
  private final YamlNode node;
  private final Map<String, PerSystem<ValueRange>> values = new LinkedHashMap<>();

  private ComputedItemReader(YamlNode node) {
    this.node = node;
    YamlNode written = node.map("values");
    for (String name : written.keys()) {
      written.at(name).ifPresent(v -> values.put(name, BankQuantities.range(v)));
    }
  }

  static Item read(YamlNode node) {
    return new ComputedItemReader(node).read();
  }

  private Item read() {
    Calculation calculation = calculation(node, "calculation");
    Map<String, Calculation> shown = new LinkedHashMap<>();
    node.optionalMap("shown")
        .ifPresent(s -> s.keys().forEach(k -> shown.put(k, calculation(s, k))));
    Set<String> known = new LinkedHashSet<>(values.keySet());
    known.add(ItemReader.ANSWER);
    known.addAll(shown.keySet());
    node.at("worked").ifPresent(w -> WordingCheck.check(w, known));
    return new ComputedItem(
        ItemReader.head(node, values.keySet()),
        values,
        calculation,
        ItemReader.within(node, calculation.result()),
        node.text("worked"),
        shown,
        node.optionalList("slips").stream().map(this::slip).toList());
  }

  private ComputedSlip slip(YamlNode slip) {
    String because = ItemReader.wording(slip, "because");
    Optional<String> given = slip.optionalText("given");
    if (given.isEmpty()) {
      return new ComputedSlip(calculation(slip, "calculation"), null, because);
    }
    if (!values.containsKey(given.get())) {
      slip.problem(
          "there is no value '" + given.get() + "'",
          "write one of: " + String.join(", ", values.keySet()));
    }
    return new ComputedSlip(null, given.get(), because);
  }

  private Calculation calculation(YamlNode at, String key) {
    Calculation calculation = Calculation.named(at.oneOf(key, Calculation.words())).orElseThrow();
    for (String need : calculation.needs()) {
      if (!values.containsKey(need)) {
        at.problem(
            calculation.word() + " needs the value '" + need + "'",
            "add it under values, like " + need + ": 60 to 90 by 5 um");
      }
    }
    return calculation;
  }
}
