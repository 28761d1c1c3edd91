package lapline.practice;

import java.util.List;

/**
 * What is wrong at one place of a panel's record.
 *
 * @param cell key of the {@link Cell}
 * @param key message key: what is wrong and what would be right
 * @param args what goes into the message, in the person's units
 */
public record FieldProblem(String cell, String key, List<String> args) {

  public FieldProblem {
    args = List.copyOf(args);
  }

  static FieldProblem at(Cell cell, String key, String... args) {
    return new FieldProblem(cell.key(), key, List.of(args));
  }
}
