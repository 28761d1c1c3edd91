package lapline.exams;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lapline.content.units.Quantity;
import lapline.exams.ItemMark.Reason;
import lapline.exams.ItemMark.State;

/** Marks one question; the rules are told at {@link PaperMarking}. */
final class QuestionMarking {
  private static final double ROUNDING = 1e-9;

  private QuestionMarking() {}

  static ItemMark mark(Question question, Answer answer) {
    if (question instanceof Question.Choosing choosing) {
      return choices(choosing, answer);
    }
    return question instanceof Question.Ordering ordering
        ? order(ordering, answer)
        : number((Question.Measuring) question, answer);
  }

  private static ItemMark marked(
      Question question,
      Answer answer,
      double mark,
      String given,
      List<Reason> reasons,
      String worked) {
    State state =
        answer instanceof Answer.None
            ? State.UNANSWERED
            : answer instanceof Answer.Unclear ? State.UNCLEAR : State.ANSWERED;
    Question.Head head = question.head();
    return new ItemMark(
        head.item(), head.version(), head.kind(), mark, state, given, reasons, worked);
  }

  private static ItemMark choices(Question.Choosing question, Answer answer) {
    Set<Integer> ticked = answer instanceof Answer.Chosen c ? c.positions() : Set.of();
    List<Question.Choice> chosen = ticked.stream().map(p -> question.choices().get(p - 1)).toList();
    String given =
        chosen.stream()
            .map(Question.Choice::key)
            .sorted()
            .map(String::valueOf)
            .collect(Collectors.joining(","));
    List<Reason> reasons =
        question.choices().stream()
            .map(
                c ->
                    new Reason(
                        c.text(), c.right(), chosen.contains(c) ? c.text() : "", c.because()))
            .toList();
    return marked(question, answer, choiceMark(question, chosen), given, reasons, "");
  }

  private static double choiceMark(Question.Choosing question, List<Question.Choice> chosen) {
    double right = chosen.stream().filter(Question.Choice::right).count();
    double wrong = chosen.size() - right;
    double all = question.choices().stream().filter(Question.Choice::right).count();
    return Math.max(0, (right - wrong) / all);
  }

  private static ItemMark order(Question.Ordering question, Answer answer) {
    Map<Integer, Integer> given = places(question, answer);
    List<Question.Step> right =
        question.steps().stream().sorted(Comparator.comparingInt(Question.Step::place)).toList();
    List<Reason> reasons = new ArrayList<>();
    int pairs = 0;
    for (Question.Step step : right) {
      boolean follows = follows(given, step.place());
      pairs += follows && step.place() > 1 ? 1 : 0;
      String yours = given.containsKey(step.place()) ? "" + given.get(step.place()) : "";
      reasons.add(new Reason(step.text(), follows, yours, step.because()));
    }
    double mark = (double) pairs / (right.size() - 1);
    return marked(question, answer, mark, asPut(given), reasons, "");
  }

  /** The place that each step was given, by its right place; steps without one are left out. */
  private static Map<Integer, Integer> places(Question.Ordering question, Answer answer) {
    Map<Integer, Integer> places = new TreeMap<>();
    if (answer instanceof Answer.Placed placed) {
      for (int i = 0; i < question.steps().size(); i++) {
        int right = question.steps().get(i).place();
        placed.placeOf(i + 1).ifPresent(place -> places.put(right, place));
      }
    }
    return places;
  }

  private static boolean follows(Map<Integer, Integer> given, int place) {
    Integer here = given.get(place);
    Integer before = place == 1 ? Integer.valueOf(0) : given.get(place - 1);
    return here != null && before != null && here == before + 1;
  }

  private static String asPut(Map<Integer, Integer> given) {
    return given.entrySet().stream()
        .sorted(Map.Entry.comparingByValue())
        .map(e -> "" + e.getKey())
        .collect(Collectors.joining(","));
  }

  private static ItemMark number(Question.Measuring question, Answer answer) {
    String right = new Quantity(question.answer(), question.unit()).written();
    if (!(answer instanceof Answer.Measured measured)) {
      String typed = answer instanceof Answer.Unclear unclear ? unclear.typed() : "";
      return marked(
          question, answer, 0, "", List.of(new Reason(right, true, typed, "")), question.worked());
    }
    boolean met = near(measured.si(), question.answer(), question.within());
    String because = met ? "" : slip(question, measured.si()).orElse("");
    return marked(
        question,
        answer,
        met ? 1 : 0,
        "" + measured.si(),
        List.of(new Reason(right, true, measured.written(), because)),
        question.worked());
  }

  private static Optional<String> slip(Question.Measuring question, double given) {
    return question.slips().stream()
        .filter(s -> near(given, s.value(), question.within()))
        .map(Question.Slip::because)
        .findFirst();
  }

  private static boolean near(double given, double value, double within) {
    return Math.abs(given - value) <= within + ROUNDING * Math.max(Math.abs(value), within);
  }
}
