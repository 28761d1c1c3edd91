package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class PanelReaderTest {
  private static final String ABOVE = "entry.reading.above-possible";

  private final PracticeShop shop = new PracticeShop();
  private final PracticeTask task = shop.tasks.find(PracticeShop.TASK).orElseThrow();

  private PanelReading read(Map<String, String> typed) {
    return PanelReader.read(task, shop.tasks.measurands(), typed, UnitSystem.METRIC);
  }

  private void isRefused(String key, Map<String, String> typed) {
    assertThat(read(typed).problems()).extracting(FieldProblem::key).containsExactly(key);
  }

  @Test
  void a_reading_carries_the_uncertainty_of_its_instrument() {
    Reading film = read(Map.of("film-after.at1", "62,0")).entry().of("film-after").get(0);
    assertThat(film.value()).isEqualTo(62e-6);
    assertThat(film.standardUncertainty()).isBetween(1.1e-6, 1.2e-6);
    assertThat(film.typed()).isEqualTo("62,0");
  }

  @Test
  void what_cannot_be_is_told_with_what_could() {
    isRefused("entry.reading.below-possible", Map.of("film-after.at1", "-3"));
    isRefused(ABOVE, Map.of("fan-width", "2 m"));
    isRefused("entry.reading.wrong-unit", Map.of("fan-width", "20 psi"));
    isRefused("entry.reading.no-choice", Map.of("shine-left.at2", "perhaps"));
    isRefused("entry.no-such-place", Map.of("film-after.at3", "62"));
  }

  @Test
  void film_lost_by_painting_is_told_unless_the_gauge_may_have_scattered() {
    isRefused("entry.together.film", Map.of("film-before.at1", "120", "film-after.at1", "62"));
    assertThat(read(Map.of("film-before.at1", "62", "film-after.at1", "61")).problems()).isEmpty();
    assertThat(read(Map.of("film-before.at1", "120", "film-after.at2", "62")).problems()).isEmpty();
  }

  @Test
  void a_step_wider_than_the_fan_is_told() {
    isRefused(
        "entry.together.spacing", Map.of("fan-width", "200 mm", "pass-spacing.c1.p2", "260 mm"));
  }

  @Test
  void before_the_first_pass_there_is_no_step_to_measure() {
    isRefused("entry.no-such-place", Map.of("pass-spacing.c1.p1", "260 mm"));
  }

  @Test
  void a_choice_may_be_typed_as_its_word_or_its_number() {
    for (String typed : new String[] {"shine", "Shine left", "SHINE LEFT", "1", "1.0"}) {
      PanelReading reading = read(Map.of("shine-left.at2", typed));
      assertThat(reading.problems()).as(typed).isEmpty();
      assertThat(reading.entry().of("shine-left").get(0).value()).as(typed).isEqualTo(1);
    }
    isRefused("entry.reading.no-choice", Map.of("shine-left.at2", "2"));
  }

  @Test
  void a_bare_number_is_in_the_persons_units_and_so_is_the_answer() {
    PanelReading us =
        PanelReader.read(
            task,
            shop.tasks.measurands(),
            Map.of("gun-pressure", "24", "film-after.at1", "900"),
            UnitSystem.US);
    assertThat(us.entry().of("gun-pressure").get(0).value()).isCloseTo(165474, within(1.0));
    assertThat(us.problems()).extracting(FieldProblem::key).containsExactly(ABOVE + "-unit");
    assertThat(us.problems().get(0).args().subList(0, 2)).allMatch(said -> said.endsWith("mil"));
    assertThat(us.problems().get(0).args()).last().isEqualTo("900\u00a0µm");
  }

  @Test
  void what_cannot_be_is_said_in_the_unit_of_its_field_as_the_limit_is() {
    assertThat(impossible("fan-width", "254", UnitSystem.US)).startsWith("254 in, 23.6 in");
    assertThat(impossible("fan-width", "9", UnitSystem.METRIC)).isEqualTo("9 mm, 20 mm, 9 in");
    assertThat(impossible("mix-amount.s1", "500", UnitSystem.US))
        .isEqualTo("500 fl oz, 169 fl oz, 500 mL");
    assertThat(impossible("flash.c2", "800", UnitSystem.US)).startsWith("800 min, 720 min");
    assertThat(impossible("fan-width", "3 m", UnitSystem.US)).isEqualTo("118.11 in, 23.6 in");
  }

  /** 165 Pa and 24 mm can be, and yet nobody means them. */
  @Test
  void the_unit_proposed_is_one_that_makes_the_number_what_is_asked_for() {
    assertThat(impossible("gun-pressure", "165", UnitSystem.US)).endsWith(", 165 kPa");
    assertThat(impossible("fan-width", "24", UnitSystem.US)).endsWith(", 24 cm");
    assertThat(impossible("fan-width", "254", UnitSystem.US)).endsWith(", 254 mm");
    assertThat(impossible("pass-spacing.c1.p2", "76", UnitSystem.US)).endsWith(", 76 mm");
    assertThat(impossible("air-temperature", "70", UnitSystem.METRIC)).endsWith(", 70 °F");
  }

  /** Beyond the most by a hair, the number itself is off and no unit is. */
  @Test
  void no_unit_is_proposed_where_none_makes_sense() {
    assertThat(impossible("distance-end.c1.p1", "400", UnitSystem.US)).isEqualTo("400 in, 23.6 in");
    assertThat(impossible("gun-pressure", "990", UnitSystem.US)).isEqualTo("990 psi, 145 psi");
  }

  private static String impossible(String cell, String typed, UnitSystem units) {
    PracticeTask task = WrittenPanel.COURSE.find("clear/two-coats").orElseThrow();
    FieldProblem problem =
        PanelReader.read(task, WrittenPanel.COURSE.measurands(), Map.of(cell, typed), units)
            .problems()
            .get(0);
    return String.join(", ", problem.args()).replace('\u00a0', ' ');
  }

  @Test
  void a_bare_number_is_in_the_unit_of_its_field() {
    assertThat(bare("preparing/flat-panel", "work-time", "42", UnitSystem.US)).isEqualTo(2520);
    assertThat(bare("masking/hatch-lid-aperture", "tape-used", "8", UnitSystem.METRIC))
        .isEqualTo(8);
    assertThat(bare("coverage/spray-out-card", "flash.c2", "10", UnitSystem.METRIC)).isEqualTo(600);
    assertThat(bare("coverage/spray-out-card", "tip-size", "1.3", UnitSystem.US))
        .isCloseTo(0.0013, within(1e-12));
  }

  private static double bare(String taskId, String cell, String typed, UnitSystem units) {
    PracticeTask task = WrittenPanel.COURSE.find(taskId).orElseThrow();
    PanelReading reading =
        PanelReader.read(task, WrittenPanel.COURSE.measurands(), Map.of(cell, typed), units);
    assertThat(reading.problems()).isEmpty();
    return reading.entry().at(Cell.of(cell)).orElseThrow().value();
  }

  @Test
  void a_number_that_makes_sense_in_another_unit_only_is_asked_about_and_counts() {
    PracticeTask card = WrittenPanel.COURSE.find("coverage/spray-out-card").orElseThrow();
    PanelReading odd =
        PanelReader.read(
            card,
            WrittenPanel.COURSE.measurands(),
            Map.of("gun-pressure", "20", "flash.c2", "600", "distance-middle.c1.p1", "5"),
            UnitSystem.METRIC);
    assertThat(odd.entry().at(Cell.panel("gun-pressure")).orElseThrow().value()).isEqualTo(20e3);
    assertThat(odd.questions())
        .extracting(q -> q.cell() + " " + q.key() + " " + q.args())
        .contains("gun-pressure entry.question.unit [20\u00a0kPa, psi, 20\u00a0psi]")
        .contains("flash.c2 entry.question.unit [10\u00a0h, s, 600\u00a0s]");
  }

  @Test
  void what_is_near_the_target_or_written_with_its_unit_is_not_asked_about() {
    assertThat(asked("gun-pressure", "135")).isEmpty();
    assertThat(asked("gun-pressure", "40 kPa")).isEmpty();
    assertThat(asked("flash.c2", "4")).isEmpty();
    assertThat(asked("gun-pressure", "3 kPa"))
        .as("but so far off, the number itself is doubted")
        .containsExactly("entry.question.far");
  }

  private static List<String> asked(String cell, String typed) {
    PracticeTask card = WrittenPanel.COURSE.find("coverage/spray-out-card").orElseThrow();
    return PanelReader.read(
            card, WrittenPanel.COURSE.measurands(), Map.of(cell, typed), UnitSystem.METRIC)
        .questions()
        .stream()
        .map(FieldProblem::key)
        .toList();
  }

  @Test
  void an_example_fits_its_field() {
    assertThat(example("preparing/flat-panel", "grit.s1", "-5")).isEqualTo("P600");
    assertThat(example("preparing/flat-panel", "work-time", "long")).isEqualTo("25 min");
    assertThat(example("coverage/spray-out-card", "tip-size", "small")).isEqualTo("1.3 mm");
  }

  private static String example(String taskId, String cell, String typed) {
    PracticeTask task = WrittenPanel.COURSE.find(taskId).orElseThrow();
    FieldProblem problem =
        PanelReader.read(
                task, WrittenPanel.COURSE.measurands(), Map.of(cell, typed), UnitSystem.METRIC)
            .problems()
            .get(0);
    return problem.args().get(problem.args().size() - 1);
  }

  @Test
  void coats_begin_one_after_the_other_though_midnight_may_come_between() {
    PracticeTask card = WrittenPanel.COURSE.find("coverage/spray-out-card").orElseThrow();
    assertThat(starts(card, "14:20", "14:05")).containsExactly("entry.together.coats");
    assertThat(starts(card, "14:05", "14:20")).isEmpty();
    assertThat(starts(card, "23:55", "00:10")).isEmpty();
  }

  @Test
  void a_wait_longer_than_from_coat_to_coat_is_told_at_the_wait() {
    assertThat(waited("30 min")).containsExactly("flash.c2: entry.together.wait");
    assertThat(waited("10 min")).isEmpty();
    assertThat(waited("16 min")).as("both clocks were read to the minute").isEmpty();
  }

  private static List<String> waited(String typed) {
    PracticeTask card = WrittenPanel.COURSE.find("coverage/spray-out-card").orElseThrow();
    return PanelReader.read(
            card,
            WrittenPanel.COURSE.measurands(),
            Map.of("coat-start.c1", "23:50", "coat-start.c2", "00:05", "flash.c2", typed),
            UnitSystem.METRIC)
        .problems()
        .stream()
        .map(p -> p.cell() + ": " + p.key())
        .toList();
  }

  private static List<String> starts(PracticeTask task, String first, String second) {
    Map<String, String> typed = Map.of("coat-start.c1", first, "coat-start.c2", second);
    return PanelReader.read(task, WrittenPanel.COURSE.measurands(), typed, UnitSystem.METRIC)
        .problems()
        .stream()
        .map(FieldProblem::key)
        .toList();
  }

  @Test
  void black_is_never_the_brighter_one() {
    PracticeTask card = WrittenPanel.COURSE.find("coverage/spray-out-card").orElseThrow();
    Map<String, String> typed = Map.of("luminance-black.c1", "80 %", "luminance-white.c1", "60 %");
    assertThat(
            PanelReader.read(card, WrittenPanel.COURSE.measurands(), typed, UnitSystem.METRIC)
                .problems())
        .extracting(FieldProblem::key)
        .containsExactly("entry.together.luminance");
  }

  @Test
  void no_text_whatever_makes_it_throw() {
    long seed = 20310304;
    Random chance = new Random(seed);
    for (int i = 0; i < 3000; i++) {
      Map<String, String> typed = new TreeMap<>();
      typed.put("film-after.at1", scrawl(chance));
      typed.put("gun-pressure", scrawl(chance));
      typed.put("shine-left.at2", scrawl(chance));
      assertThat(read(typed)).as("seed " + seed + ", sample " + i).isNotNull();
    }
  }

  private static String scrawl(Random chance) {
    String letters = "0123456789.,-+ eE%/°µ:½ \tminpsaNfty∞";
    StringBuilder text = new StringBuilder();
    for (int i = chance.nextInt(12); i >= 0; i--) {
      text.append(letters.charAt(chance.nextInt(letters.length())));
    }
    return text.toString();
  }
}
