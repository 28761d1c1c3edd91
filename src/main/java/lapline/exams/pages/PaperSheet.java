package lapline.exams.pages;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lapline.exams.AnswerReader;
import lapline.exams.Paper;
import lapline.exams.Question;

/** A paper as it lies on the page, with what is written on it so far. */
public final class PaperSheet {
  private static final String TICK = "x";

  private final Paper paper;
  private final Map<String, String> typed = new HashMap<>();
  private final Map<String, Boolean> ticked = new HashMap<>();

  PaperSheet(Paper paper, Map<String, String> answers) {
    this.paper = paper;
    Set<String> boxes = boxes(paper);
    for (String cell : paper.cells()) {
      String text = answers.getOrDefault(cell, "");
      if (boxes.contains(cell)) {
        ticked.put(cell, !text.isEmpty());
      } else {
        typed.put(cell, text);
      }
    }
  }

  private static Set<String> boxes(Paper paper) {
    return IntStream.rangeClosed(1, paper.questions().size())
        .filter(n -> paper.questions().get(n - 1) instanceof Question.Choosing c && c.several())
        .boxed()
        .flatMap(n -> paper.questions().get(n - 1).cells(n).stream())
        .collect(Collectors.toSet());
  }

  /** What the fields show and take. */
  public Map<String, String> getTyped() {
    return typed;
  }

  public Map<String, Boolean> getTicked() {
    return ticked;
  }

  public List<PaperQuestion> getQuestions() {
    AnswerReader answers = new AnswerReader(paper, written());
    return IntStream.rangeClosed(1, paper.questions().size())
        .mapToObj(n -> new PaperQuestion(n, paper.questions().get(n - 1), answers.answer(n)))
        .toList();
  }

  /** How many questions have an answer without a flaw. */
  public int getAnswered() {
    return new AnswerReader(paper, written()).answered();
  }

  /** All that is written, by place; empty text where nothing is. */
  Map<String, String> written() {
    Map<String, String> all = new LinkedHashMap<>();
    ticked.forEach((cell, on) -> all.put(cell, Boolean.TRUE.equals(on) ? TICK : ""));
    typed.forEach((cell, text) -> all.put(cell, text == null ? "" : text));
    return all;
  }
}
