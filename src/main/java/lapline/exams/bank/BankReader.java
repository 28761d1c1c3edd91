package lapline.exams.bank;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.content.units.Quantity;
import lapline.content.units.QuantityWords;
import lapline.trade.measure.Dimension;

/** Reads the question banks: each file of {@code question-banks/} is one unit's. */
public final class BankReader {
  private static final String FOLDER = "question-banks";

  private final ContentFiles files;

  public BankReader(ContentFiles files) {
    this.files = files;
  }

  /** Never fails: a broken bank is left out and told among the problems. */
  public QuestionBanks read() {
    List<Bank> banks = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String path : files.list(FOLDER, ".yaml")) {
      ContentReading<Bank> reading = read(path);
      problems.addAll(reading.problems());
      reading.usable().ifPresent(banks::add);
    }
    return new QuestionBanks(banks, problems);
  }

  private ContentReading<Bank> read(String path) {
    Problems problems = new Problems(path);
    Optional<ContentFile> file = files.read(path, problems);
    Optional<YamlNode> node = file.flatMap(f -> YamlFile.read(f, problems));
    Bank bank = node.map(n -> bank(file.get().id(), n)).orElse(null);
    return ContentReading.of(bank, problems);
  }

  private static Bank bank(String unit, YamlNode node) {
    Blueprint blueprint = blueprint(node.map("paper"));
    List<YamlNode> entries = node.list("items");
    List<Item> items = entries.stream().map(ItemReader::read).toList();
    refuseTwins(entries, items);
    Bank bank = new Bank(unit, node.text("title"), blueprint, items);
    node.refuseOtherKeys();
    refuseThin(node, bank);
    return bank;
  }

  private static Blueprint blueprint(YamlNode node) {
    Map<ItemKind, Integer> draw = new EnumMap<>(ItemKind.class);
    for (ItemKind kind : ItemKind.values()) {
      draw.put(kind, node.wholeNumber(kind.word(), 0));
    }
    double pass = quantity(node, "pass", Dimension.SHARE, "75 %");
    if (pass > 1 || pass <= 0) {
      node.problem("nobody can reach this pass mark", "write a share of the marks, like 75 %");
    }
    double wait = quantity(node, "wait", Dimension.DURATION, "30 min");
    return new Blueprint(draw, pass, Duration.ofSeconds(Math.round(wait)));
  }

  private static double quantity(YamlNode node, String key, Dimension dimension, String example) {
    String written = node.text(key);
    Optional<Quantity> read = QuantityWords.read(written, dimension);
    if (read.isEmpty() && !written.isEmpty()) {
      node.problem("'" + key + ": " + written + "' is not understood", "write it like " + example);
    }
    return read.map(Quantity::si).orElse(1.0);
  }

  private static void refuseTwins(List<YamlNode> entries, List<Item> items) {
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < items.size(); i++) {
      if (!taken.add(items.get(i).id())) {
        entries
            .get(i)
            .problem(
                "another item of this bank is '" + items.get(i).id() + "' too",
                "give it an id of its own");
      }
    }
  }

  /** A paper that cannot be filled is found here and not by the first apprentice. */
  private static void refuseThin(YamlNode node, Bank bank) {
    for (ItemKind kind : ItemKind.values()) {
      int asked = bank.blueprint().draw().get(kind);
      int there = bank.of(kind).size();
      if (asked > there) {
        node.problem(
            "a paper draws " + asked + " of kind " + kind.word() + ", and there are " + there,
            "add items or draw fewer");
      }
    }
    if (bank.blueprint().size() < bank.topics().size()) {
      node.problem(
          "a paper has fewer items than the bank has topics",
          "draw more items, since each topic comes up in each paper");
    }
  }
}
