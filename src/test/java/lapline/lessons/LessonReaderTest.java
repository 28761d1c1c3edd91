package lapline.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lapline.content.ContentFile;
import lapline.content.ContentFiles;
import lapline.content.ContentReading;
import lapline.content.Problem;
import lapline.content.Problems;
import lapline.trade.measure.UnitSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LessonReaderTest {
  private static final String FOLDER = "curriculum/20-masking";
  private static final String FACTS =
      "---\ntitle: Masking\nminutes: 5\nsources:\n  - about: all\n    from: common practice, no source\n---\n";
  private static final int FACT_LINES = 7;
  private static final String CHECK =
      """
      ```check
      id: one
      question: Why?
      choices:
        - text: So
          right: yes
          because: It is.
        - text: No
          because: It is not.
      ```
      """;

  @TempDir private Path root;

  @BeforeEach
  void makeTheFolder() throws IOException {
    Files.createDirectories(root.resolve(FOLDER + "/drawings"));
    write("unit.yaml", "title: Masking\nwhat: Close it off.\nskill: masking\n");
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(root.resolve(FOLDER).resolve(name), text);
  }

  private ContentReading<Lesson> read(String body) throws IOException {
    write("lesson.md", FACTS + body);
    Unit unit = new Unit("masking", FOLDER, "Masking", "", "masking");
    return new LessonReader(new ContentFiles(root)).read(unit);
  }

  private Lesson whole(String body) throws IOException {
    ContentReading<Lesson> reading = read(body);
    return reading.usable().orElseThrow(() -> new AssertionError(reading.problems()));
  }

  private void refused(String body, int bodyLine, String whatIsWrong) throws IOException {
    List<Problem> problems = read(body).problems();
    assertThat(problems).isNotEmpty();
    assertThat(problems.get(0).line()).isEqualTo(FACT_LINES + bodyLine);
    assertThat(problems.get(0).toString()).contains(whatIsWrong);
  }

  @Test
  void a_check_stands_between_the_prose_before_and_after_it() throws IOException {
    Lesson lesson = whole("Before.\n\n" + CHECK + "\nAfter.\n");
    assertThat(lesson.in(UnitSystem.METRIC).segments()).hasSize(3);
    assertThat(lesson.in(UnitSystem.METRIC).segments().get(0).html()).isEqualTo("<p>Before.</p>\n");
    assertThat(lesson.in(UnitSystem.METRIC).segments().get(1).check().question()).isEqualTo("Why?");
    assertThat(lesson.in(UnitSystem.METRIC).segments().get(2).html()).isEqualTo("<p>After.</p>\n");
  }

  @Test
  void a_quotation_that_begins_with_caution_is_marked_as_one() throws IOException {
    String html =
        whole("> **Caution** Blades cut.\n\n> overlap = 1\n")
            .in(UnitSystem.METRIC)
            .segments()
            .get(0)
            .html();
    assertThat(html).containsOnlyOnce("class=\"caution\" role=\"note\"");
  }

  @Test
  void headings_can_be_jumped_to() throws IOException {
    Lesson lesson = whole("## Film: tight or not\n\nText.\n");
    assertThat(lesson.in(UnitSystem.METRIC).sections())
        .containsExactly(new LessonText.Section("film-tight-or-not", "Film: tight or not"));
    assertThat(lesson.in(UnitSystem.METRIC).segments().get(0).html())
        .contains("id=\"film-tight-or-not\"");
  }

  @Test
  void raw_html_is_refused_and_would_be_shown_as_typed() throws IOException {
    refused("Text.\n\n<script>alert(1)</script>\n", 3, "raw HTML");
    LessonHtml html = new LessonHtml();
    assertThat(html.render(html.parse("<script>x</script>"))).doesNotContain("<script>");
  }

  @Test
  void a_link_that_could_run_something_is_refused() throws IOException {
    refused("[x](javascript:alert(1))\n", 1, "leads nowhere safe");
  }

  @Test
  void a_picture_from_elsewhere_is_refused() throws IOException {
    refused("![x](https://example.org/x.svg)\n", 1, "is no drawing of this unit");
    refused("![x](drawings/../../x.svg)\n", 1, "is no drawing of this unit");
  }

  @Test
  void a_missing_drawing_and_one_within_a_sentence_are_told() throws IOException {
    refused("![x](drawings/none.svg)\n", 1, "there is no drawings/none.svg");
    refused("See ![x](drawings/none.svg) here.\n", 1, "in the middle of a text");
  }

  @Test
  void a_drawing_stands_in_the_page_with_ids_of_its_own() throws IOException {
    write(
        "drawings/jamb.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><title>T</title><desc>D</desc>"
            + "<defs><pattern id=\"p\"/></defs><rect fill=\"url(#p)\"/></svg>");
    String html =
        whole("![The *jamb*.](drawings/jamb.svg)\n").in(UnitSystem.METRIC).segments().get(0).html();
    assertThat(html)
        .startsWith("<figure class=\"drawing\"><svg ")
        .contains("aria-labelledby=\"jamb-title jamb-desc\"", "id=\"jamb-p\"", "url(#jamb-p)")
        .endsWith("<figcaption>The <em>jamb</em>.</figcaption></figure>\n");
  }

  @Test
  void a_drawing_that_runs_loads_or_styles_anything_is_refused() throws IOException {
    for (String part :
        List.of(
            "<script/>",
            "<rect onclick=\"x()\"/>",
            "<use href=\"#a\"/>",
            "<rect style=\"a:b\"/>",
            "<rect fill=\"url(https://example.org/a)\"/>",
            "<image/>")) {
      write(
          "drawings/jamb.svg",
          "<svg viewBox=\"0 0 9 9\"><title>T</title><desc>D</desc>" + part + "</svg>");
      refused("![x](drawings/jamb.svg)\n", 1, "drawings/jamb.svg");
    }
  }

  @Test
  void a_drawing_that_is_not_xml_or_has_no_words_for_the_blind_is_refused() throws IOException {
    write("drawings/jamb.svg", "<svg viewBox=\"0 0 9 9\"><title>T</title>");
    refused("![x](drawings/jamb.svg)\n", 1, "this is not XML");
    write("drawings/jamb.svg", "<svg viewBox=\"0 0 9 9\"><title>T</title></svg>");
    refused("![x](drawings/jamb.svg)\n", 1, "lacks a title or a desc");
  }

  @Test
  void a_drawing_with_a_document_type_is_refused_since_it_could_read_other_files()
      throws IOException {
    write(
        "drawings/jamb.svg",
        "<!DOCTYPE svg [<!ENTITY x \"y\">]><svg viewBox=\"0 0 9 9\"><title>&x;</title><desc>D</desc></svg>");
    refused("![x](drawings/jamb.svg)\n", 1, "this is not XML");
  }

  @Test
  void a_check_without_a_right_choice_or_a_reason_is_told_with_its_line() throws IOException {
    refused(CHECK.replace("right: yes", "right: no"), 2, "no choice is right");
    refused(CHECK.replace("because: It is not.", "because:"), 9, "this is empty");
    refused(CHECK.replace("right: yes", "rihgt: yes"), 2, "no choice is right");
    refused(CHECK + "\n" + CHECK, 13, "another check of this lesson is 'one' too");
    refused("- In a list:\n\n" + CHECK.indent(2), 3, "inside a list");
  }

  @Test
  void everybody_reads_quantities_in_units_of_their_own() throws IOException {
    write(
        "drawings/jamb.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><title>T</title>"
            + "<desc>{38 mm | 1½ in} tape</desc><text>{25 mm | 1 in}</text></svg>");
    String body =
        "| Tape |\n|---|\n| {19 mm | ¾ in} |\n\n![x](drawings/jamb.svg)\n\n"
            + CHECK.replace("Why?", "Why {2 m | 6 ft}?");
    Lesson lesson = whole(body);
    LessonText metric = lesson.in(UnitSystem.METRIC);
    LessonText us = lesson.in(UnitSystem.US);
    assertThat(metric.segments().get(0).html())
        .contains("<td>19\u00a0mm</td>", ">25 mm<", ">38 mm tape");
    assertThat(us.segments().get(0).html()).contains("<td>¾\u00a0in</td>", ">1 in<", ">1½ in tape");
    assertThat(metric.check("one").orElseThrow().question()).isEqualTo("Why 2\u00a0m?");
    assertThat(us.check("one").orElseThrow().question()).isEqualTo("Why 6\u00a0ft?");
  }

  @Test
  void quantities_that_disagree_are_told_with_their_line() throws IOException {
    refused("Fine.\n\nStep {75 mm | 5 in}.\n", 3, "are not the same quantity");
    write(
        "drawings/jamb.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><title>T</title>"
            + "<desc>D</desc><text>{25 mm | 9 in}</text></svg>");
    refused("![x](drawings/jamb.svg)\n", 1, "drawings/jamb.svg: '25 mm' and '9 in'");
  }

  @Test
  void one_file_is_one_version_in_both_systems() throws IOException {
    Lesson lesson = whole("Step {75 mm | 3 in}.\n");
    ContentFile file =
        new ContentFiles(root).read(FOLDER + "/lesson.md", new Problems("x")).orElseThrow();
    assertThat(lesson.version()).isEqualTo(file.version());
  }

  @Test
  void a_broken_lesson_is_out_and_its_unit_stays() throws IOException {
    write("lesson.md", FACTS + "<b>x</b>\n");
    Curriculum course = new CurriculumReader(new ContentFiles(root)).read();
    assertThat(course.units()).extracting(Unit::id).containsExactly("masking");
    assertThat(course.lesson("masking")).isEmpty();
    assertThat(course.problems()).isNotEmpty();
  }

  @Test
  void a_second_unit_of_the_same_name_is_told() throws IOException {
    Path twin = Files.createDirectories(root.resolve("curriculum/50-masking"));
    Files.copy(root.resolve(FOLDER + "/unit.yaml"), twin.resolve("unit.yaml"));
    write("lesson.md", FACTS + "Text.\n");
    Curriculum course = new CurriculumReader(new ContentFiles(root)).read();
    assertThat(course.units()).hasSize(1);
    assertThat(course.problems())
        .singleElement()
        .extracting(Problem::file)
        .isEqualTo("curriculum/50-masking/unit.yaml");
  }
}
