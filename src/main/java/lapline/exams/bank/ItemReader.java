package lapline.exams.bank;

import java.util.List;
import java.util.Set;
import lapline.content.YamlNode;
import lapline.content.units.PerSystem;
import lapline.content.units.Quantity;
import lapline.content.units.QuantityWords;
import lapline.exams.bank.Item.Choice;
import lapline.exams.bank.Item.ChoiceItem;
import lapline.exams.bank.Item.Head;
import lapline.exams.bank.Item.NumberItem;
import lapline.exams.bank.Item.NumberSlip;
import lapline.exams.bank.Item.OrderItem;
import lapline.exams.bank.Item.Step;
import lapline.trade.measure.Dimension;

/** Reads one question from its entry in a bank. */
final class ItemReader {
  /** Name of the result in a worked answer. */
  static final String ANSWER = "answer";

  private static final String ID_FORM = "[a-z][a-z0-9-]*";
  private static final int FEWEST_STEPS = 3;

  private ItemReader() {}

  static Item read(YamlNode node) {
    ItemKind kind = ItemKind.of(node.oneOf("kind", ItemKind.words()));
    Item item =
        switch (kind) {
          case SINGLE, SEVERAL -> choices(node, kind);
          case ORDER -> order(node);
          case NUMBER -> number(node);
          case COMPUTED -> ComputedItemReader.read(node);
        };
    node.refuseOtherKeys();
    return item;
  }

  static Head head(YamlNode node, Set<String> values) {
    Head head =
        new Head(node.text("id"), node.text("topic"), node.text("question"), node.text("source"));
    if (!head.id().matches(ID_FORM) && !head.id().isEmpty()) {
      node.problem(
          "the id '" + head.id() + "' has other signs", "use small letters, digits and hyphens");
    }
    node.at("question").ifPresent(q -> WordingCheck.check(q, values));
    return head;
  }

  private static Item choices(YamlNode node, ItemKind kind) {
    List<Choice> choices = node.list("choices").stream().map(ItemReader::choice).toList();
    long right = choices.stream().filter(Choice::right).count();
    if (kind == ItemKind.SINGLE && right != 1) {
      node.problem(right + " choices are right", "mark exactly one with right: yes");
    }
    if (kind == ItemKind.SEVERAL && (right < 2 || right == choices.size())) {
      node.problem(
          right + " of " + choices.size() + " choices are right",
          "mark two or more, and leave at least one that is wrong");
    }
    if (choices.size() < 3) {
      node.problem("there are fewer than three choices", "add the mistakes people really make");
    }
    return new ChoiceItem(head(node, Set.of()), kind, choices);
  }

  private static Choice choice(YamlNode node) {
    return new Choice(wording(node, "text"), node.yesNo("right", false), wording(node, "because"));
  }

  private static Item order(YamlNode node) {
    List<Step> steps =
        node.list("steps").stream()
            .map(s -> new Step(wording(s, "text"), wording(s, "because")))
            .toList();
    if (steps.size() < FEWEST_STEPS) {
      node.problem("there are fewer than three steps", "write the steps in their right order");
    }
    return new OrderItem(head(node, Set.of()), steps);
  }

  private static Item number(YamlNode node) {
    PerSystem<Quantity> answer =
        node.at("answer").map(BankQuantities::answer).orElseGet(() -> missing(node, "answer"));
    Dimension dimension = answer.metric().dimension();
    node.at("worked").ifPresent(w -> WordingCheck.check(w, Set.of(ANSWER)));
    return new NumberItem(
        head(node, Set.of()),
        answer,
        within(node, dimension),
        node.text("worked"),
        node.optionalList("slips").stream().map(s -> slip(s, dimension)).toList());
  }

  private static NumberSlip slip(YamlNode node, Dimension dimension) {
    PerSystem<Quantity> answer =
        node.at("answer").map(BankQuantities::answer).orElseGet(() -> missing(node, "answer"));
    if (answer.metric().dimension() != dimension) {
      node.problem("the slip measures another thing than the answer", "write it in the same unit");
    }
    return new NumberSlip(answer, wording(node, "because"));
  }

  static Tolerance within(YamlNode node, Dimension dimension) {
    return node.at("within")
        .map(w -> BankQuantities.tolerance(w, dimension))
        .orElseGet(() -> new Tolerance(missing(node, "within").metric()));
  }

  /** A text without values of its own, looked over. */
  static String wording(YamlNode node, String key) {
    node.at(key).ifPresent(text -> WordingCheck.check(text, Set.of()));
    return node.text(key);
  }

  /** Tells that the key is missing and gives a harmless stand-in. */
  private static PerSystem<Quantity> missing(YamlNode node, String key) {
    node.text(key);
    Quantity one = QuantityWords.read("1").orElseThrow();
    return new PerSystem<>(one, one);
  }
}
