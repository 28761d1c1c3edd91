package lapline.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a person has to pass on to somebody else is copied by a button, not by hand. */
class CopyButtonTest {
  private static final Path PAGES = Path.of("src/main/webapp");
  private static final Pattern BUTTON = Pattern.compile("data-copy=\"([^\"]+)\"");

  @Test
  void each_copies_what_stands_on_its_page_and_the_page_has_its_script() throws IOException {
    List<Path> pages = pagesWithOne();
    assertThat(pages)
        .contains(PAGES.resolve("problem.xhtml"), PAGES.resolve("office/person.xhtml"));
    for (Path page : pages) {
      String text = Files.readString(page);
      assertThat(text).as("%s", page).contains("lapline:copy.js");
      BUTTON
          .matcher(text)
          .results()
          .forEach(b -> assertThat(text).as("%s", page).contains("id=\"" + b.group(1) + "\""));
    }
  }

  private static List<Path> pagesWithOne() throws IOException {
    try (Stream<Path> files = Files.walk(PAGES)) {
      return files
          .filter(f -> f.toString().endsWith(".xhtml"))
          .filter(f -> BUTTON.matcher(read(f)).find())
          .toList();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
