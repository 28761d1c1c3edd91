package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import lapline.board.BoardRow;
import lapline.board.FindingCount;
import lapline.board.LookAtBoard;
import lapline.board.LookAtCohort;
import lapline.board.Paged;
import lapline.board.SkillCount;
import lapline.pages.Messages;
import lapline.people.SignedIn;
import lapline.signoff.Skill;

/** Who stands where on what, and what goes wrong most? */
@Named
@RequestScoped
public class CohortPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtBoard board;
  @Inject private LookAtCohort cohort;
  @Inject private Messages messages;
  @Inject private TaskWords words;
  private String skill = "";
  private int page = 1;
  private Paged<BoardRow> rows;
  private List<FindingCount> findings;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getFindings();
  }

  public String getTitle() {
    List<Skill> shown = getSkills();
    return shown.size() == 1 ? title(shown.get(0)) : title();
  }

  private String title() {
    int people = getRows().paging().getCount();
    return cohort.onTheWay(signedIn.person()).stream()
        .findFirst()
        .map(w -> messages.say("board.cohort.title", words.skill(w.skill()), w.people(), people))
        .orElseGet(() -> messages.say("board.cohort.title.none", people));
  }

  private String title(Skill one) {
    long people =
        cohort.onTheWay(signedIn.person()).stream()
            .filter(w -> w.skill().equals(one.id()))
            .mapToLong(SkillCount::people)
            .sum();
    return messages.say("board.cohort.title.one", people, one.title());
  }

  public Paged<BoardRow> getRows() {
    if (rows == null) {
      rows = board.learners(signedIn.person(), skill, page);
    }
    return rows;
  }

  /** The one asked for, or all. */
  public List<Skill> getSkills() {
    return board.columns(skill);
  }

  public String getSkill() {
    return skill;
  }

  public void setSkill(String skill) {
    this.skill = skill == null ? "" : skill;
  }

  public List<FindingCount> getFindings() {
    if (findings == null) {
      findings = cohort.findings(signedIn.person());
    }
    return findings;
  }

  public int getDays() {
    return LookAtCohort.DAYS;
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
