package lapline.lessons.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.faces.annotation.ManagedProperty;
import jakarta.faces.context.FacesContext;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lapline.lessons.Check;
import lapline.lessons.Curriculum;
import lapline.lessons.LearnLesson;
import lapline.lessons.Lesson;
import lapline.lessons.LessonProgress;
import lapline.lessons.LessonRecords;
import lapline.lessons.LessonText;
import lapline.lessons.Unit;
import lapline.people.NotFoundException;
import lapline.people.SignedIn;

/** How is it done, and where does it go wrong? The checks answer at once. */
@Named
@RequestScoped
public class LessonPage {
  @Inject private SignedIn signedIn;
  @Inject private Curriculum curriculum;
  @Inject private LearnLesson learn;
  @Inject private LessonRecords records;

  @Inject
  @ManagedProperty("#{param.unit}")
  private String unit;

  private final Map<String, Check.Answer> answers = new HashMap<>();
  private final Map<String, Set<Integer>> chosen = new HashMap<>();
  private LessonProgress progress;

  public Unit getUnit() {
    return curriculum.unit(String.valueOf(unit)).orElseThrow(NotFoundException::new);
  }

  public Lesson getLesson() {
    return curriculum.lesson(String.valueOf(unit)).orElseThrow(NotFoundException::new);
  }

  /** What the lesson says in the person's units. */
  public LessonText getText() {
    return getLesson().in(signedIn.person().units());
  }

  /** Answers the check with what was ticked, and says why. */
  public void answer(String checkId) {
    Set<Integer> ticked = ticked(checkId);
    chosen.put(checkId, ticked);
    if (ticked.isEmpty()) {
      return;
    }
    answers.put(checkId, learn.answer(signedIn.person(), unit, checkId, ticked));
    progress = null;
  }

  private static Set<Integer> ticked(String checkId) {
    String[] values =
        FacesContext.getCurrentInstance()
            .getExternalContext()
            .getRequestParameterValuesMap()
            .getOrDefault("choice-" + checkId, new String[0]);
    return Stream.of(values)
        .filter(v -> v.matches("\\d{1,2}"))
        .map(Integer::valueOf)
        .collect(Collectors.toSet());
  }

  public String read() {
    learn.read(signedIn.person(), unit);
    return "/learn/unit.xhtml?faces-redirect=true&unit=" + unit;
  }

  /** The answer just given to a check; null when none was. */
  public Check.Answer answered(String checkId) {
    return answers.get(checkId);
  }

  /** Whether the check was sent without a choice. */
  public boolean nothingChosen(String checkId) {
    return chosen.containsKey(checkId) && chosen.get(checkId).isEmpty();
  }

  public boolean ticked(String checkId, int position) {
    return chosen.getOrDefault(checkId, Set.of()).contains(position);
  }

  /** Whether the check has been answered right, now or earlier. */
  public boolean right(String checkId) {
    if (progress == null) {
      progress = records.progress(signedIn.person().id()).getOrDefault(unit, LessonProgress.NONE);
    }
    return progress.right().contains(checkId);
  }
}
