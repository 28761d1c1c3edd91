package lapline.trade.measure;

/**
 * What a person typed, with the many signs that keyboards, phones and spreadsheets have for one
 * thing made one: spaces, minus, quotes for inch and foot, micro, degree, vulgar fractions.
 */
final class TypedText {
  private static final String[] FRACTIONS = {
    "¼", " 1/4", "½", " 1/2", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3", "⅛", " 1/8", "⅜", " 3/8", "⅝",
    " 5/8", "⅞", " 7/8"
  };

  private TypedText() {}

  /**
   * @param typed any text; null is taken as empty
   * @return the same without leading or trailing space; superscript 2 and 3 stay apart from digits
   */
  static String tidy(String typed) {
    if (typed == null) {
      return "";
    }
    StringBuilder text = new StringBuilder(typed.length() + 8);
    typed.codePoints().forEach(c -> text.appendCodePoint(one(c)));
    String tidy = text.toString();
    for (int i = 0; i < FRACTIONS.length; i += 2) {
      tidy = tidy.replace(FRACTIONS[i], FRACTIONS[i + 1]);
    }
    return tidy.replace("℃", "°C").replace("℉", "°F").strip();
  }

  private static int one(int c) {
    if (c >= '！' && c <= '～') {
      return c - '！' + '!'; // full-width forms of East Asian keyboards
    }
    return switch (c) {
      case '\u00a0', '\u2007', '\u2008', '\u2009', '\u200a', '\u202f', '\u3000' -> ' ';
      case '−', '‐', '‑', '‒', '–', '﹣' -> '-';
      case '’', '‘', '′', 'ʹ', '`', '´' -> '\'';
      case '”', '“', '″', '‟', '„' -> '"';
      case 'μ' -> 'µ';
      case 'º', '˚' -> '°';
      case '⁄', '∕' -> '/';
      default -> Character.isDigit(c) ? '0' + Character.digit(c, 10) : c;
    };
  }
}
