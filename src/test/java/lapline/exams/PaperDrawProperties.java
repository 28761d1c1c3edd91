package lapline.exams;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lapline.content.ContentFiles;
import lapline.content.Json;
import lapline.exams.bank.Bank;
import lapline.exams.bank.BankReader;
import lapline.exams.bank.Item;
import lapline.exams.bank.ItemKind;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What holds for every paper that is drawn, whatever chance brings. */
class PaperDrawProperties {
  private static final int SEEDS = 500;

  private final List<Bank> banks = new BankReader(ContentFiles.fromClasspath()).read().banks();

  private static Paper draw(Bank bank, long seed, Set<String> before) {
    return new PaperDraw(new SplittableRandom(seed)).draw(bank, UnitSystem.METRIC, before);
  }

  @Test
  void a_paper_has_as_many_items_of_each_kind_as_its_blueprint_and_each_topic() {
    for (Bank bank : banks) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Paper paper = draw(bank, seed, Set.of());
        Map<ItemKind, Integer> kinds = new HashMap<>();
        Set<String> topics = new HashSet<>();
        for (Question q : paper.questions()) {
          kinds.merge(q.head().kind(), 1, Integer::sum);
          topics.add(q.head().topic());
        }
        bank.blueprint()
            .draw()
            .forEach((kind, n) -> assertThat(kinds.getOrDefault(kind, 0)).isEqualTo(n));
        assertThat(topics).as(bank.unit() + " seed " + seed).isEqualTo(bank.topics());
        assertThat(paper.items()).hasSize(paper.questions().size());
      }
    }
  }

  @Test
  void every_item_comes_up_about_as_often_as_the_others_of_its_kind() {
    for (Bank bank : banks) {
      Map<String, Integer> drawn = new HashMap<>();
      for (long seed = 0; seed < SEEDS; seed++) {
        draw(bank, seed, Set.of()).items().forEach(i -> drawn.merge(i, 1, Integer::sum));
      }
      for (Item item : bank.items()) {
        double share =
            (double) bank.blueprint().draw().get(item.kind()) / bank.of(item.kind()).size();
        // wide, since a topic with few items is drawn more often
        assertThat(drawn.getOrDefault(item.id(), 0) / (double) SEEDS)
            .as(bank.unit() + " " + item.id())
            .isBetween(share * 0.6, Math.min(1, share * 1.5));
      }
    }
  }

  @Test
  void the_same_chance_draws_the_same_paper() {
    for (Bank bank : banks) {
      assertThat(draw(bank, 7, Set.of())).isEqualTo(draw(bank, 7, Set.of()));
      assertThat(draw(bank, 7, Set.of())).isNotEqualTo(draw(bank, 8, Set.of()));
    }
  }

  @Test
  void the_next_paper_leaves_no_fresh_item_for_an_old_one_of_its_kind_so_far_as_topics_allow() {
    for (Bank bank : banks) {
      long kept = 0;
      for (long seed = 0; seed < SEEDS; seed++) {
        Set<String> before = draw(bank, seed, Set.of()).items();
        kept += freshFirst(bank, before, draw(bank, seed + SEEDS, before).items()) ? 1 : 0;
      }
      assertThat(kept).as(bank.unit()).isGreaterThan(SEEDS * 9 / 10);
    }
  }

  private static boolean freshFirst(Bank bank, Set<String> before, Set<String> next) {
    for (ItemKind kind : ItemKind.values()) {
      List<String> fresh =
          bank.of(kind).stream().map(Item::id).filter(i -> !before.contains(i)).toList();
      int could = Math.min(fresh.size(), bank.blueprint().draw().get(kind));
      if (fresh.stream().filter(next::contains).count() < could) {
        return false;
      }
    }
    return true;
  }

  @Test
  void steps_are_never_shown_in_their_right_order() {
    for (Bank bank : banks) {
      for (long seed = 0; seed < SEEDS; seed++) {
        for (Question q : draw(bank, seed, Set.of()).questions()) {
          if (q instanceof Question.Ordering o) {
            List<Integer> places = o.steps().stream().map(Question.Step::place).toList();
            assertThat(places)
                .as(bank.unit() + " seed " + seed)
                .isNotEqualTo(IntStream.rangeClosed(1, places.size()).boxed().toList());
          }
        }
      }
    }
  }

  @Test
  void a_paper_reads_back_from_its_json_and_the_right_answers_get_the_full_score() {
    for (Bank bank : banks) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Paper paper = draw(bank, seed, Set.of());
        Paper kept = Json.read(Json.write(paper), Paper.class);
        assertThat(kept).isEqualTo(paper);
        assertThat(PaperMarking.mark(kept, PaperKey.rightAnswers(kept)).score())
            .as(bank.unit() + " seed " + seed)
            .isEqualTo(1);
      }
    }
  }

  @Test
  void a_mark_never_leaves_nought_to_one_whatever_is_written() {
    for (Bank bank : banks) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Paper paper = draw(bank, seed, Set.of());
        SplittableRandom chance = new SplittableRandom(seed);
        Map<String, String> typed = new HashMap<>();
        paper.cells().forEach(cell -> typed.put(cell, "" + chance.nextInt(-2, 9)));
        for (ItemMark mark : PaperMarking.mark(paper, typed).marks()) {
          assertThat(mark.mark()).as("seed " + seed).isBetween(0.0, 1.0);
        }
      }
    }
  }
}
