package lapline.lessons;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import lapline.content.ContentFiles;
import lapline.content.WrittenProblems;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The checks of the lessons as they are written: enough of them, and none gives itself away. */
class CheckContentTest {
  private static final int LEAST_CHECKS = 5;

  /** A habit of guessing may be right in no more of a lesson's checks than this share. */
  private static final double MOST_BY_GUESSING = 0.5;

  private final ContentFiles files = ContentFiles.fromClasspath();
  private final Curriculum course = new CurriculumReader(files).read();
  private final WrittenProblems problems = new WrittenProblems(files, course.problems());

  private void add(Unit unit, String near, String whatIsWrong, String whatToWrite) {
    problems.add(unit.folder() + "/lesson.md", near, whatIsWrong, whatToWrite);
  }

  private List<Check> checks(Unit unit) {
    return course.lesson(unit.id()).map(Lesson::checks).orElse(List.of());
  }

  @Test
  void every_lesson_has_checks_spread_through_it() {
    for (Unit unit : course.units()) {
      if (checks(unit).size() < LEAST_CHECKS) {
        add(unit, "", "it has " + checks(unit).size() + " checks", "write " + LEAST_CHECKS);
      }
      List<Segment> segments =
          course.lesson(unit.id()).map(l -> l.in(UnitSystem.METRIC).segments()).orElse(List.of());
      for (int i = 1; i < segments.size(); i++) {
        Check check = segments.get(i).check();
        if (check != null && segments.get(i - 1).check() != null) {
          add(unit, "id: " + check.id(), "two checks stand together", "put prose between them");
        }
      }
    }
    problems.none();
  }

  @Test
  void every_check_offers_three_choices_and_none_points_at_the_others() {
    for (Unit unit : course.units()) {
      for (Check check : checks(unit)) {
        if (check.choices().size() < 3) {
          add(unit, "id: " + check.id(), "it has two choices", "add a mistake people make");
        }
        if (check.choices().stream().anyMatch(c -> c.text().matches("(?i)(all|none|both) of .*"))) {
          add(unit, "id: " + check.id(), "a choice points at others", "say what it means");
        }
        if (check.several() && !check.question().contains("Choose all")) {
          add(unit, "id: " + check.id(), "several are right", "add 'Choose all that fit.'");
        }
      }
    }
    problems.none();
  }

  @Test
  void no_place_is_the_right_one_too_often() {
    for (Unit unit : course.units()) {
      for (int place = 0; place < 3; place++) {
        int always = place;
        guessed(unit, check -> always, "choice " + (place + 1) + " is the right one");
      }
    }
    problems.none();
  }

  @Test
  void the_longest_and_the_shortest_are_not_the_right_ones_too_often() {
    for (Unit unit : course.units()) {
      guessed(unit, check -> extreme(check, 1), "the longest choice is the right one");
      guessed(unit, check -> extreme(check, -1), "the shortest choice is the right one");
    }
    problems.none();
  }

  /** What somebody would get who knows nothing and always chooses in the same way. */
  private void guessed(Unit unit, ToIntFunction<Check> guess, String giveAway) {
    List<Check> single = checks(unit).stream().filter(c -> !c.several()).toList();
    List<String> hit =
        single.stream().filter(c -> isRight(c, guess.applyAsInt(c))).map(Check::id).toList();
    if (hit.size() > MOST_BY_GUESSING * single.size()) {
      add(unit, "id: " + hit.get(0), giveAway + " in " + hit, "change some of them");
    }
  }

  private static boolean isRight(Check check, int place) {
    return place >= 0 && place < check.choices().size() && check.choices().get(place).right();
  }

  /** The choice that is longest (1) or shortest (-1) by itself; -1 where two are. */
  private static int extreme(Check check, int sign) {
    int[] lengths = check.choices().stream().mapToInt(c -> sign * c.text().length()).toArray();
    int most = IntStream.of(lengths).max().orElse(0);
    int[] who = IntStream.range(0, lengths.length).filter(i -> lengths[i] == most).toArray();
    return who.length == 1 ? who[0] : -1;
  }
}
