package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lapline.Samples;
import lapline.content.ContentFile;
import lapline.content.ContentReading;
import lapline.content.Problem;
import org.junit.jupiter.api.Test;

class PracticeTaskReaderTest {
  private static final String GOOD =
      """
      title: A small panel
      skill: clear
      purpose: Lay one even coat.
      panel: {width: 12 in, height: 200 mm, places: [{number: 1, at: [75, 100]}]}
      coats: 1
      passes-per-coat: 3
      prepare: [Clean the panel.]
      cautions: [Read the data sheet.]
      sections:
        - id: gun
          title: Gun
          fields:
            - {measurand: gun-pressure, required: yes}
            - {measurand: film-after}
      criteria:
        - id: pressure
          label: Inlet pressure
          quantity: gun-pressure
          target: 22 to 26 psi
          critical: yes
          weight: 1
          fade: 2 psi
          why: It breaks the paint up.
          source: common practice, no source
      findings:
        - {criterion: pressure, side: low, cause: Too low., change: Turn it up.}
      rubric:
        - id: runs
          label: Runs
          accepted-from: 2
          anchors: [{mark: 1, looks-like: A curtain.}, {mark: 2, looks-like: None.}]
      """;

  private static ContentReading<PracticeTask> read(String text) {
    return new PracticeTaskReader(WrittenPanel.COURSE.measurands())
        .read(new ContentFile("curriculum/40-clear/tasks/30-small.yaml", text));
  }

  private static List<String> problems(String wrong, String instead) {
    assertThat(GOOD).contains(wrong);
    return read(GOOD.replace(wrong, instead)).problems().stream().map(Problem::toString).toList();
  }

  private static void isTold(String wrong, String instead, String place, String what) {
    assertThat(problems(wrong, instead))
        .as(instead)
        .hasSize(1)
        .allMatch(p -> p.startsWith("curriculum/40-clear/tasks/30-small.yaml:" + place))
        .allMatch(p -> p.contains(what));
  }

  @Test
  void a_task_is_known_by_its_path_without_the_number_that_sorts_it() {
    PracticeTask task = read(GOOD).usable().orElseThrow();
    assertThat(task.id()).isEqualTo("clear/small");
    assertThat(task.unit()).isEqualTo("clear");
  }

  @Test
  void what_is_said_in_both_systems_is_one_quantity_and_names_hold_none() {
    String why = "why: It breaks the paint up.";
    assertThat(problems(why, "why: Needs {140 kPa | 20 psi}.")).isEmpty();
    isTold(why, "why: Needs {140 kPa | 40 psi}.", "23: ", "'140 kPa' and '40 psi'");
    isTold("label: Inlet pressure", "label: At {140 kPa | 20 psi}", "17: ", "a name holds");
  }

  @Test
  void quantities_are_read_with_their_units() {
    PracticeTask task = read(GOOD).usable().orElseThrow();
    assertThat(task.panel().width()).isCloseTo(0.3048, within(1e-12));
    assertThat(task.criteria().get(0).target().least()).isBetween(151_684.0, 151_685.0);
    assertThat(task.criteria().get(0).fade()).isBetween(13_789.0, 13_790.0);
  }

  @Test
  void another_text_is_another_version() {
    String other = read(GOOD.replace("22 to 26", "22 to 27")).value().version();
    assertThat(read(GOOD).value().version()).isEqualTo(read(GOOD).value().version());
    assertThat(other).isNotEqualTo(read(GOOD).value().version());
  }

  @Test
  void a_task_may_be_written_as_json() {
    String json =
        """
        {"title": "T", "skill": "clear", "purpose": "P",
         "panel": {"width": "600 mm", "height": "400 mm"},
         "prepare": [], "cautions": [],
         "sections": [{"id": "gun", "title": "Gun", "fields": [{"measurand": "gun-pressure"}]}],
         "criteria": [{"id": "p", "label": "Pressure", "quantity": "gun-pressure",
           "target": "22 to 26 psi", "critical": "yes", "weight": "1", "fade": "2 psi",
           "why": "W", "source": "S"}]}
        """;
    assertThat(read(json).problems()).isEmpty();
  }

  @Test
  void a_mistake_is_told_with_its_line_and_what_to_write() {
    isTold("measurand: film-after", "measurand: film-aftr", "14: ", "no measurand 'film-aftr'");
    isTold("quantity: gun-pressure", "quantity: gun-presure", "16: ", "no quantity 'gun-presure'");
    isTold("target: 22 to 26 psi", "target: 22 to 26", "19: ", "one of the units");
    isTold("target: 22 to 26 psi", "target: 26 to 22 psi", "19: ", "is no pressure");
    isTold("fade: 2 psi", "fade: 2 mm", "22: ", "is no pressure");
    isTold("weight: 1", "weight: 0.0001x", "21: ", "is not a number");
    isTold("criterion: pressure,", "criterion: presure,", "26: ", "no criterion 'presure'");
    isTold("side: low", "side: below", "26: ", "low, high, any");
    isTold("accepted-from: 2", "accepted-from: 3", "28: ", "no anchor has the mark 3");
    isTold("at: [75, 100]", "at: [750, 100]", "4: ", "off the panel");
    isTold("required: yes", "required: true", "13: ", "write yes or no");
    isTold("skill: clear", "skil: clear\nskill: clear", "2: ", "'skil' is not a key here");
  }

  @Test
  void all_mistakes_are_told_at_once() {
    assertThat(problems("22 to 26 psi\n    critical: yes", "22 to 26\n    critical: maybe"))
        .hasSizeGreaterThanOrEqualTo(2);
  }

  @Test
  void something_must_be_able_to_keep_a_bad_panel_back() {
    isTold("critical: yes", "critical: no", "", "every panel would be accepted");
  }

  @Test
  void a_criterion_that_nothing_is_asked_for_is_told() {
    assertThat(
            problems(
                "quantity: gun-pressure\n"
                    + "    target: 22 to 26 psi\n"
                    + "    critical: yes\n"
                    + "    weight: 1\n"
                    + "    fade: 2 psi",
                "quantity: dew-margin\n"
                    + "    target: at least 3 °C\n"
                    + "    critical: yes\n"
                    + "    weight: 1\n"
                    + "    fade: 1 °C"))
        .hasSize(1)
        .allMatch(p -> p.contains("nothing that 'dew-margin' is taken from is asked for"));
  }

  @Test
  void a_measurand_is_asked_for_once() {
    isTold("{measurand: film-after}", "{measurand: gun-pressure}", "14: ", "asked for twice");
  }

  @Test
  void the_steps_of_a_mix_are_its_parts() {
    String mixed =
        GOOD.replace("{measurand: film-after}", "{measurand: mix-amount, steps: [Clear, Hardener]}")
            + "mix: [{name: Clear, parts: 4}, {name: Reducer, parts: 1}]\n";
    assertThat(read(mixed).problems())
        .hasSize(1)
        .allMatch(p -> p.toString().contains("are not the steps of 'mix-amount'"));
  }

  @Test
  void no_text_whatever_makes_the_reader_throw() {
    Samples.each(
        300,
        chance -> {
          int cut = chance.nextInt(GOOD.length());
          String noise = Samples.text(chance, 12);
          assertThat(read(GOOD.substring(0, cut) + noise + GOOD.substring(cut))).isNotNull();
        });
  }
}
