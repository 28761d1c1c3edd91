package lapline.practice.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lapline.practice.Cell;
import lapline.practice.FieldProblem;

/**
 * What is wrong with a panel's record, for the summary at the top of its page: the same mistake
 * made many times over is one line that names the places and the likely reason.
 */
final class EntryProblems {
  /** So many of the same mistake are told in one line. */
  private static final int MANY = 4;

  private static final String UNIT = "-unit";

  /** Say themselves what is missing, from its first field on. */
  private static final List<String> MISSING = List.of("entry.gap.", "entry.required");

  private final GapWords places;
  private final PhraseWriter words;
  private final UnaryOperator<String> labels;

  /**
   * @param labels of fields, by the keys of their cells
   */
  EntryProblems(GapWords places, PhraseWriter words, UnaryOperator<String> labels) {
    this.places = places;
    this.words = words;
    this.labels = labels;
  }

  /**
   * One line of the summary.
   *
   * @param cell that it leads to
   */
  record Line(String cell, String key, List<Object> args) {}

  List<Line> lines(List<FieldProblem> problems) {
    Map<List<String>, List<FieldProblem>> alike = new LinkedHashMap<>();
    problems.forEach(p -> alike.computeIfAbsent(mistake(p), m -> new ArrayList<>()).add(p));
    List<Line> lines = new ArrayList<>();
    for (List<FieldProblem> group : alike.values()) {
      if (group.size() < MANY) {
        group.forEach(p -> lines.add(single(p)));
      } else {
        lines.add(together(group));
      }
    }
    return lines;
  }

  /** Numbers in a wrong unit are one mistake wherever they stand, another one is of one column. */
  private static List<String> mistake(FieldProblem p) {
    if (!Cell.isKey(p.cell())) {
      return List.of(p.cell());
    }
    return isUnit(p)
        ? List.of(p.key(), unit(p, 0), unit(p, 2))
        : List.of(p.key(), Cell.of(p.cell()).measurand());
  }

  private static boolean isUnit(FieldProblem p) {
    return p.key().endsWith(UNIT) && p.args().size() == 3;
  }

  /** The unit of a quantity that goes into a problem's words. */
  private static String unit(FieldProblem p, int arg) {
    String written = p.args().get(arg);
    return written.substring(written.lastIndexOf('\u00a0') + 1);
  }

  private Line single(FieldProblem p) {
    if (MISSING.stream().anyMatch(p.key()::startsWith)) {
      return new Line(p.cell(), p.key(), List.copyOf(p.args()));
    }
    return new Line(p.cell(), "entry.in-summary", List.of(labels.apply(p.cell()), says(p)));
  }

  private String says(FieldProblem p) {
    return words.say(p.key(), p.args().toArray());
  }

  private Line together(List<FieldProblem> group) {
    FieldProblem first = group.get(0);
    String where =
        places.among(group.stream().map(p -> named(Cell.of(p.cell()))).distinct().toList());
    return isUnit(first)
        ? new Line(
            first.cell(),
            "entry.in-summary.unit",
            List.of(where, unit(first, 2), group.size(), unit(first, 0)))
        : new Line(
            first.cell(), "entry.in-summary.alike", List.of(where, says(first), group.size()));
  }

  /** Passes and steps are named by what is read in them, and by their coat. */
  private static Cell named(Cell cell) {
    return cell.place() > 0 ? cell : Cell.coat(cell.measurand(), cell.coat());
  }
}
