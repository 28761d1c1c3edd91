package lapline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lapline.content.units.NumberAndUnit;
import org.junit.jupiter.api.Test;

/** Every sentence a person sees stands in a message bundle, and every key used has its sentence. */
class MessagesTest {
  private static final Path PAGES = Path.of("src/main/webapp");
  private static final Path BUNDLES = Path.of("src/main/resources/lapline/messages");
  private static final Path CODE = Path.of("src/main/java");
  private static final Pattern IN_PAGE =
      Pattern.compile("t(?:\\.say\\(|\\[)\\s*'([a-z][a-zA-Z0-9.-]*[a-zA-Z0-9])'");
  private static final Pattern IN_CODE =
      Pattern.compile("\"([a-z][a-z-]*\\.[a-zA-Z0-9.-]*[a-zA-Z0-9])\"");
  private static final Pattern TEXT_ATTRIBUTE =
      Pattern.compile(
          "\\b(value|title|alt|label|placeholder|aria-label|summary|header)=\"([^\"#]*[A-Za-z]{2}[^\"#]*)\"");

  @Test
  void no_page_has_literal_text() throws IOException {
    List<String> literal = new ArrayList<>();
    for (Path page : files(PAGES, ".xhtml")) {
      String text =
          Files.readString(page)
              .replaceAll("(?s)<!--.*?-->", "")
              .replaceAll("(?s)<script.*?</script>|<style.*?</style>", "");
      String words =
          text.replaceAll("(?s)#\\{(?:'[^']*'|[^}'])*\\}", " ")
              .replaceAll("(?s)<[^>]*>", "\n")
              .replaceAll("&[a-z#0-9]+;", " ");
      for (String line : words.split("\n")) {
        if (line.matches(".*\\p{L}{2,}.*")) {
          literal.add(PAGES.relativize(page) + ": " + line.strip());
        }
      }
      Matcher attribute = TEXT_ATTRIBUTE.matcher(text);
      while (attribute.find()) {
        if (!attribute.group(2).matches("[a-zA-Z0-9_.:/=-]*")) {
          literal.add(PAGES.relativize(page) + ": " + attribute.group());
        }
      }
    }
    assertThat(literal).isEmpty();
  }

  @Test
  void every_key_a_page_names_has_its_sentence() throws IOException {
    Set<String> known = keys();
    Set<String> missing = new TreeSet<>();
    for (Path page : files(PAGES, ".xhtml")) {
      Matcher key = IN_PAGE.matcher(Files.readString(page));
      while (key.find()) {
        if (!known.contains(key.group(1))
            && known.stream().noneMatch(k -> k.startsWith(key.group(1) + "."))) {
          missing.add(PAGES.relativize(page) + ": " + key.group(1));
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void every_key_that_code_names_has_its_sentence() throws IOException {
    Set<String> known = keys();
    Set<String> bundles = new TreeSet<>();
    known.forEach(k -> bundles.add(k.substring(0, k.indexOf('.'))));
    Set<String> missing = new TreeSet<>();
    for (Path file : files(CODE, ".java")) {
      Matcher key = IN_CODE.matcher(Files.readString(file));
      while (key.find()) {
        String k = key.group(1);
        boolean ours =
            bundles.contains(k.substring(0, k.indexOf('.')))
                && !k.matches(".*\\.(yaml|md|svg|js|css|xhtml|properties|txt|csv|pdf|json)");
        if (ours && !known.contains(k) && known.stream().noneMatch(x -> x.startsWith(k + "."))) {
          missing.add(file.getFileName() + ": " + k);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void every_sentence_can_be_filled_in_and_keys_begin_with_their_bundle() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Path bundle : files(BUNDLES, ".properties")) {
      String name = bundle.getFileName().toString().replace(".properties", "");
      for (String key : load(bundle).stringPropertyNames()) {
        if (!name.equals("faces") && !key.startsWith(name + ".")) {
          wrong.add(name + ": " + key);
        }
        try {
          new MessageFormat(load(bundle).getProperty(key));
        } catch (IllegalArgumentException e) {
          wrong.add(key + ": " + e.getMessage());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void no_line_ends_between_a_number_and_its_unit() throws IOException {
    List<String> parted = new ArrayList<>();
    for (Path bundle : files(BUNDLES, ".properties")) {
      load(bundle)
          .forEach(
              (key, sentence) -> {
                if (!NumberAndUnit.together((String) sentence).equals(sentence)) {
                  parted.add(key + "=" + sentence);
                }
              });
    }
    assertThat(parted).isEmpty();
  }

  @Test
  void no_key_is_written_twice_in_a_bundle() throws IOException {
    List<String> twice = new ArrayList<>();
    for (Path bundle : files(BUNDLES, ".properties")) {
      Set<String> seen = new TreeSet<>();
      for (String line : Files.readAllLines(bundle)) {
        Matcher key = Pattern.compile("^([a-zA-Z][\\w.-]*)\\s*=").matcher(line);
        if (key.find() && !seen.add(key.group(1))) {
          twice.add(bundle.getFileName() + ": " + key.group(1));
        }
      }
    }
    assertThat(twice).isEmpty();
  }

  private static Set<String> keys() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (Path bundle : files(BUNDLES, ".properties")) {
      keys.addAll(load(bundle).stringPropertyNames());
    }
    return keys;
  }

  private static Properties load(Path bundle) throws IOException {
    Properties properties = new Properties();
    try (Reader reader = new StringReader(Files.readString(bundle))) {
      properties.load(reader);
    }
    return properties;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
    }
  }
}
