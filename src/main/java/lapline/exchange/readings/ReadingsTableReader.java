package lapline.exchange.readings;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a delimited file: finds its encoding and what separates its columns. A comma separates only
 * where no tab and no semicolon does, since it may be a decimal mark.
 */
public final class ReadingsTableReader {
  public static final int MOST_BYTES = 1_048_576;
  public static final int MOST_ROWS = 2000;
  public static final int MOST_COLUMNS = 60;
  private static final char[] SEPARATORS = {'\t', ';', '|', ','};

  private ReadingsTableReader() {}

  public static TableReading read(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      return TableReading.refused("import.too-long", 1);
    }
    Optional<TextSniffer.Text> text = TextSniffer.read(bytes);
    if (text.isEmpty()) {
      return TableReading.refused("import.not-text");
    }
    try {
      return table(lines(text.get().text()), text.get().charset().name());
    } catch (IOException | UncheckedIOException e) {
      return TableReading.refused("import.quotes");
    }
  }

  private static List<List<String>> lines(String text) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator(text))
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();
    List<List<String>> lines = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord line : parser) {
        lines.add(line.toList());
        if (lines.size() > MOST_ROWS + 1) {
          break;
        }
      }
    }
    lines.removeIf(line -> line.stream().allMatch(String::isBlank));
    return lines;
  }

  private static char separator(String text) {
    String head = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
    for (char c : SEPARATORS) {
      if (head.indexOf(c) >= 0) {
        return c;
      }
    }
    // one column: nothing separates, and a decimal comma must not
    return '\t';
  }

  private static TableReading table(List<List<String>> lines, String charset) {
    if (lines.size() < 2) {
      return TableReading.refused("import.no-rows");
    }
    int wide = lines.stream().mapToInt(List::size).max().orElse(0);
    if (lines.size() > MOST_ROWS + 1 || wide > MOST_COLUMNS) {
      return TableReading.refused("import.too-many", MOST_ROWS, MOST_COLUMNS);
    }
    List<List<String>> even = lines.stream().map(l -> padded(l, wide)).toList();
    return new TableReading.Readable(
        new ReadingsTable(charset, even.get(0), List.copyOf(even.subList(1, even.size()))));
  }

  private static List<String> padded(List<String> line, int wide) {
    List<String> all = new ArrayList<>(line);
    while (all.size() < wide) {
      all.add("");
    }
    return List.copyOf(all);
  }
}
