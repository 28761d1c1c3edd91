package lapline.practice.pages;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lapline.pages.Messages;
import lapline.practice.FieldProblem;
import lapline.practice.KeptReading;

/** What stands in the fields of a panel's record: kept, or just typed and not to be taken away. */
final class EntryValues {
  private final Map<String, String> typed = new HashMap<>();
  private final Map<String, Long> revisions = new HashMap<>();
  private final Map<String, String> understood;
  private final Map<String, String> problems = new HashMap<>();
  private final Map<String, String> questions = new HashMap<>();

  EntryValues(List<KeptReading> kept, Map<String, String> understood) {
    for (KeptReading reading : kept) {
      typed.put(reading.cell(), reading.typed());
      revisions.put(reading.cell(), reading.revision());
    }
    this.understood = understood;
  }

  /** Shows what was typed even where it could not be kept. */
  EntryValues withTyped(Map<String, String> notKept) {
    typed.putAll(notKept);
    return this;
  }

  EntryValues withProblems(List<FieldProblem> found, Messages words) {
    for (FieldProblem problem : found) {
      problems.putIfAbsent(problem.cell(), words.say(problem.key(), problem.args().toArray()));
    }
    return this;
  }

  /** Asks back at the field; the reading counts all the same. */
  EntryValues withQuestions(List<FieldProblem> asked, Messages words) {
    asked.forEach(q -> questions.put(q.cell(), words.say(q.key(), q.args().toArray())));
    return this;
  }

  String typed(String cell) {
    return typed.getOrDefault(cell, "");
  }

  long revision(String cell) {
    return revisions.getOrDefault(cell, 0L);
  }

  String understood(String cell) {
    return problems.containsKey(cell)
        ? ""
        : questions.getOrDefault(cell, understood.getOrDefault(cell, ""));
  }

  String problem(String cell) {
    return problems.getOrDefault(cell, "");
  }
}
