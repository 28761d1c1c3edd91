package lapline.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentFilesTest {
  private static final String PATH = "curriculum/10-preparing/lesson.md";

  @TempDir private Path root;
  private final Problems problems = new Problems(PATH);

  @BeforeEach
  void makeTheFolder() throws IOException {
    Files.createDirectories(root.resolve("curriculum/10-preparing"));
  }

  private Optional<ContentFile> read(byte[] bytes) throws IOException {
    Files.write(root.resolve(PATH), bytes);
    return new ContentFiles(root).read(PATH, problems);
  }

  @Test
  void a_byte_order_mark_and_windows_line_ends_are_taken_away() throws IOException {
    byte[] bytes = "\uFEFFone\r\ntwo\n".getBytes(StandardCharsets.UTF_8);
    assertThat(read(bytes).orElseThrow().text()).isEqualTo("one\ntwo\n");
  }

  @Test
  void another_encoding_is_a_problem_with_its_line() throws IOException {
    assertThat(read("fine\nµm\n".getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    assertThat(problems.all()).singleElement().extracting(Problem::line).isEqualTo(2);
  }

  @Test
  void a_text_cut_off_in_the_middle_of_a_letter_is_a_problem() throws IOException {
    assertThat(read(new byte[] {'a', (byte) 0xC2})).isEmpty();
    assertThat(problems.all()).hasSize(1);
  }

  @Test
  void utf_16_is_a_problem() throws IOException {
    assertThat(read("title: a".getBytes(StandardCharsets.UTF_16LE))).isEmpty();
    assertThat(problems.all()).singleElement().asString().contains("not UTF-8");
  }

  @Test
  void files_are_listed_in_order_with_forward_slashes() throws IOException {
    Files.createDirectories(root.resolve("curriculum/20-masking"));
    Files.writeString(root.resolve("curriculum/20-masking/lesson.md"), "b");
    Files.writeString(root.resolve(PATH), "a");
    assertThat(new ContentFiles(root).list("curriculum", ".md"))
        .containsExactly(PATH, "curriculum/20-masking/lesson.md");
    assertThat(new ContentFiles(root).list("question-banks", ".yaml")).isEmpty();
  }

  @Test
  void a_missing_file_is_a_problem_and_a_path_out_of_the_folder_is_refused() {
    assertThat(new ContentFiles(root).read("curriculum/none.md", problems)).isEmpty();
    assertThat(problems.all()).hasSize(1);
    assertThatThrownBy(() -> new ContentFiles(root).bytes("../secret"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void the_version_changes_with_the_text() {
    ContentFile a = new ContentFile(PATH, "a");
    assertThat(a.version()).hasSize(12).isEqualTo(new ContentFile("other", "a").version());
    assertThat(a.version()).isNotEqualTo(new ContentFile(PATH, "b").version());
  }

  @Test
  void ids_are_paths_without_order_and_ending() {
    assertThat(ContentId.of(PATH)).isEqualTo("preparing");
    assertThat(ContentId.of("curriculum/40-clear/tasks/10-two-coats.yaml"))
        .isEqualTo("clear/two-coats");
    assertThat(ContentId.of("question-banks/20-masking.yaml")).isEqualTo("masking");
    assertThat(ContentId.of("curriculum/skills.yaml")).isEqualTo("skills");
  }

  @Test
  void front_matter_and_prose_are_parted_and_keep_their_lines() {
    ContentFile file = new ContentFile(PATH, "---\ntitle: Clear\nminutes: x\n---\n\nFirst line.\n");
    MarkdownFile page = MarkdownFile.read(file, problems).orElseThrow();
    page.facts().number("minutes");
    assertThat(page.body()).isEqualTo("\nFirst line.\n");
    assertThat(page.bodyLine()).isEqualTo(5);
    assertThat(problems.all()).singleElement().extracting(Problem::line).isEqualTo(3);
  }

  @Test
  void prose_without_front_matter_is_a_problem() {
    assertThat(MarkdownFile.read(new ContentFile(PATH, "# Clear\n"), problems)).isEmpty();
    assertThat(MarkdownFile.read(new ContentFile(PATH, "---\ntitle: a\n"), problems)).isEmpty();
    assertThat(problems.all()).hasSize(2);
  }
}
