package lapline.content.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lapline.content.ContentFiles;
import lapline.content.WrittenProblems;
import org.junit.jupiter.api.Test;

/**
 * The course as it is written: a quantity in the units of one system only would be read by
 * everybody in units that half of them do not use.
 */
class BothSystemsContentTest {
  private static final String NUMBER = "(?<![\\p{L}\\d.])[\\d.,/]*[\\d½¼¾⅜⅛⅝⅞][ \\u00a0-]?";
  private static final Pattern QUANTITY =
      Pattern.compile(
          NUMBER
              + "(?:(?:mm|cm|m|km|µm|um|in|ft|foot|feet|mil|mils|thou)(?:/s|/min|²|³)?|ml|mL|cl|L"
              + "|lit(?:re|er)s?|fl oz|oz|pints?|quarts?|gal|gallons?|psi|kPa|bar|lb)(?![\\w’'])"
              + "|\\d ?°[CF]|\\b(?:two|three|four|five|six|eight|ten) (?:feet|ounces|pints|quarts)"
              + "|\\b(?:milli|centi|micro)?metres?\\b|\\bmicrons?\\b|\\binch(?:es)?\\b|\\byards?\\b"
              + "|\\bmillilitres?\\b|\\bfluid ounces?\\b|\\bCelsius\\b|\\bFahrenheit\\b");

  /** A remark is for authors, and a tag of a drawing for nobody. */
  private static final Pattern ASIDE =
      Pattern.compile("<!--.*?-->|<[^>\n]*>|(?m)(?:^|[ \\t])#\\s.*$");

  /** Keys that hold a quantity which is read as one, and shown in the reader's units. */
  private static final Pattern READ_AS_QUANTITY =
      Pattern.compile(
          "(?m)^ *(?:- )?(?:target|fade|width|height|possible|uncertainty|shown-in|beyond|panel):.*$");

  /** Names of sizes that are one name everywhere: the stamp on a tip, the grain of a paper. */
  private static final Pattern NAME_EVERYWHERE =
      Pattern.compile(
          "1\\.2 mm(?= tip|,? and tips|,? \\|)|\\| Tip \\| 1\\.2 mm|tip, in millimetres everywhere"
              + "|(?<=\\| P\\d{3} \\| )[\\d.]+ µm");

  /** The grain of papers to scale, as the standard of the P grades gives it. */
  private static final String GRAINS = "grains.svg";

  private final ContentFiles files = ContentFiles.fromClasspath();
  private final WrittenProblems problems = new WrittenProblems(files, List.of());

  @Test
  void every_quantity_is_given_in_both_systems() {
    List<String> looked = new ArrayList<>();
    for (String ending : List.of("lesson.md", ".svg", ".yaml")) {
      files.list("curriculum", ending).stream()
          .filter(f -> !f.endsWith(GRAINS))
          .forEach(looked::add);
    }
    assertThat(looked).hasSizeGreaterThan(10);
    looked.forEach(this::look);
    problems.none();
  }

  private void look(String path) {
    String text = problems.text(path);
    for (Pattern aside : List.of(ASIDE, READ_AS_QUANTITY, NAME_EVERYWHERE)) {
      text = aside.matcher(text).replaceAll("");
    }
    String[] lines = BothUnits.besides(text).split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      Matcher found = QUANTITY.matcher(lines[i]);
      if (found.find()) {
        problems.add(
            path,
            i + 1,
            "'" + found.group() + "' is in the units of one system",
            "write it in both, like {25 mm | 1 in}");
      }
    }
  }
}
