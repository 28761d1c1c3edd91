package lapline.practice;

import java.util.List;

/**
 * What was understood of everything typed about a panel.
 *
 * @param entry the readings that were understood, each possible by itself
 * @param problems what is wrong, in the order of the record
 * @param questions readings that count, but that may have been meant otherwise
 */
public record PanelReading(
    PanelEntry entry, List<FieldProblem> problems, List<FieldProblem> questions) {

  public PanelReading {
    problems = List.copyOf(problems);
    questions = List.copyOf(questions);
  }
}
