package lapline.grading.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lapline.grading.DefectMark;
import lapline.grading.UnfinishedGrading;

/** What the bench's fields hold as they were sent, so that nothing is lost on the way back. */
final class BenchForm {
  static final String MARK = "mark:";
  static final String DEFECT = "defect";
  static final String TAKE_AWAY = "take-away";

  /** More marks than this say nothing more about a panel. */
  static final int MOST_DEFECTS = 40;

  private static final int LONGEST_NOTE = 200;

  private final Map<String, String[]> sent;

  BenchForm(Map<String, String[]> sent) {
    this.sent = sent;
  }

  /** The fields as they stood when the grading was last kept. */
  static BenchForm of(UnfinishedGrading kept) {
    Map<String, String[]> fields = new HashMap<>();
    kept.marks().forEach((item, mark) -> fields.put(MARK + item, new String[] {"" + mark}));
    fields.put("remark", new String[] {kept.remark()});
    fields.put(DEFECT, kept.defects().stream().map(BenchForm::line).toArray(String[]::new));
    return new BenchForm(fields);
  }

  /** Mark by rubric item; what is no number counts as not given. */
  Map<String, Integer> marks() {
    Map<String, Integer> marks = new HashMap<>();
    sent.forEach(
        (name, values) -> {
          if (name.startsWith(MARK)) {
            number(values[0])
                .ifPresent(n -> marks.put(name.substring(MARK.length()), n.intValue()));
          }
        });
    return marks;
  }

  /** The defects placed so far, without the one that is being taken away. */
  List<DefectMark> defects() {
    List<DefectMark> defects = new ArrayList<>();
    for (String line : sent.getOrDefault(DEFECT, new String[0])) {
      read(line).ifPresent(defects::add);
    }
    number(text(TAKE_AWAY))
        .map(Double::intValue)
        .filter(i -> i >= 0 && i < defects.size())
        .ifPresent(i -> defects.remove(i.intValue()));
    return defects.size() > MOST_DEFECTS ? defects.subList(0, MOST_DEFECTS) : defects;
  }

  String text(String name) {
    String[] values = sent.get(name);
    return values == null || values.length == 0 ? "" : values[0].strip();
  }

  String note() {
    String note = text("note");
    return note.length() > LONGEST_NOTE ? note.substring(0, LONGEST_NOTE) : note;
  }

  /** A defect as one hidden field carries it: kind, metres right, metres up, note. */
  static String line(DefectMark d) {
    return String.format(Locale.ROOT, "%s|%.4f|%.4f|%s", d.kind(), d.x(), d.y(), d.note());
  }

  private static Optional<DefectMark> read(String line) {
    String[] parts = line.split("\\|", 4);
    if (parts.length < 4) {
      return Optional.empty();
    }
    return number(parts[1])
        .flatMap(x -> number(parts[2]).map(y -> new DefectMark(parts[0], x, y, parts[3])));
  }

  static Optional<Double> number(String text) {
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) ? Optional.of(number) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
