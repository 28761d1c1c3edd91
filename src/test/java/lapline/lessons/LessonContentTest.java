package lapline.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import lapline.content.ContentFiles;
import lapline.content.Problems;
import lapline.content.WrittenProblems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import lapline.content.units.BothUnits;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** The course as it is written: every file parses, and each lesson is what we ask of a lesson. */
class LessonContentTest {
  private static final int LEAST_DRAWINGS = 3;
  private static final int LEAST_MINUTES = 8;
  private static final int MOST_MINUTES = 15;

  /** Words a minute of plain prose read by somebody who thinks about the panel at the same time. */
  private static final double READING_SPEED = 180;

  private static final double MINUTES_FOR_A_CHECK = 0.7;
  private static final Pattern DRAWING = Pattern.compile("\\]\\((drawings/[^)]+)\\)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\d]+(?:[’'-][\\p{L}]+)*");
  private static final Pattern SENTENCE_END = Pattern.compile("[.?!:](?=\\s|\\*|$)");
  private static final List<String> HAZARDS =
      List.of(
          "wax-and-grease remover",
          "reducer",
          "hardener",
          "isocyanate",
          "compressed air",
          "sander",
          "knife",
          "blade",
          "heat lamp",
          "clean the gun");

  private final ContentFiles files = ContentFiles.fromClasspath();
  private final Curriculum course = new CurriculumReader(files).read();
  private final WrittenProblems problems = new WrittenProblems(files, course.problems());

  private void add(Unit unit, String near, String whatIsWrong, String whatToWrite) {
    problems.add(path(unit), near, whatIsWrong, whatToWrite);
  }

  private static String path(Unit unit) {
    return unit.folder() + "/lesson.md";
  }

  private String body(Unit unit) {
    String text = BothUnits.in(problems.text(path(unit)), UnitSystem.METRIC);
    return text.split("\n---\n", 2)[1];
  }

  @Test
  void every_unit_and_lesson_parses() {
    problems.none();
    assertThat(course.units())
        .extracting(Unit::id)
        .containsSequence("preparing", "masking", "coverage", "clear");
    assertThat(course.lessons().keySet())
        .containsExactlyElementsOf(course.units().stream().map(Unit::id).toList());
  }

  @Test
  void every_unit_leads_to_a_skill_that_exists() {
    String path = "curriculum/skills.yaml";
    Problems read = new Problems(path);
    YamlNode skills = files.read(path, read).flatMap(f -> YamlFile.read(f, read)).orElseThrow();
    Set<String> ids = new LinkedHashSet<>();
    skills.list("skills").forEach(s -> ids.add(s.text("id")));
    assertThat(course.units()).extracting(Unit::skill).isSubsetOf(ids);
    assertThat(read.all()).isEmpty();
  }

  @Test
  void every_lesson_has_drawings_and_every_drawing_is_used() {
    for (Unit unit : course.units()) {
      List<String> used = DRAWING.matcher(body(unit)).results().map(m -> m.group(1)).toList();
      if (used.size() < LEAST_DRAWINGS) {
        add(unit, "", "it has " + used.size() + " drawings", "add at least " + LEAST_DRAWINGS);
      }
      for (String there : files.list(unit.folder() + "/drawings", ".svg")) {
        if (used.stream().noneMatch(there::endsWith)) {
          add(unit, "", there + " is not shown", "show it, or take it away");
        }
      }
    }
    problems.none();
  }

  @Test
  void a_caution_stands_in_the_section_where_a_hazard_first_comes_up() {
    for (Unit unit : course.units()) {
      List<String> sections = List.of(body(unit).split("(?m)^(?=## )"));
      for (String hazard : HAZARDS) {
        sections.stream()
            .filter(s -> s.toLowerCase().contains(hazard))
            .findFirst()
            .filter(s -> !s.contains("> **Caution**"))
            .map(s -> s.lines().findFirst().orElse(""))
            .ifPresent(heading -> add(unit, heading, "'" + hazard + "' comes up", "add a caution"));
      }
    }
    problems.none();
  }

  @Test
  void every_lesson_says_what_right_and_what_wrong_looks_like() {
    for (Unit unit : course.units()) {
      String body = body(unit);
      long right = Pattern.compile("\\*\\*Right:\\*\\*").matcher(body).results().count();
      long wrong = Pattern.compile("\\*\\*Wrong:\\*\\*").matcher(body).results().count();
      if (right < 3 || wrong < 3) {
        add(unit, "", "it says so in " + Math.min(right, wrong) + " places", "say it at each step");
      }
    }
    problems.none();
  }

  @Test
  void sentences_are_short_enough_to_read_at_sixteen() {
    for (Unit unit : course.units()) {
      String prose = withoutChecks(unit).replaceAll("(?m)^\\|.*$", "");
      double words = count(prose, WORD);
      double each = words / count(prose, SENTENCE_END);
      if (each > 16) {
        add(unit, "", "its sentences have " + each + " words on average", "cut them");
      }
    }
    problems.none();
  }

  @Test
  void the_minutes_at_the_top_are_those_that_it_takes() {
    for (Unit unit : course.units()) {
      int said = course.lesson(unit.id()).map(Lesson::minutes).orElse(0);
      int checks = course.lesson(unit.id()).map(l -> l.checks().size()).orElse(0);
      double takes =
          count(withoutChecks(unit), WORD) / READING_SPEED + checks * MINUTES_FOR_A_CHECK;
      if (Math.abs(said - takes) > 2) {
        add(unit, "minutes:", "it takes about " + Math.round(takes) + " minutes", "say so");
      }
      if (said < LEAST_MINUTES || said > MOST_MINUTES) {
        add(unit, "minutes:", "a lesson of " + said + " minutes", "write one of 8 to 15");
      }
    }
    problems.none();
  }

  private String withoutChecks(Unit unit) {
    return body(unit).replaceAll("(?s)```check.*?```", "");
  }

  private static double count(String text, Pattern pattern) {
    return pattern.matcher(text).results().count();
  }
}
