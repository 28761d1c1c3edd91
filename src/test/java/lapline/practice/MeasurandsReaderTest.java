package lapline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lapline.content.ContentFile;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.trade.measure.Dimension;
import lapline.trade.measure.SpokenUnits;
import lapline.trade.measure.Unit;
import org.junit.jupiter.api.Test;

class MeasurandsReaderTest {
  private static final String GOOD =
      """
      measurands:
        - id: panel-temperature
          label: Panel temperature
          hint: Read it.
          kind: temperature
          scope: panel
          possible: -10 °C to 90 °C
          uncertainty: 1 °C
          uncertainty-source: common practice, no source
        - id: water
          label: Water film
          hint: Look.
          kind: choice
          scope: coat-place
          options: [{id: holds, label: Holds, value: 0}, {id: breaks, label: Breaks, value: 1}]
      """;

  private final List<Measurand> read = new ArrayList<>();

  private List<String> problems(String text) {
    Problems problems = new Problems("curriculum/measurands.yaml");
    Optional<YamlNode> root = YamlFile.read(new ContentFile(problems.file(), text), problems);
    root.ifPresent(r -> read.addAll(new MeasurandsReader().read(r)));
    return problems.all().stream().map(Problem::toString).toList();
  }

  @Test
  void an_uncertainty_of_a_temperature_is_a_difference() {
    assertThat(problems(GOOD)).isEmpty();
    assertThat(read.get(0).standardUncertainty()).isEqualTo(1);
    assertThat(read.get(0).possibleLeast()).isEqualTo(-10);
    assertThat(read.get(1).dimension()).isEqualTo(Dimension.CHOICE);
    assertThat(read.get(1).scope()).isEqualTo(Scope.COAT_PLACE);
  }

  @Test
  void only_coats_and_passes_have_something_between_them() {
    String said = "'between' is for what lies between two coats or two passes";
    assertThat(problems(GOOD.replace("    possible:", "    between: yes\n    possible:")))
        .singleElement()
        .asString()
        .contains(said);
    assertThat(problems(GOOD.replace("scope: panel", "scope: pass\n    between: yes"))).isEmpty();
  }

  @Test
  void a_quantity_says_in_which_unit_people_speak_of_it() {
    assertThat(problems(GOOD.replace("scope: panel", "scope: panel\n    shown-in: °F"))).isEmpty();
    assertThat(read.get(0).spoken()).isEqualTo(new SpokenUnits(Unit.FAHRENHEIT, Unit.FAHRENHEIT));
    read.clear();
    assertThat(problems(GOOD.replace("scope: panel", "scope: panel\n    shown-in: °C or K")))
        .isEmpty();
    assertThat(read.get(0).spoken()).isEqualTo(new SpokenUnits(Unit.CELSIUS, Unit.KELVIN));
    assertThat(problems(GOOD.replace("scope: panel", "scope: panel\n    shown-in: min")))
        .singleElement()
        .asString()
        .contains("measurands.yaml:7: 'min' is no unit for this kind; write one of °C, °F, K");
  }

  @Test
  void uncertainty_joins_its_fixed_and_its_relative_part_in_quadrature() {
    Measurand film = WrittenPanel.COURSE.measurands().require("film-after");
    assertThat(film.uncertaintyAt(0)).isEqualTo(1e-6);
    assertThat(film.uncertaintyAt(100e-6)).isCloseTo(Math.sqrt(2) * 1e-6, within(1e-15));
  }

  @Test
  void a_mistake_is_told_with_its_line() {
    assertThat(problems(GOOD.replace("kind: temperature", "kind: warmth")))
        .anyMatch(p -> p.contains("measurands.yaml:5: 'warmth' is not a known kind"));
    assertThat(problems(GOOD.replace("id: water", "id: panel-temperature")))
        .anyMatch(p -> p.contains("measurands.yaml:10: 'panel-temperature' stands here twice"));
    assertThat(problems(GOOD.replaceAll(" +options:.*\n", "")))
        .anyMatch(p -> p.contains("only a choice has options, and it needs them"));
    assertThat(problems(GOOD.replaceAll(" +uncertainty-source:.*\n", "")))
        .anyMatch(p -> p.contains("measurands.yaml:2: the uncertainty has no source"));
  }

  @Test
  void every_measurand_of_the_course_says_how_to_take_it() {
    assertThat(WrittenPanel.COURSE.measurands().all())
        .hasSizeGreaterThan(35)
        .allSatisfy(m -> assertThat(m.hint()).as(m.id()).matches(".+[.?]"));
  }
}
