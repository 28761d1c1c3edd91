package lapline.board.pages;

import static java.util.stream.Collectors.joining;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import lapline.board.BoardRow;
import lapline.board.LookAtBoard;
import lapline.board.Paged;
import lapline.board.SkillCount;
import lapline.pages.Messages;
import lapline.people.Role;
import lapline.people.SignedIn;
import lapline.signoff.Skill;

/** Who may do which operation today? */
@Named
@RequestScoped
public class SkillsBoardPage {
  @Inject private SignedIn signedIn;
  @Inject private LookAtBoard board;
  @Inject private Messages messages;
  @Inject private TaskWords words;
  @Inject private Clock clock;
  private String skill = "";
  private int page = 1;
  private List<SkillCount> good;
  private Paged<BoardRow> rows;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    good = board.good(signedIn.person(), skill);
  }

  public String getTitle() {
    if (good.size() == 1) {
      return messages.say(
          "board.skills.title.one", good.get(0).people(), words.skill(good.get(0).skill()));
    }
    String parts = good.stream().filter(g -> g.people() > 0).map(this::part).collect(joining(", "));
    return parts.isEmpty()
        ? messages.get("board.skills.title.nobody")
        : messages.say("board.skills.title", parts);
  }

  private String part(SkillCount count) {
    return messages.say("board.skills.title.part", count.people(), words.skill(count.skill()));
  }

  /** Where a mark leads: an examiner to the decision, others to the record. */
  public String getCells() {
    return signedIn.person().is(Role.EXAMINER) ? "/examine/decision" : "/shop/record";
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
