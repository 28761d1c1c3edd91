package lapline.board.pages;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import lapline.board.Paged;
import lapline.board.ReturnedPanel;
import lapline.board.SeeNeeds;
import lapline.board.StuckLearner;
import lapline.board.WaitingLearner;
import lapline.board.WaitingPanel;
import lapline.pages.Messages;
import lapline.pages.Paging;
import lapline.people.SignedIn;

/** Who needs the instructor now, and for what? */
@Named
@RequestScoped
public class NeedsPage {
  @Inject private SignedIn signedIn;
  @Inject private SeeNeeds see;
  @Inject private Messages messages;
  private String kind = "eye";
  private int page = 1;
  private SeeNeeds.Counts counts;
  private Paged<WaitingLearner> waiting;
  private Paged<StuckLearner> stuck;
  private Paged<ReturnedPanel> returned;

  /** Refuses everybody else before anything is shown. */
  public void open() {
    getCounts();
  }

  public String getTitle() {
    return switch (kind) {
      case "stuck" -> messages.say("board.needs.title.stuck", getCounts().stuck());
      case "returned" -> messages.say("board.needs.title.returned", getCounts().returned());
      default -> messages.say("board.needs.title.eye", getCounts().waiting());
    };
  }

  public SeeNeeds.Counts getCounts() {
    if (counts == null) {
      counts = see.counts(signedIn.person());
    }
    return counts;
  }

  public Paged<WaitingLearner> getWaiting() {
    if (waiting == null) {
      waiting = see.waiting(signedIn.person(), getCounts(), page);
    }
    return waiting;
  }

  /** The panel that has waited longest of those shown; null where none waits. */
  public WaitingPanel getFirst() {
    return getWaiting().rows().stream()
        .flatMap(learner -> learner.panels().stream())
        .findFirst()
        .orElse(null);
  }

  public Paged<StuckLearner> getStuck() {
    if (stuck == null) {
      stuck = see.stuck(signedIn.person(), getCounts(), page);
    }
    return stuck;
  }

  public Paged<ReturnedPanel> getReturned() {
    if (returned == null) {
      returned = see.returned(signedIn.person(), getCounts(), page);
    }
    return returned;
  }

  public Paging getPaging() {
    return switch (kind) {
      case "stuck" -> getStuck().paging();
      case "returned" -> getReturned().paging();
      default -> getWaiting().paging();
    };
  }

  public String getKind() {
    return kind;
  }

  /** Anything unknown shows the panels that wait. */
  public void setKind(String kind) {
    this.kind = "stuck".equals(kind) || "returned".equals(kind) ? kind : "eye";
  }

  public int getPage() {
    return page;
  }

  public void setPage(int page) {
    this.page = page;
  }
}
