package lapline.exchange.readings;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a column of a file is taken for: nothing, the number of a place, coat, pass or step, or the
 * readings of a measurand, perhaps of one coat.
 *
 * @param measurand id; empty unless {@code kind} is {@link Kind#READING}
 * @param coat the coat all its readings belong to; 0 where another column says it
 */
public record ColumnUse(Kind kind, String measurand, int coat) {
  private static final Pattern OF_COAT = Pattern.compile("(.+)\\.c([1-9]\\d?)");

  /** The roles a column can have. */
  public enum Kind {
    NONE,
    PLACE,
    COAT,
    PASS,
    STEP,
    READING
  }

  public static final ColumnUse NONE = new ColumnUse(Kind.NONE, "", 0);

  public static ColumnUse reading(String measurand, int coat) {
    return new ColumnUse(Kind.READING, measurand, coat);
  }

  /** As it stands in a page's choice: {@code -}, {@code #place}, {@code wet-film.c2}. */
  public String code() {
    return switch (kind) {
      case NONE -> "-";
      case READING -> measurand + (coat > 0 ? ".c" + coat : "");
      default -> "#" + kind.name().toLowerCase(java.util.Locale.ROOT);
    };
  }

  /** Reads a code; what is not one is taken for nothing. */
  public static ColumnUse of(String code) {
    if (code == null || code.isBlank() || code.equals("-")) {
      return NONE;
    }
    for (Kind kind : Kind.values()) {
      ColumnUse use = new ColumnUse(kind, "", 0);
      if (kind != Kind.READING && use.code().equals(code)) {
        return use;
      }
    }
    Matcher m = OF_COAT.matcher(code);
    return m.matches() ? reading(m.group(1), Integer.parseInt(m.group(2))) : reading(code, 0);
  }
}
