package lapline.exams;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import lapline.exams.bank.Bank;
import lapline.exams.bank.Item;
import lapline.exams.bank.ItemKind;
import lapline.trade.measure.UnitSystem;

/**
 * Draws a paper for one person: so many items of each kind as the blueprint says, each topic at
 * least once. A draw that lacks a topic is thrown away and drawn anew, which leaves all papers that
 * are allowed equally likely.
 */
public final class PaperDraw {
  private static final int TRIES = 2000;

  private final RandomGenerator chance;
  private final QuestionDraw questions;

  public PaperDraw(RandomGenerator chance) {
    this.chance = chance;
    this.questions = new QuestionDraw(chance);
  }

  /**
   * @param before ids of the items on the person's last paper; they come last, so far as the
   *     blueprint lets them
   * @throws IllegalStateException when no draw has each topic, which a tested bank rules out
   */
  public Paper draw(Bank bank, UnitSystem units, Set<String> before) {
    List<Item> items = new ArrayList<>(items(bank, before));
    shuffle(items);
    return new Paper(
        bank.unit(),
        bank.title(),
        units,
        bank.blueprint().pass(),
        items.stream().map(item -> questions.draw(item, units)).toList());
  }

  /** Whether a paper can be drawn from this bank as its blueprint says. */
  static boolean isPossible(Bank bank) {
    boolean enough =
        Arrays.stream(ItemKind.values())
            .allMatch(kind -> bank.of(kind).size() >= bank.blueprint().draw().get(kind));
    if (!enough) {
      return false;
    }
    // a chance of its own, so that asking changes no paper that is drawn afterwards
    PaperDraw draw = new PaperDraw(new Random(1));
    return IntStream.range(0, TRIES)
        .anyMatch(i -> topics(draw.oneDraw(bank, Set.of())).equals(bank.topics()));
  }

  private List<Item> items(Bank bank, Set<String> before) {
    for (int i = 0; i < TRIES; i++) {
      // all fresh items together may lack a topic; then the old ones are let in again
      List<Item> drawn = oneDraw(bank, i < TRIES / 2 ? before : Set.of());
      if (topics(drawn).equals(bank.topics())) {
        return drawn;
      }
    }
    throw new IllegalStateException("no paper of " + bank.unit() + " has each of its topics");
  }

  private List<Item> oneDraw(Bank bank, Set<String> before) {
    List<Item> drawn = new ArrayList<>();
    for (ItemKind kind : ItemKind.values()) {
      List<Item> ofKind = new ArrayList<>(bank.of(kind));
      shuffle(ofKind);
      ofKind.sort(Comparator.comparing(item -> before.contains(item.id())));
      drawn.addAll(ofKind.subList(0, bank.blueprint().draw().get(kind)));
    }
    return drawn;
  }

  private static Set<String> topics(List<Item> items) {
    Set<String> topics = new HashSet<>();
    items.forEach(item -> topics.add(item.topic()));
    return topics;
  }

  private void shuffle(List<?> list) {
    Shuffle.shuffle(list, chance);
  }
}
