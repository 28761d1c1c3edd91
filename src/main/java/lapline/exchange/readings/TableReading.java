package lapline.exchange.readings;

import java.util.List;

/** What came of reading a file of readings. */
public sealed interface TableReading {
  record Readable(ReadingsTable table) implements TableReading {}

  /** The message key says what is wrong and what would be right. */
  record Refused(String key, List<Object> values) implements TableReading {}

  static Refused refused(String key, Object... values) {
    return new Refused(key, List.of(values));
  }
}
