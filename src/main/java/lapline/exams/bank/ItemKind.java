package lapline.exams.bank;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How an exam question is asked and answered. */
public enum ItemKind {
  /** One choice is right. */
  SINGLE,
  /** More than one choice is right. */
  SEVERAL,
  /** Steps of a job to be put into their order. */
  ORDER,
  /** A number with its unit. */
  NUMBER,
  /** A number worked out from values that are drawn anew for each paper. */
  COMPUTED;

  /** As it is written in a bank. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static List<String> words() {
    return Arrays.stream(values()).map(ItemKind::word).toList();
  }

  static ItemKind of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
