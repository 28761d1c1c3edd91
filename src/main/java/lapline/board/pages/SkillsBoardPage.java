package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import lapline.board.BoardRow;
import lapline.board.LookAtBoard;
import lapline.board.Paged;
import lapline.pages.Messages;
import lapline.people.SignedIn;
import lapline.signoff.Skill;

/** Who may do which operation today? */
@Named
@RequestScoped
public class SkillsBoardPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtBoard board;
  @Inject private Messages messages;
  @Inject private Clock clock;
  private String skill = "";
  private int page = 1;
  private int good;
  private Paged<BoardRow> rows;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    good = board.countGood(signedIn.person(), skill);
  }

  public String getTitle() {
    return getColumns().size() == 1
        ? messages.say("board.skills.title.one", good, getColumns().get(0).title())
        : messages.say("board.skills.title", good);
  }

  public Paged<BoardRow> getRows() {
    if (rows == null) {
      rows = board.rows(signedIn.person(), skill, page);
    }
    return rows;
  }

  public List<Skill> getColumns() {
    return board.columns(skill);
  }

  public List<Skill> getSkills() {
    return board.columns("");
  }

  public String getWorkshop() {
    return board.workshop(signedIn.person());
  }

  /** For the print: a board on a wall has to say of when it is. */
  public Instant getNow() {
    return clock.instant();
  }

  public String getSkill() {
    return skill;
  }

  public void setSkill(String skill) {
    this.skill = skill == null ? "" : skill;
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
