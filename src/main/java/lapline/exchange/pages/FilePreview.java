package lapline.exchange.pages;

import java.util.List;
import java.util.Map;

/**
 * What a file of readings would write down.
 *
 * @param typed by cell key
 * @param heads names of the columns that are taken, with what they are taken for
 * @param rows the first rows of the file
 * @param replaced how many readings that are written down already would be replaced
 * @param astray how many values have no place on this panel
 * @param wrong how many values are not understood
 */
public record FilePreview(
    Map<String, String> typed,
    int fileRows,
    String charset,
    List<String> heads,
    List<Row> rows,
    int replaced,
    int astray,
    int wrong) {

  public record Row(int number, List<Value> values) {}

  /**
   * One value of the file.
   *
   * @param says how it is understood, or what is wrong with it
   */
  public record Value(String text, String says, boolean good) {}

  public boolean anything() {
    return !typed.isEmpty();
  }
}
