package lapline.exchange.pages;

import java.util.List;
import java.util.Map;

/**
 * What a file of readings would write down.
 *
 * @param typed by cell key
 * @param heads names of the columns that are taken, with what they are taken for
 * @param rows the first rows of the file, and of the others those with something to look at
 * @param replaced how many readings that are written down already would be replaced
 * @param inTurn whether no column numbers the places, so that the rows are taken in turn
 * @param astray how many values have no place on this panel, and in which rows
 * @param wrong how many values are not understood, and in which rows
 */
public record FilePreview(
    Map<String, String> typed,
    int fileRows,
    String charset,
    List<String> heads,
    List<Row> rows,
    int replaced,
    boolean inTurn,
    Told astray,
    Told wrong) {

  /** So many values, in these rows of the file. */
  public record Told(int values, String rows) {}

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
