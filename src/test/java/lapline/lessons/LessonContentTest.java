package lapline.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.content.YamlFile;
import lapline.content.YamlNode;
import org.junit.jupiter.api.Test;

/** The course as it is written: every file parses, and each lesson is what we ask of a lesson. */
class LessonContentTest {
  private static final int LEAST_CHECKS = 5;
  private static final int LEAST_DRAWINGS = 2;
  private static final Pattern DRAWING = Pattern.compile("\\]\\((drawings/[^)]+)\\)");
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
  private final List<Problem> problems = new ArrayList<>(course.problems());

  private void add(Unit unit, String whatIsWrong, String whatToWrite) {
    problems.add(new Problem(unit.folder() + "/lesson.md", 0, whatIsWrong, whatToWrite));
  }

  private void noProblems() {
    assertThat(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")))
        .isEmpty();
  }

  private String text(Unit unit) {
    String path = unit.folder() + "/lesson.md";
    return files.read(path, new Problems(path)).map(ContentFile::text).orElseThrow();
  }

  @Test
  void every_unit_and_lesson_parses() {
    noProblems();
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
  void every_lesson_has_checks_spread_through_it() {
    for (Unit unit : course.units()) {
      Lesson lesson = course.lesson(unit.id()).orElseThrow();
      if (lesson.checks().size() < LEAST_CHECKS) {
        add(unit, "it has " + lesson.checks().size() + " checks", "write at least " + LEAST_CHECKS);
      }
      List<Segment> segments = lesson.segments();
      for (int i = 1; i < segments.size(); i++) {
        if (segments.get(i).check() != null && segments.get(i - 1).check() != null) {
          add(unit, "two checks stand together", "put prose between them");
        }
      }
    }
    noProblems();
  }

  @Test
  void right_choices_do_not_give_themselves_away_by_their_place() {
    for (Unit unit : course.units()) {
      List<Check> checks = course.lesson(unit.id()).orElseThrow().checks();
      long first = checks.stream().filter(c -> c.choices().get(0).right()).count();
      if (first > checks.size() / 2) {
        add(unit, first + " checks have a right choice first", "mix the places");
      }
    }
    noProblems();
  }

  @Test
  void every_lesson_has_drawings_and_every_drawing_is_used() {
    for (Unit unit : course.units()) {
      List<String> used =
          DRAWING.matcher(text(unit)).results().map(m -> unit.folder() + "/" + m.group(1)).toList();
      List<String> there = files.list(unit.folder() + "/drawings", ".svg");
      if (used.size() < LEAST_DRAWINGS) {
        add(unit, "it has " + used.size() + " drawings", "add at least " + LEAST_DRAWINGS);
      }
      assertThat(there).containsExactlyInAnyOrderElementsOf(used);
    }
    noProblems();
  }

  @Test
  void a_caution_stands_in_the_section_where_a_hazard_first_comes_up() {
    for (Unit unit : course.units()) {
      String[] sections = text(unit).split("\n---\n", 2)[1].split("(?m)^(?=## )");
      for (String hazard : HAZARDS) {
        for (String section : sections) {
          if (section.toLowerCase().contains(hazard)) {
            if (!section.contains("> **Caution**")) {
              String heading = section.lines().findFirst().orElse("");
              add(unit, "'" + hazard + "' comes up under '" + heading + "'", "add a caution there");
            }
            break;
          }
        }
      }
    }
    noProblems();
  }

  @Test
  void sentences_are_short_enough_to_read_at_sixteen() {
    for (Unit unit : course.units()) {
      String prose = prose(text(unit));
      double words = count(prose, "[\\p{L}\\d]+(?:[’'-][\\p{L}]+)*");
      double sentences = count(prose, "[.?!:](?=\\s|$)");
      if (words / sentences > 16) {
        add(unit, "its sentences have " + words / sentences + " words on average", "cut them");
      }
      if (words < 1000 || words > 2200) {
        add(unit, "its prose has " + words + " words", "write 1200 to 2000");
      }
    }
    noProblems();
  }

  private static String prose(String text) {
    return text.split("\n---\n", 2)[1]
        .replaceAll("(?s)```check.*?```", "")
        .replaceAll("(?m)^\\|.*$", "");
  }

  private static double count(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    return matcher.results().count();
  }
}
