package lapline.exams;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lapline.trade.measure.UnitSystem;

/**
 * An exam as it was drawn for one person. It holds all that it is marked by, so that it can be read
 * and marked again when its bank has long changed.
 *
 * @param unit id of the unit it is about
 * @param title of its bank
 * @param units the units it is written in; it keeps them when the person changes to others
 * @param pass least share of all marks to pass, 0 to 1
 */
public record Paper(
    String unit, String title, UnitSystem units, double pass, List<Question> questions) {

  public Paper {
    questions = List.copyOf(questions);
  }

  /** All places where something can be written. */
  public Set<String> cells() {
    return IntStream.rangeClosed(1, questions.size())
        .boxed()
        .flatMap(n -> questions.get(n - 1).cells(n).stream())
        .collect(Collectors.toCollection(HashSet::new));
  }

  /** Ids of the items that it was drawn from. */
  public Set<String> items() {
    return questions.stream().map(q -> q.head().item()).collect(Collectors.toSet());
  }
}
