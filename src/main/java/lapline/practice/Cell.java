package lapline.practice;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where on the record of a panel one reading stands: {@code wet-film.c2.at3} is the wet film of
 * coat 2 at place 3, {@code stroke-time.c1.p4} the time of pass 4 of coat 1, {@code grit.s2} the
 * second sanding step. 0 stands for 'does not apply'.
 */
public record Cell(String measurand, int coat, int pass, int place, int step)
    implements Comparable<Cell> {

  private static final Pattern KEY =
      Pattern.compile(
          "([a-z][a-z0-9-]*)(?:\\.c([1-9]\\d?))?(?:\\.p([1-9]\\d?))?(?:\\.at([1-9]\\d{0,2}))?(?:\\.s([1-9]\\d?))?");

  public static Cell panel(String measurand) {
    return new Cell(measurand, 0, 0, 0, 0);
  }

  public static Cell coat(String measurand, int coat) {
    return new Cell(measurand, coat, 0, 0, 0);
  }

  public static Cell pass(String measurand, int coat, int pass) {
    return new Cell(measurand, coat, pass, 0, 0);
  }

  public static Cell place(String measurand, int place) {
    return new Cell(measurand, 0, 0, place, 0);
  }

  public static Cell coatPlace(String measurand, int coat, int place) {
    return new Cell(measurand, coat, 0, place, 0);
  }

  public static Cell step(String measurand, int step) {
    return new Cell(measurand, 0, 0, 0, step);
  }

  /** Whether a text has the form of a cell key; says nothing about the task having such a cell. */
  public static boolean isKey(String text) {
    return KEY.matcher(text).matches();
  }

  /**
   * @throws IllegalArgumentException when the text is not of the form above
   */
  public static Cell of(String key) {
    Matcher m = KEY.matcher(key);
    if (!m.matches()) {
      throw new IllegalArgumentException("not a reading's key: " + key);
    }
    return new Cell(m.group(1), number(m, 2), number(m, 3), number(m, 4), number(m, 5));
  }

  private static int number(Matcher m, int group) {
    return m.group(group) == null ? 0 : Integer.parseInt(m.group(group));
  }

  public String key() {
    return measurand
        + (coat > 0 ? ".c" + coat : "")
        + (pass > 0 ? ".p" + pass : "")
        + (place > 0 ? ".at" + place : "")
        + (step > 0 ? ".s" + step : "");
  }

  @Override
  public int compareTo(Cell o) {
    int c = measurand.compareTo(o.measurand);
    c = c != 0 ? c : Integer.compare(coat, o.coat);
    c = c != 0 ? c : Integer.compare(pass, o.pass);
    c = c != 0 ? c : Integer.compare(place, o.place);
    return c != 0 ? c : Integer.compare(step, o.step);
  }
}
