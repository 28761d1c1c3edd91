package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import lapline.board.BoardRow;
import lapline.board.LookAtCohort;
import lapline.pages.Paging;
import lapline.pages.drawing.SvgWriter;
import lapline.people.SignedIn;
import lapline.people.pages.When;
import lapline.practice.Attempt;
import lapline.practice.Attempt.State;
import lapline.practice.AttemptQuery;
import lapline.practice.FindAttempts;
import lapline.practice.pages.NotYetWords;
import lapline.practice.pages.ResultPage;
import lapline.practice.pages.Say;
import lapline.practice.pages.Trend;

/** One learner as an instructor sees them: skills, trends and panels. */
@Named
@RequestScoped
public class LearnerPage {
  /** Panels looked at for the trends, and the most of them in one trend. */
  private static final int LOOKED_AT = 100;

  private static final int TREND = 8;

  @Inject private SignedIn signedIn;
  @Inject private LookAtCohort cohort;
  @Inject private FindAttempts find;
  @Inject private Say say;
  @Inject private NotYetWords notYet;
  @Inject private When when;
  private String id;
  private int page = 1;
  private BoardRow row;
  private Paging paging;
  private List<Attempt> attempts;
  private List<TaskTrend> trends;
  private NotYetWords.Said said;

  /** The panels of one task in order. */
  public record TaskTrend(String task, String svg) {}

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getRow();
  }

  /** Looked up by whoever asks first: a wrong page number keeps {@link #open} from being called. */
  public BoardRow getRow() {
    if (row == null) {
      row = cohort.person(signedIn.person(), ResultPage.id(id));
    }
    return row;
  }

  /** One page of panels, newest first. */
  public List<Attempt> getAttempts() {
    if (attempts == null) {
      attempts = find.page(signedIn.person(), scored(getPaging().first(), Paging.SIZE));
    }
    return attempts;
  }

  /** Accepted by its numbers; or not yet, and why. */
  public String numbers(Attempt a) {
    if (said == null) {
      said = notYet.of(getAttempts().stream().map(Attempt::id).toList());
    }
    return said.of(a.id(), a.outcome().accepted());
  }

  public Paging getPaging() {
    if (paging == null) {
      paging = new Paging(page, find.count(signedIn.person(), scored(0, 1)));
    }
    return paging;
  }

  public List<TaskTrend> getTrends() {
    if (trends == null) {
      trends =
          byTask().entrySet().stream()
              .map(e -> new TaskTrend(e.getKey(), svg(e.getValue())))
              .toList();
    }
    return trends;
  }

  /** The latest panels of each task, first one first; a single panel is no trend. */
  private Map<String, List<Trend.Panel>> byTask() {
    Map<String, List<Trend.Panel>> byTask = new LinkedHashMap<>();
    for (Attempt a : find.page(signedIn.person(), scored(0, LOOKED_AT))) {
      List<Trend.Panel> panels = byTask.computeIfAbsent(a.task(), t -> new ArrayList<>());
      if (panels.size() < TREND) {
        panels.add(0, panel(a));
      }
    }
    byTask.values().removeIf(panels -> panels.size() < 2);
    return byTask;
  }

  private Trend.Panel panel(Attempt a) {
    Attempt.Outcome outcome = a.outcome();
    return new Trend.Panel(
        when.day(outcome.scored()),
        outcome.practiceScore(),
        outcome.accepted(),
        a.changedWhat() == null ? "" : a.changedWhat());
  }

  private String svg(List<Trend.Panel> panels) {
    return SvgWriter.write(new Trend(panels, say.writer()).drawing());
  }

  /** How many panels of a task are drawn at the most. */
  public int getDrawn() {
    return TREND;
  }

  private AttemptQuery scored(int first, int size) {
    UUID person = getRow().person().id();
    return AttemptQuery.of(signedIn.person().workshop(), first, size)
        .by(person)
        .in(State.SCORED, State.RETURNED, State.ACCEPTED);
  }

  public String getId() {
    return id;
  }

  public void setId(String id) {
    this.id = id;
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
